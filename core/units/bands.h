// SPDX-License-Identifier: GPL-3.0-or-later
// Base-ten octave and third-octave bands, IEC 61260-1:2014, 5.2 to 5.6; nominal values ISO 266:1997.
#pragma once
#include <array>
#include <optional>

namespace howlmap {

inline constexpr int kThirdOctaves = 31;       ///< 20 Hz .. 20 kHz
inline constexpr int kOctaves = 8;             ///< 63 Hz .. 8 kHz
inline constexpr double kLowestHz = 20.0;      ///< every search starts here
inline constexpr double kHighestHz = 20000.0;  ///< and ends here

/// Nominal third-octave values, 20 .. 20000 Hz, rising.
extern const std::array<double, kThirdOctaves> kNominalThirdOctaves;
/// Nominal octave values, 63 .. 8000 Hz, rising.
extern const std::array<double, kOctaves> kNominalOctaves;

/// Exact centre in Hz of third-octave band 0..30: 1000 * 10^((band - 17) / 10).
double third_octave_centre(int band);
/// Exact centre in Hz of octave band 0..7: 1000 * 10^(3 (band - 4) / 10).
double octave_centre(int band);
/// Band 0..30 whose limits (exact centre * 10^(+-1/20)) hold hz; the nearest one outside 20 Hz .. 20 kHz. hz > 0.
int third_octave_of(double hz);
/// Band 0..30 of a nominal value (20, 25, 31.5 ..), none if it is not one.
std::optional<int> third_octave_of_nominal(double nominal_hz);
/// Band 0..7 of a nominal octave value (63 .. 8000), none if it is not one.
std::optional<int> octave_of_nominal(double nominal_hz);

}  // namespace howlmap
