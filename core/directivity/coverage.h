// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/geometry/pose.h"
#include "core/show/directivity.h"

namespace howlmap {

/// Frequency in Hz below which a horn of this mouth loses pattern control: 25400 / (angle * size), that is 10^6 in Hz
/// deg inch. Given: full -6 dB angle in deg and size in m, both above 0. Source: Keele, "What's so sacred about
/// exponential horns?", AES preprint 1038, 1975.
double control_hz(double angle_deg, double size_m);

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
