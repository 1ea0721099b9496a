// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/export/sheet/faders.h"
#include "core/report/lists.h"

namespace howlmap::app {

/// Height in points that a usual mix needs; a long send list takes more.
inline constexpr double kMixHeight = kFaderHeight + 40.0;

/// One mix as a block that stays together: number, for whom, outlets; sends in words and dB, strongest first; settings;
/// the 31 faders.
void draw_mix(Flow& flow, const report::MixSheet& sheet, const BandRisk& risk);

}  // namespace howlmap::app
