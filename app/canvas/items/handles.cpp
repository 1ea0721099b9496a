// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/items/handles.h"

#include <QPainter>
#include <cmath>

#include "app/canvas/plan_scene.h"
#include "core/show/edits.h"

namespace howlmap::app {
namespace {
constexpr double kReachPx = 8.0;      ///< from the middle of a handle
constexpr double kSizePx = 4.5;       ///< half its width
constexpr double kStandOffPx = 26.0;  ///< turn handle beyond the selection
}  // namespace

Handles::Handles(PlanScene& scene) : plan_(scene) {
    setZValue(layer::kHandles);
    setAcceptedMouseButtons(Qt::NoButton);
}

void Handles::set_outline_mode(bool on) {
    outline_mode_ = on;
    refresh();
}

void Handles::refresh() {
    prepareGeometryChange();
    handles_.clear();
    if (outline_mode_) {
        add_corners({});
        add_planes();
    } else {
        add_turn_handle();
        const QStringList& ids = plan_.selection().ids();
        if (ids.size() == 1 && plan_.look(ids.front()).kind == ObjectKind::riser && !plan_.look(ids.front()).locked)
            add_corners(ids.front());
    }
    bounds_ = handles_.empty() ? QRectF() : QRectF(pivot_, QSizeF());
    const double reach = 2 * kReachPx * plan_.style().px;
    for (const Handle& handle : handles_) bounds_ |= QRectF(handle.at, QSizeF()).adjusted(-reach, -reach, reach, reach);
    update();
}

/// One object: ahead of where it looks. Several: above their middle.
void Handles::add_turn_handle() {
    QStringList turning;
    for (const QString& id : plan_.selection().ids()) {
        const ObjectLook& look = plan_.look(id);
        if (!look.id.isEmpty() && !look.locked && (look.turns || plan_.selection().ids().size() > 1))
            turning.append(id);
    }
    if (turning.isEmpty()) return;
    const double px = plan_.style().px;
    const QRectF box = plan_.bounds_of(turning);
    const bool single = turning.size() == 1 && plan_.look(turning.front()).kind != ObjectKind::riser;
    pivot_ = single ? plan_.look(turning.front()).at : box.center();
    const double yaw = single ? radians(plan_.look(turning.front()).yaw_deg) : kPi;
    const double radius = single ? std::hypot(box.width(), box.height()) / 2.0 : box.height() / 2.0;
    const QPointF ahead(std::sin(yaw), std::cos(yaw));
    handles_.push_back({Handle::Kind::turn, {}, 0, pivot_ + ahead * (radius + kStandOffPx * px)});
}

void Handles::add_corners(const QString& id) {
    const Outline* outline = outline_of(plan_.document().show(), id.toStdString());
    if (!outline) return;
    if (handles_.empty()) pivot_ = to_page(outline->front());
    for (std::size_t i = 0; i < outline->size(); ++i) {
        const Vec2 next = (*outline)[(i + 1) % outline->size()];
        handles_.push_back({Handle::Kind::corner, id, i, to_page((*outline)[i])});
        handles_.push_back({Handle::Kind::edge, id, i, to_page(((*outline)[i] + next) * 0.5)});
    }
}

/// On each wall, a quarter along the stage: clear of the words in the middle.
void Handles::add_planes() {
    const Stage& stage = plan_.document().show().stage;
    const Box2 box = howlmap::bounds_of(stage.outline);
    const Vec2 quarter = box.low + (box.high - box.low) * 0.25;
    for (const PlaneSide side : {PlaneSide::back, PlaneSide::front, PlaneSide::left, PlaneSide::right}) {
        const Surface* plane = plane_of(stage, side);
        if (!plane) continue;
        const bool across = side == PlaneSide::back || side == PlaneSide::front;
        const Vec2 at = across ? Vec2{quarter.x, plane->at} : Vec2{plane->at, quarter.y};
        handles_.push_back({Handle::Kind::plane, {}, static_cast<std::size_t>(side), to_page(at)});
    }
}

std::optional<Handle> Handles::handle_at(QPointF page) const {
    const double reach = kReachPx * plan_.style().px;
    std::optional<Handle> nearest;
    double least = reach;
    for (const Handle& handle : handles_) {
        const double away = QLineF(handle.at, page).length();
        if (away > least || (nearest && handle.kind == Handle::Kind::edge && away == least)) continue;
        least = away;
        nearest = handle;
    }
    return nearest;
}

void Handles::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    const PlanStyle& style = plan_.style();
    const double half = kSizePx * style.px;
    for (const Handle& handle : handles_) {
        painter->setPen(style.pen(style.ink.accent, kThinPx));
        painter->setBrush(style.ink.paper);
        if (handle.kind == Handle::Kind::turn) {
            painter->drawLine(pivot_, handle.at);
            painter->drawEllipse(handle.at, half, half);
        } else if (handle.kind == Handle::Kind::corner || handle.kind == Handle::Kind::plane) {
            painter->drawRect(QRectF(handle.at - QPointF(half, half), QSizeF(2 * half, 2 * half)));
        } else {
            painter->drawEllipse(handle.at, half * 0.55, half * 0.55);
        }
    }
}

}  // namespace howlmap::app
