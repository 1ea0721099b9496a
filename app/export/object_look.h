// SPDX-License-Identifier: GPL-3.0-or-later
// What an object of the show looks like on the plan: its symbol, where, which way, under which name.
#pragma once
#include <QPolygonF>
#include <QString>
#include <optional>
#include <string_view>
#include <vector>

#include "app/export/plan_style.h"
#include "core/show/change.h"
#include "core/show/show.h"

namespace howlmap::app {

struct ObjectLook {
    ObjectKind kind = ObjectKind::mark;
    QString id, label, symbol;
    QPointF at;  ///< page coordinates, metres
    double yaw_deg = 0.0;
    double scale = 1.0;  ///< of the symbol, so that a cabinet has its own width
    bool turns = false, locked = false;
    QPolygonF outline;  ///< of a riser, page coordinates
};

/// Looks of everything on the plan, lowest first.
std::vector<ObjectLook> looks_of(const Show& show);
/// The look of one object, if it is on the plan.
std::optional<ObjectLook> look_of(const Show& show, std::string_view id);

/// Area that the drawn object takes at this style, names aside.
QRectF bounds_of(const ObjectLook& look, const PlanStyle& style);
/// Its filled shape, for picking.
QPainterPath shape_of(const ObjectLook& look, const PlanStyle& style);
/// Draws a ring around the object, turned with it: selection and focus.
void paint_ring(QPainter& painter, const ObjectLook& look, const PlanStyle& style, double gap_px, const QPen& pen);
/// Draws the object, names aside.
void paint_object(QPainter& painter, const ObjectLook& look, const PlanStyle& style, const QColor& ink);

}  // namespace howlmap::app
