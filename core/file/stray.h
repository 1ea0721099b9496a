// SPDX-License-Identifier: GPL-3.0-or-later
// Names of unfinished files. Private to core/file.
#pragma once
#include <filesystem>
#include <string>

namespace howlmap {

/// A name for an unfinished file: it tells whose place it will take and which process writes it, and is short whatever
/// the target's name. No two calls of one process give the same.
std::string stray_name(const std::filesystem::path& target);
/// A path in quotes for a message; bytes that are no UTF-8 are replaced.
std::string shown_path(const std::filesystem::path& path);

}  // namespace howlmap
