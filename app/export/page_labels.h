// SPDX-License-Identifier: GPL-3.0-or-later
// Names that take the time to find room, further out at the end of a line where they must. All in pixels.
#pragma once
#include <QLineF>
#include <QRectF>
#include <vector>

#include "app/export/label_layout.h"

namespace howlmap::app {

struct PageRoom {
    QRectF page;                ///< what no name may leave; null: any place will do
    std::vector<QLineF> edges;  ///< lines that a name rather keeps off
};

struct PageLabel {
    QRectF rect;           ///< null where no name was wished
    QLineF leader;         ///< from the name to its object; null where the name stands beside it
    bool on_edge = false;  ///< crosses one of the edges
    bool clear = true;     ///< covers no object and no other name, and lies on the page
    friend bool operator==(const PageLabel&, const PageLabel&) = default;
};

struct PageLabels {
    std::vector<PageLabel> labels;  ///< in the order of the wishes
    bool clear = true;              ///< no name covers an object or another name, and none leaves the page
};

/// Each name takes the best of many places, given those of all others, until none moves any more. With no room at all a
/// place that covers least.
PageLabels page_labels(const std::vector<LabelWish>& wishes, const PageRoom& room);

}  // namespace howlmap::app
