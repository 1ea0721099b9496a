// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <filesystem>
#include <string>
#include <tl/expected.hpp>

namespace howlmap {

/// Bytes of a regular file of at most so many bytes. Error: what is wrong with it, without its name
/// ("cannot be opened: No such file or directory", "is not a regular file").
tl::expected<std::string, std::string> read_whole_file(const std::filesystem::path& path, std::size_t most_bytes);

}  // namespace howlmap
