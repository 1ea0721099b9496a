// SPDX-License-Identifier: GPL-3.0-or-later
// Frequencies as people of the trade say them: no more digits than are known, the unit always.
#pragma once
#include <string>

namespace howlmap {

/// "440 Hz" below 1 kHz, three figures above: "1.25 kHz", "12.5 kHz".
std::string hz_words(double hz);
/// "400 Hz", "1.25 kHz", "31.5 Hz": nominal band values as printed on equalisers.
std::string band_words(double nominal_hz);

}  // namespace howlmap
