// SPDX-License-Identifier: GPL-3.0-or-later
// What a show may hold. The reader refuses what lies outside, and whoever edits a show keeps within.
#pragma once
#include <cstddef>

namespace howlmap {

/// Closed range of a number; `above_low`: the low end itself is not allowed.
struct Range {
    double low = 0.0, high = 0.0;
    bool above_low = false;
    constexpr bool holds(double value) const {
        return value <= high && (above_low ? value > low : value >= low);  // false for a NaN
    }
};

namespace limits {
inline constexpr Range kPosition{-1000.0, 1000.0};  ///< m
inline constexpr Range kSize{0.0, 50.0, true};      ///< m
inline constexpr Range kAngle{-36000.0, 36000.0};   ///< deg, yaw, pitch and roll: up to a hundred turns
inline constexpr Range kLevel{-60.0, 160.0};        ///< dB or dBA
inline constexpr Range kGain{-60.0, 60.0};          ///< dB
inline constexpr Range kHz{1.0, 100000.0};
inline constexpr Range kQ{0.0, 1000.0, true};
inline constexpr Range kOrder{1.0, 8.0};            ///< of a filter, whole
inline constexpr Range kMilliseconds{0.0, 1000.0};  ///< latency and delays
inline constexpr Range kTemperature{-30.0, 60.0};   ///< deg C
inline constexpr Range kHumidity{0.0, 100.0};       ///< %
inline constexpr Range kPressure{50.0, 110.0};      ///< kPa
inline constexpr Range kAbsorption{0.0, 1.0};
inline constexpr Range kPatternNumber{0.0, 1.0};          ///< a of a first-order pattern
inline constexpr Range kCoverageAngle{0.0, 360.0, true};  ///< deg
inline constexpr Range kCoverageFloor{6.0, 60.0, true};   ///< dB
inline constexpr Range kTableAngle{0.0, 180.0};           ///< deg
inline constexpr Range kVolume{0.0, 1e7, true};           ///< m3
inline constexpr Range kRt60{0.0, 30.0, true};            ///< s
inline constexpr Range kDraws{1.0, 100000.0};             ///< whole
inline constexpr Range kNumber{1.0, 1e6};                 ///< channel and mix numbers, whole
inline constexpr Range kSpreadPosition{0.0, 50.0};        ///< m, half width of a draw
inline constexpr Range kSpreadAngle{0.0, 360.0};          ///< deg
inline constexpr Range kSpreadGain{0.0, 60.0};            ///< dB
inline constexpr Range kSpreadTemperature{0.0, 90.0};     ///< K

inline constexpr std::size_t kCornersLeast = 3, kCornersMost = 500;
inline constexpr std::size_t kInputs = 256, kMixes = 64, kLoudspeakers = 128;
inline constexpr std::size_t kObjects = 5000;  ///< everything with an id
inline constexpr std::size_t kFileBytes = 64u << 20;
inline constexpr std::size_t kNesting = 64;            ///< objects and lists inside one another
inline constexpr std::size_t kFileValues = 1'000'000;  ///< values in one file: bounds the memory of reading
}  // namespace limits
}  // namespace howlmap
