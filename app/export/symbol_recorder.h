// SPDX-License-Identifier: GPL-3.0-or-later
// Turns an SVG into paths by letting Qt's own renderer paint onto a device that only takes notes.
#pragma once
#include <QByteArray>
#include <QPainterPath>
#include <vector>

namespace howlmap::app {

struct RecordedPath {
    QPainterPath path;
    bool stroked = false, filled = false;
    double stroke_width = 0.0;    ///< units of the SVG
    double fill_lightness = 0.0;  ///< 0 black .. 1 white
};

/// Paths of an SVG in its own units, in drawing order; empty when it cannot be read.
std::vector<RecordedPath> recorded_svg(const QByteArray& svg);

}  // namespace howlmap::app
