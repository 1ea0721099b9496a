// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/show/directivity.h"
#include "core/units/complex.h"

namespace howlmap {

/// Far field of a rigid sphere with a cap that moves with uniform radial velocity, at one frequency, over its value on
/// axis. Source: Morse, Vibration and Sound, 1948 (radiation from a sphere); Aarts and Janssen, J. Audio Eng. Soc. 59,
/// 2011.
class CapSlice {
  public:
    /// Given: sphere and cap radii in m (cap at most sphere), wave number k in rad/m, above 0.
    CapSlice(const CapOnSphere& cap, double wave_number);
    /// Complex far field over its value on axis. Given: cosine of the angle off axis, -1..1.
    Complex field(double cosine) const;
    /// Terms of the Legendre series of the field.
    const std::vector<Complex>& terms() const { return terms_; }
    /// Its magnitude, held at 1 at most: a wide cap has nulls on its axis high up.
    double gain(double cosine) const;
    /// Magnitude of the field on axis before it was divided by, in a unit that varies smoothly with frequency.
    double size_on_axis() const { return size_on_axis_; }

  private:
    double size_on_axis_ = 0.0;
    std::vector<Complex> terms_;  // of the Legendre series, already over the value on axis
};

}  // namespace howlmap
