// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace howlmap::app {

/// Makes the C library give back what is no longer used, at the start of a program that stays open for hours. Nothing
/// else changes; without the GNU C library it does nothing.
void give_memory_back();

}  // namespace howlmap::app
