// SPDX-License-Identifier: GPL-3.0-or-later
// What a microphone picks up and a loudspeaker covers, round about in the plane of its own axis, at one frequency.
#pragma once
#include <QLineF>
#include <QPolygonF>
#include <optional>
#include <string_view>
#include <vector>

#include "app/export/plan_style.h"

namespace howlmap::app {

struct Lobe {
    QPolygonF outline;          ///< page; 0 dB lies at the radius, each dB below is 1/30 of it less
    std::vector<QLineF> nulls;  ///< directions from which nothing is heard
};

inline constexpr double kLobeDepthDb = 30.0;

/// The lobe of a loudspeaker or a microphone; none for anything else. Radius in metres, frequency in Hz.
std::optional<Lobe> lobe_of(const Show& show, std::string_view id, double hz, double radius);
void paint_lobe(QPainter& painter, const Lobe& lobe, const PlanStyle& style);

}  // namespace howlmap::app
