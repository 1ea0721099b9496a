// SPDX-License-Identifier: GPL-3.0-or-later
// Names stand beside their objects, never on one, and move out of each other's way. All in pixels.
#pragma once
#include <QRectF>
#include <vector>

namespace howlmap::app {

struct LabelWish {
    QRectF object;           ///< what the name belongs to, and what no name may cover
    QRectF within;           ///< not null: the name stands in one of its corners (a riser is no obstacle, its name is)
    QSizeF size;             ///< of the name; empty: no name
    int last_side = -1;      ///< where it stood last time, or -1: it stays there while it can
    bool secondary = false;  ///< placed after all others
    bool may_hide = false;   ///< rather no name than one across another or across an object
    bool anywhere = false;   ///< may leave the page, as its object does
};

struct LabelPlace {
    QRectF rect;    ///< null when there is no name
    int side = -1;  ///< which of the sides was taken
};

/// A place in a corner of its box: upper left, lower left, upper right, lower right; then the same just outside its
/// edge. `corner`: 0 to kLabelCorners - 1.
inline constexpr int kLabelCorners = 8;
QRectF corner_place(const QRectF& box, QSizeF size, int corner);

/// A place for each name, as far as there is room clear of all objects and of names placed before.
/// With no room at all the side that covers least is taken.
std::vector<LabelPlace> placed_labels(const std::vector<LabelWish>& wishes);

}  // namespace howlmap::app
