// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <string_view>
#include <tl/expected.hpp>

#include "core/file/read.h"
#include "core/show/directivity.h"

namespace howlmap {

/// A measured directivity as people keep it in spreadsheets: the first line holds the angles in degrees behind one cell
/// that does not matter, each further line a frequency in Hz and the gains in dB at those angles. Separators: tab,
/// semicolon or comma; with a tab or semicolon numbers may have decimal commas. Empty lines and lines that begin with #
/// are passed over. Errors name line and cell, what was found and what was expected. Angles 0..180 and frequencies
/// strictly rising, at most 512 of each.
tl::expected<DirectivityTable, FileError> read_directivity_csv(std::string_view text);

/// The same as text, comma separated.
std::string write_directivity_csv(const DirectivityTable& table);

}  // namespace howlmap
