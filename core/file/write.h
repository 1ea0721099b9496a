// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <filesystem>
#include <string>
#include <tl/expected.hpp>

#include "core/show/show.h"

namespace howlmap {

/// Canonical text of a show: stable key order, shortest round-trip numbers, newline at the end. The same show gives the
/// same bytes. Every number must be finite.
std::string write_show(const Show& show);

/// Writes bytes so that the path holds the old or the whole new content, whatever happens: a temporary file in the same
/// folder, synced, renamed, the folder synced. Refuses a target that is neither absent nor a regular file. Error: one
/// sentence.
tl::expected<void, std::string> save_atomically(const std::filesystem::path& path, std::string_view bytes);

}  // namespace howlmap
