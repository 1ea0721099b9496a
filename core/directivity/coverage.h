// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/geometry/pose.h"
#include "core/show/directivity.h"

namespace howlmap {

/// Frequency in Hz below which a horn of this mouth loses pattern control: 25400 / (angle * size), that is 10^6 in Hz
/// deg inch. Given: full -6 dB angle in deg and size in m, both above 0. Source: Keele, "What's so sacred about
/// exponential horns?", AES preprint 1038, 1975.
double control_hz(double angle_deg, double size_m);
/// 1 / half-angle^2 in rad^-2 of the -6 dB point in one plane, widened below the control frequency. Given: as above,
/// and hz above 0. Finite for the narrowest angle and the smallest mouth.
double inverse_square_half_angle(double angle_deg, double size_m, double hz);
/// Nominal angles below this one are all the same up to 20 kHz: no mouth of up to 50 m controls them.
inline constexpr double kNarrowestAngleDeg = 0.02;

/// A cabinet with nominal coverage angles at one frequency: -6 dB on an ellipse of half-angles (horizontal, vertical)
/// that widen below the control frequencies, falling towards -floor_db. Smooth model of this program, on axis 0 dB; no
/// published source.
class CoverageSlice {
  public:
    CoverageSlice(const Coverage& coverage, double hz);
    /// dB at an angle off axis, 0 on axis and below 0 elsewhere.
    double db(const LocalAngles& angles) const;
    /// The same as an amplitude ratio 0..1.
    double gain(const LocalAngles& angles) const;

  private:
    double across_, above_;  // 1 / half-angle^2, 1 / rad^2
    double floor_db_, decay_;
};

}  // namespace howlmap
