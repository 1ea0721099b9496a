// SPDX-License-Identifier: GPL-3.0-or-later
// Lengths as people type and read them: metres, or feet and inches. Files are always metric.
#pragma once
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace howlmap {

inline constexpr double kMetresPerFoot = 0.3048;  ///< exact, by the international agreement of 1959
inline constexpr double kMetresPerInch = 0.0254;

enum class LengthUnit { metres, feet };

/// Metres that a text means: "1.07", "1,07 m", "107 cm", "850 mm", "3' 6\"", "3ft 6in", "3' 6 1/2\"", "-2'", "42\"".
/// A number without a unit is in `plain`: metres, or feet. Error: one sentence that says what was expected.
tl::expected<double, std::string> parse_length(std::string_view text, LengthUnit plain);

/// "1.07 m", rounded to 0.01 m; no minus zero.
std::string metres_text(double metres);
/// "3' 6\"" or "3' 6 1/2\"", rounded to half an inch.
std::string feet_text(double metres);
/// In the unit asked for.
std::string length_text(double metres, LengthUnit unit);

}  // namespace howlmap
