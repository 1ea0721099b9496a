// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>

#include "core/units/complex.h"

namespace howlmap {

/// Frequencies that are computed side by side.
inline constexpr std::size_t kBlockPoints = 16;

/// A complex value at each frequency of a block.
struct alignas(64) Lanes {
    double re[kBlockPoints];
    double im[kBlockPoints];

    Complex at(std::size_t i) const { return {re[i], im[i]}; }
    void set(std::size_t i, Complex value) {
        re[i] = value.real();
        im[i] = value.imag();
    }
};

/// A real value at each frequency of a block.
struct alignas(64) RealLanes {
    double v[kBlockPoints];
};

/// The same two in single precision.
struct alignas(64) QuickLanes {
    float re[kBlockPoints];
    float im[kBlockPoints];
};
struct alignas(64) QuickRealLanes {
    float v[kBlockPoints];
};

}  // namespace howlmap
