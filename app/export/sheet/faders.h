// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>

#include "app/export/sheet/flow.h"
#include "core/analysis/analysis.h"
#include "core/show/mix.h"
#include "core/units/bands.h"

namespace howlmap::app {

inline constexpr int kRanksShown = 6;  ///< bands worth walking through at a soundcheck

/// Probability that the first ring falls into each band through one mix, and the band's place in the ring-out list
/// (1 = first; 0 = not through this mix).
struct BandRisk {
    std::array<double, kThirdOctaves> probability{};
    std::array<int, kThirdOctaves> rank{};
};
BandRisk band_risk(const std::vector<BandProbability>& ring_out, const std::string& mix);

/// The 31 bands of a mix's equaliser as faders: a knob at its gain with the figure beside it, behind each a bar as high
/// as the probability that it rings first, numbered in the order of ringing out.
void draw_faders(Flow& flow, const QRectF& rect, const Mix& mix, const BandRisk& risk);

}  // namespace howlmap::app
