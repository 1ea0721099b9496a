// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/export/sheet/faders.h"
#include "core/report/lists.h"

namespace howlmap::app {

/// Height in points of one mix as a block.
double mix_height(const Flow& flow, const report::MixSheet& sheet, const BandRisk& risk);

/// One mix as a block that stays together: number, for whom, outlets; sends in words and dB, strongest first; settings;
/// the 31 faders unless they are all at 0.
void draw_mix(Flow& flow, const report::MixSheet& sheet, const BandRisk& risk);

/// One mix on a page of its own, for the monitor desk: sends as a list with room to write, tall faders, the bands that
/// most likely ring through it, and lines for what is found at the soundcheck.
void draw_mix_page(Flow& flow, const report::MixSheet& sheet, const BandRisk& risk, const report::Table& ring_out);

}  // namespace howlmap::app
