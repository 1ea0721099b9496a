// SPDX-License-Identifier: GPL-3.0-or-later
// Names of objects, the same on screen and on paper.
#pragma once
#include <QHash>
#include <vector>

#include "app/export/label_layout.h"
#include "app/export/object_look.h"
#include "app/export/page_labels.h"

namespace howlmap::app {

struct NameOptions {
    bool may_hide = false;                    ///< names of risers and marks give way where there is no room
    QHash<QString, QSizeF>* sizes = nullptr;  ///< of names in pixels, kept from one call to the next for the same font
};

/// Places of the names of all objects, in the same order; the words around the stage are kept clear. `last` holds the
/// sides taken before.
std::vector<LabelPlace> placed_names(const Show& show, const std::vector<const ObjectLook*>& looks,
                                     const PlanStyle& style, const QHash<QString, int>& last = {},
                                     const NameOptions& options = {});
/// What on the page is known about names: where each stands, how large they are, and which inputs are told by their
/// channel alone because there is no room for more.
struct PageNames {
    std::vector<PageLabel> places;  ///< in the order of the looks
    std::vector<QString> texts;
    double label_px = 12.0;
    bool backed = false;  ///< paper shines through behind them: contours of a map would strike them out
};

/// Names for paper, inside `page` (plan units). Smaller letters where they help, channels without names where even the
/// smallest do not: the input list says whose they are.
PageNames names_on_page(const Show& show, const std::vector<const ObjectLook*>& looks, const PlanStyle& style,
                        const QRectF& page);
/// Where names on the screen may stand, page coordinates.
struct NameRoom {
    QRectF view;                ///< what no name may leave; null: the view can be moved, any place will do
    std::vector<QRectF> taken;  ///< what lies over the plan, such as the scale bar
    friend bool operator==(const NameRoom&, const NameRoom&) = default;
};
/// Names for the screen, all in the letters of the style. Where there is no room, channels without names; names of
/// risers and marks give way. For up to kMostOnScreen objects.
PageNames names_on_screen(const Show& show, const std::vector<const ObjectLook*>& looks, const PlanStyle& style,
                          const NameRoom& room, QHash<QString, QSizeF>* sizes = nullptr);
inline constexpr std::size_t kMostSearched = 120;  ///< names on a page; of more, nobody reads them all at once
inline constexpr std::size_t kMostOnScreen = 80;   ///< the search for room must not hold up the hand

void paint_names(QPainter& painter, const std::vector<const ObjectLook*>& looks, const PageNames& names,
                 const PlanStyle& style);

/// A place in pixels brought to the page.
QRectF label_rect(const LabelPlace& place, const PlanStyle& style);
/// The name, inside its place on the page.
void paint_label(QPainter& painter, const ObjectLook& look, const QRectF& place, const PlanStyle& style);
/// One of the names of a page, with its line.
void paint_name(QPainter& painter, const ObjectLook& look, const PageLabel& place, const QString& text,
                const PlanStyle& style);

}  // namespace howlmap::app
