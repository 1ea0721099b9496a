// SPDX-License-Identifier: GPL-3.0-or-later
// Figures in words for the plan: what the measuring tool and a drag say. Pure.
#pragma once
#include <QString>
#include <optional>
#include <string_view>

#include "core/geometry/vec3.h"
#include "core/show/show.h"

namespace howlmap::app {

/// Acoustic centre of a loudspeaker, input or backline, ear of a player, place of a listener or mark; none for anything
/// else.
std::optional<Vec3> acoustic_centre(const Show& show, std::string_view id);

/// "2.35 m, bearing 182°, 6.9 ms, 4.8 waves at 700 Hz".
QString measure_text(const Show& show, Vec3 from, Vec3 to, std::optional<double> hz);
/// How a loudspeaker and an input stand to each other: "Wedge 1 to 3 Fiddle: 1.25 m, 34° off the microphone's axis".
QString pair_text(const Show& show, std::string_view loudspeaker, std::string_view input);

}  // namespace howlmap::app
