// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace howlmap {

/// Marks a text of a table, so that it is collected; translate() is called where it is used.
constexpr const char* translatable(const char* /*context*/, const char* english) { return english; }

}  // namespace howlmap
