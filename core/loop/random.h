// SPDX-License-Identifier: GPL-3.0-or-later
// Random numbers of the draws: any number of any draw straight from its place, the same on every machine.
#pragma once
#include <cstdint>

namespace howlmap {

/// Output function of SplitMix64. Source: Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA
/// 2014.
constexpr std::uint64_t split_mix(std::uint64_t z) {
    z ^= z >> 30;
    z *= 0xBF58476D1CE4E5B9u;
    z ^= z >> 27;
    z *= 0x94D049BB133111EBu;
    return z ^ (z >> 31);
}
inline constexpr std::uint64_t kGoldenGamma = 0x9E3779B97F4A7C15u;

/// The numbers of one draw.
class DrawNumbers {
  public:
    /// Given: seed of the show, draw 0, 1, ..
    constexpr DrawNumbers(std::uint64_t seed, std::uint64_t draw)
        : start_(split_mix(seed + kGoldenGamma * (draw + 1))) {}
    /// State of the generator that gives the i-th number.
    constexpr std::uint64_t state(std::uint64_t i) const { return start_ + kGoldenGamma * i; }
    /// The i-th number, i = 1, 2, .., in [0, 1).
    constexpr double unit(std::uint64_t i) const { return static_cast<double>(split_mix(state(i)) >> 11) * 0x1p-53; }
    /// The same in [-1, 1).
    constexpr double both_ways(std::uint64_t i) const { return 2.0 * unit(i) - 1.0; }

  private:
    std::uint64_t start_;
};

}  // namespace howlmap
