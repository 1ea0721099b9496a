// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>

#include "app/export/sheet/flow.h"
#include "core/loop/figures.h"
#include "core/show/mix.h"
#include "core/units/bands.h"

namespace howlmap::app {

/// Probability that the first ring falls into each band, and its place in that ranking (1 = first; 0 = unlikely).
struct BandRisk {
    std::array<double, kThirdOctaves> probability{};
    std::array<int, kThirdOctaves> rank{};
};
BandRisk band_risk(const ToleranceFigures& tolerance);

/// Height in points of one row of 31 faders with its labels.
inline constexpr double kFaderHeight = 78.0;

/// The 31 bands of a mix's equaliser as faders: a knob at its gain with the figure beside it, behind each a bar as high
/// as the probability that it rings first, numbered in the order of ringing out.
void draw_faders(Flow& flow, const QRectF& rect, const Mix& mix, const BandRisk& risk);

}  // namespace howlmap::app
