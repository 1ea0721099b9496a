// SPDX-License-Identifier: GPL-3.0-or-later
// Random numbers that are the same on every machine (the standard leaves its distributions to the library).
#pragma once
#include <cmath>
#include <cstdint>
#include <initializer_list>
#include <random>
#include <vector>

#include "core/show/limits.h"

namespace howlmap::test {

class Random {
  public:
    explicit Random(std::uint64_t seed) : engine_(seed) {}

    std::uint64_t bits() { return engine_(); }
    /// 0 up to, not including, 1.
    double unit() { return static_cast<double>(engine_() >> 11) * 0x1p-53; }
    double between(double low, double high) { return low + (high - low) * unit(); }
    /// low .. high, both included.
    int whole(int low, int high) {
        return low + static_cast<int>(engine_() % (static_cast<std::uint64_t>(high - low) + 1));
    }
    bool chance(double probability) { return unit() < probability; }
    template <class T>
    T pick(std::initializer_list<T> from) {
        return from.begin()[whole(0, static_cast<int>(from.size()) - 1)];
    }
    template <class List>
    const auto& one_of(const List& list) {
        return list[static_cast<std::size_t>(whole(0, static_cast<int>(list.size()) - 1))];
    }
    /// Anything a range holds: full doubles, figures as people type them, the ends, tiny ones.
    double in(const Range& range) {
        const double plain = between(range.low, range.high);
        double value = plain;
        const int choice = whole(0, 9);
        if (choice < 5) value = std::round(plain * 100.0) / 100.0;
        if (choice == 5) value = range.high;
        if (choice == 6) value = range.low;
        if (choice == 7) value = 5e-324;
        if (choice == 8) value = std::round(plain);
        return range.holds(value) ? value : plain > range.low ? plain : range.high;
    }
    int whole_in(const Range& range) { return whole(static_cast<int>(range.low), static_cast<int>(range.high)); }

  private:
    std::mt19937_64 engine_;
};

}  // namespace howlmap::test
