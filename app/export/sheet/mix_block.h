// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/export/sheet/faders.h"
#include "core/report/lists.h"

namespace howlmap::app {

/// Height in points of one mix as a block.
double mix_height(const Flow& flow, const report::MixSheet& sheet);

/// One mix as a block that stays together: number, for whom, outlets; sends in words and dB, strongest first; settings;
/// the 31 faders.
void draw_mix(Flow& flow, const report::MixSheet& sheet, const BandRisk& risk);

}  // namespace howlmap::app
