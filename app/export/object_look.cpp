// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/object_look.h"

#include <QTransform>
#include <algorithm>

#include "app/export/length_text.h"
#include "app/export/symbol.h"
#include "app/export/symbol_choice.h"
#include "core/show/placed.h"

namespace howlmap::app {
namespace {
constexpr double kSmallestPx = 13.0;     ///< a symbol never gets smaller than this: it simplifies instead
constexpr double kSimpleBelowPx = 22.0;  ///< below this size the simpler variant is drawn
constexpr double kRiserEdgePx = 4.0;     ///< between the two lines of a riser's edge

struct Fitted {
    const Symbol* symbol;
    double scale;
};

/// The variant and scale that fit the size on the page.
Fitted fitted(const ObjectLook& look, const PlanStyle& style) {
    const Symbol& full = symbol_named(look.symbol, false);
    const double size_px = std::max(full.bounds.width(), full.bounds.height()) * look.scale / style.px;
    if (size_px >= kSimpleBelowPx) return {&full, look.scale};
    const Symbol& simple = symbol_named(look.symbol, true);
    const double simple_px = std::max(simple.bounds.width(), simple.bounds.height()) * look.scale / style.px;
    const double grow = simple_px < kSmallestPx && simple_px > 0.0 ? kSmallestPx / simple_px : 1.0;
    return {&simple, look.scale * grow};
}

QTransform placing(const ObjectLook& look, double scale) {
    return QTransform::fromTranslate(look.at.x(), look.at.y()).rotate(-look.yaw_deg).scale(scale, scale);
}

QString channel_label(const Input& input) {
    return QStringLiteral("%1 %2").arg(input.channel).arg(QString::fromStdString(input.name));
}

double cabinet_scale(const Loudspeaker& loudspeaker) {
    const auto* coverage = std::get_if<Coverage>(&loudspeaker.directivity);
    const double drawn = symbol_named(symbol_of(loudspeaker), false).bounds.width();
    if (!coverage || drawn <= 0.0) return 1.0;
    return std::clamp(coverage->width_m / drawn, 0.5, 2.5);
}

ObjectLook look(const Show&, const Loudspeaker& l) {
    return {ObjectKind::loudspeaker,
            {},
            QString::fromStdString(l.name),
            symbol_of(l),
            to_page(l.position.xy()),
            l.aim.yaw_deg,
            cabinet_scale(l),
            true,
            is_locked(l.extras),
            {}};
}
ObjectLook look(const Show&, const Input& i) {
    return {ObjectKind::input,   {}, channel_label(i), symbol_of(i), to_page(i.position.xy()), i.aim.yaw_deg, 1.0, true,
            is_locked(i.extras), {}};
}
ObjectLook look(const Show&, const Performer& p) {
    return {ObjectKind::performer,
            {},
            QString::fromStdString(p.name),
            symbol_of(p),
            to_page(p.position),
            p.yaw_deg,
            1.0,
            true,
            is_locked(p.extras),
            {}};
}
ObjectLook look(const Show&, const Backline& b) {
    return {ObjectKind::backline,
            {},
            QString::fromStdString(b.name),
            symbol_of(b),
            to_page(b.position.xy()),
            0.0,
            1.0,
            false,
            is_locked(b.extras),
            {}};
}
ObjectLook look(const Show&, const Listener& l) {
    return {ObjectKind::listener,
            {},
            QString::fromStdString(l.name),
            QStringLiteral("listener"),
            to_page(l.position.xy()),
            180.0,
            1.0,
            false,
            is_locked(l.extras),
            {}};
}
ObjectLook look(const Show&, const Mark& m) {
    return {ObjectKind::mark,
            {},
            QString::fromStdString(m.text),
            symbol_of(m),
            to_page(m.position),
            m.yaw_deg,
            1.0,
            true,
            is_locked(m.extras),
            {}};
}
ObjectLook look(const Show& show, const Riser& r) {
    QPolygonF outline;
    for (const Vec2& corner : r.outline) outline << to_page(corner);
    const QString label =
        QStringLiteral("%1 +%2").arg(QString::fromStdString(r.name), length_text(r.height_m, show.display.units));
    return {ObjectKind::riser,   {},     label.trimmed(), {}, outline.boundingRect().center(), 0.0, 1.0, true,
            is_locked(r.extras), outline};
}

template <class T>
bool on_plan(const T&) {
    return true;
}
bool on_plan(const Input& input) { return input.has_position; }

void paint_riser(QPainter& painter, const ObjectLook& look, const PlanStyle& style, const QColor& ink) {
    QPainterPath edge;
    edge.addPolygon(look.outline);
    edge.closeSubpath();
    painter.save();
    painter.setBrush(Qt::NoBrush);
    // Two lines: a wide stroke whose middle is taken back.
    painter.setPen(style.pen(ink, kRiserEdgePx + kThinPx));
    painter.drawPath(edge);
    painter.setPen(style.pen(style.ink.stage, kRiserEdgePx - kThinPx));
    painter.drawPath(edge);
    painter.restore();
}
}  // namespace

std::vector<ObjectLook> looks_of(const Show& show) {
    std::vector<ObjectLook> looks;
    for_each_placed_list(show, [&](const auto& list) {
        for (const auto& item : list) {
            if (!on_plan(item)) continue;
            looks.push_back(look(show, item));
            looks.back().id = QString::fromStdString(item.id);
        }
    });
    return looks;
}

std::optional<ObjectLook> look_of(const Show& show, std::string_view id) {
    std::optional<ObjectLook> found;
    for_each_placed_list(show, [&](const auto& list) {
        for (const auto& item : list) {
            if (item.id != id || !on_plan(item)) continue;
            found = look(show, item);
            found->id = QString::fromStdString(item.id);
        }
    });
    return found;
}

QRectF bounds_of(const ObjectLook& look, const PlanStyle& style) {
    const double margin = kHeavyPx * style.px;
    if (look.kind == ObjectKind::riser)
        return look.outline.boundingRect().adjusted(-2 * margin, -2 * margin, 2 * margin, 2 * margin);
    const Fitted fit = fitted(look, style);
    return placing(look, fit.scale).mapRect(fit.symbol->bounds).adjusted(-margin, -margin, margin, margin);
}

void paint_ring(QPainter& painter, const ObjectLook& look, const PlanStyle& style, double gap_px, const QPen& pen) {
    painter.save();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen);
    const double gap = gap_px * style.px;
    if (look.kind == ObjectKind::riser) {
        painter.drawPolygon(look.outline);
    } else {
        const Fitted fit = fitted(look, style);
        painter.translate(look.at);
        painter.rotate(-look.yaw_deg);
        const QRectF box(fit.symbol->bounds.topLeft() * fit.scale, fit.symbol->bounds.size() * fit.scale);
        painter.drawRoundedRect(box.adjusted(-gap, -gap, gap, gap), gap, gap);
    }
    painter.restore();
}

QPainterPath shape_of(const ObjectLook& look, const PlanStyle& style) {
    QPainterPath shape;
    if (look.kind == ObjectKind::riser) {
        shape.addPolygon(look.outline);
        shape.closeSubpath();
        return shape;
    }
    const Fitted fit = fitted(look, style);
    shape.addPolygon(placing(look, fit.scale).map(QPolygonF(fit.symbol->bounds)));
    return shape;
}

void paint_object(QPainter& painter, const ObjectLook& look, const PlanStyle& style, const QColor& ink) {
    if (look.kind == ObjectKind::riser) return paint_riser(painter, look, style, ink);
    const Fitted fit = fitted(look, style);
    painter.save();
    painter.translate(look.at);
    painter.rotate(-look.yaw_deg);
    paint_symbol(painter, *fit.symbol, style, fit.scale, ink);
    painter.restore();
}

}  // namespace howlmap::app
