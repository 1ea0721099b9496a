// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/plan_painter.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <utility>

#include "app/export/ground.h"
#include "app/export/labels.h"
#include "app/export/legend.h"
#include "app/export/loop_lines.h"
#include "app/export/scale_bar.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {
constexpr double kTitlePx = 18.0, kTextPx = 11.0;
constexpr double kTitleHeight = 46.0, kFootHeight = 36.0, kFootWithLegend = 62.0, kFootLine = 15.0;
constexpr double kWordsPx = 44.0;  ///< room for the words around the stage and names beside objects
constexpr double kPixelsPerMetre = 96.0 / 0.0254;
constexpr std::array kScales = {5.,   10.,  15.,  20.,  25.,  30.,  40.,  50.,   60.,   75.,   100.,  125.,
                                150., 200., 250., 300., 400., 500., 750., 1000., 1500., 2000., 5000., 10000.};

QString text(const std::string& s) { return QString::fromStdString(s); }

QString subtitle(const Show& show) {
    QStringList parts;
    for (const std::string& part : {show.act, show.venue, show.date})
        if (!part.empty()) parts.append(text(part));
    return parts.join(QStringLiteral("  ·  "));
}

/// Head and foot taken off.
QRectF plan_room(const QRectF& page, const PlanDrawing& drawing) {
    return page.adjusted(0.0, drawing.title ? kTitleHeight : 0.0, 0.0, -(drawing.map ? kFootWithLegend : kFootHeight));
}
}  // namespace

PlanPainter::PlanPainter(const Show& show, PlanDrawing drawing)
    : show_(show), drawing_(std::move(drawing)), looks_(looks_of(show)), extent_(extent_of(show)) {
    if (drawing_.map && !drawing_.map->image.isNull()) extent_ |= drawing_.map->page;
    // Places far out in the house are told in words.
    std::erase_if(looks_, [this](const ObjectLook& look) {
        return look.kind == ObjectKind::listener && !extent_.contains(look.at);
    });
}

double PlanPainter::pixels_per_metre(double scale) { return kPixelsPerMetre / scale; }

bool PlanPainter::upright() const { return extent_.height() > extent_.width() * 1.05; }

double PlanPainter::scale_for(QSizeF area_px) const {
    const QRectF room = plan_room(QRectF(QPointF(), area_px), drawing_);
    for (const double scale : kScales) {
        const QSizeF needed = drawn(pixels_per_metre(scale)).size() * pixels_per_metre(scale);
        if (needed.width() <= room.width() && needed.height() <= room.height()) return scale;
    }
    return kScales.back();
}

double PlanPainter::height_for(QSizeF area_px) const {
    const double ppm = pixels_per_metre(scale_for(area_px)), plan = drawn(ppm).height() * ppm;
    const double around = area_px.height() - plan_room(QRectF(QPointF(), area_px), drawing_).height();
    return std::min(area_px.height(), plan + around);
}

QRectF PlanPainter::drawn(double pixels_per_metre) const {
    PlanStyle style = page_style();
    style.px = 1.0 / pixels_per_metre;
    const double words = kWordsPx * style.px;
    QRectF area = extent_.adjusted(-words, -words, words, words);
    const QRectF near = area.adjusted(-words, -words, words, words);  // a wall further away belongs to the room
    for (const QRectF& box : stage_word_boxes(show_, style))
        if (near.contains(box)) area |= box;
    return area;
}

PlanStyle PlanPainter::page_style() const { return {drawing_.ink, 1.0, drawing_.font, show_.display.units}; }

void PlanPainter::paint(QPainter& painter, const QRectF& area, double px) const {
    painter.save();
    painter.translate(area.topLeft());
    painter.scale(px, px);
    const QRectF page(QPointF(), area.size() / px);
    painter.setRenderHint(QPainter::Antialiasing);
    if (drawing_.background) painter.fillRect(page, drawing_.ink.paper);
    const double scale = scale_for(page.size());
    paint_plan(painter, plan_room(page, drawing_), pixels_per_metre(scale));
    if (drawing_.title) paint_title(painter, page);
    paint_foot(painter, page, scale);
    painter.restore();
}

void PlanPainter::paint_title(QPainter& painter, const QRectF& page) const {
    const PlanStyle style = page_style();
    const QString title = show_.title.empty() ? QCoreApplication::translate("Plan", "Stage plan") : text(show_.title);
    draw_text(painter, page.topLeft() + QPointF(2.0, 12.0), title, style, kTitlePx, style.ink.ink, Anchor::left);
    draw_text(painter, page.topLeft() + QPointF(2.0, 32.0), subtitle(show_), style, kTextPx, style.ink.soft,
              Anchor::left);
}

void PlanPainter::paint_plan(QPainter& painter, const QRectF& room, double pixels_per_metre) const {
    painter.save();
    painter.translate(room.center());
    painter.scale(pixels_per_metre, pixels_per_metre);
    const QRectF area = drawn(pixels_per_metre);
    painter.translate(-area.center());
    PlanStyle style = page_style();
    style.px = 1.0 / pixels_per_metre;
    paint_stage_floor(painter, show_, style);
    if (drawing_.grid) paint_grid(painter, area, style);
    if (drawing_.map) paint_map(painter, *drawing_.map, style, drawing_.map_opacity);
    const StageWords words = stage_words(show_, style);
    paint_stage_edge(painter, show_.stage.outline, words, style);
    paint_stage_words(painter, words, style);
    const auto paint_kind = [&](bool risers) {
        for (const ObjectLook& look : looks_)
            if ((look.kind == ObjectKind::riser) == risers) paint_object(painter, look, style, style.ink.ink);
    };
    paint_kind(true);
    paint_loops(painter, style);
    paint_kind(false);
    paint_labels(painter, style, room.size());
    painter.restore();
}

void PlanPainter::paint_loops(QPainter& painter, const PlanStyle& style) const {
    if (!drawing_.analysis) return;
    const RiskScale scale(show_.system.target_margin_db, style.ink.dark);
    for (const LoopLine& line : loop_lines(show_, *drawing_.analysis, drawing_.highlight))
        paint_loop_line(painter, line, style, scale);
}

void PlanPainter::paint_labels(QPainter& painter, const PlanStyle& style, QSizeF room_px) const {
    std::vector<const ObjectLook*> looks;
    for (const ObjectLook& look : looks_) looks.push_back(&look);
    QRectF page(QPointF(), room_px * style.px);
    page.moveCenter(drawn(1.0 / style.px).center());
    PageNames names = names_on_page(show_, looks, style, page);
    names.backed = drawing_.map != nullptr;
    paint_names(painter, looks, names, style);
}

void PlanPainter::paint_foot(QPainter& painter, const QRectF& page, double scale) const {
    const PlanStyle style = page_style();
    const double ppm = pixels_per_metre(scale), bottom = page.bottom() - 4.0;
    paint_scale_bar(painter, {page.left() + 2.0, bottom}, ppm, style);
    const double after_bar = page.left() + 2.0 + scale_bar_length(ppm, style.units) * ppm + 18.0;
    PlanStyle plan = style;
    plan.px = 1.0 / ppm;
    QString words = QStringLiteral("1 : %1").arg(scale);
    if (drawing_.grid)
        words += QCoreApplication::translate("Plan", ", grid %1").arg(unit_length_text(grid_step(plan), style.units));
    draw_text(painter, {after_bar, bottom - 6.0}, words, style, kTextPx, style.ink.ink, Anchor::left);
    // Clear of whatever stands in front of the stage.
    if (!extent_.contains(extent_with_house(show_)))
        draw_text(painter, {after_bar, bottom - 6.0 - kFootLine}, house_words(show_), style, kTextPx, style.ink.soft,
                  Anchor::left);
    if (!drawing_.map) return;
    paint_legend(painter, {page.right() - kLegendSize.width() - 2.0, page.bottom() - kLegendSize.height() - 2.0},
                 *drawing_.map, style, drawing_.map_opacity);
    const QString notice = map_notice(*drawing_.map->grid);
    if (!notice.isEmpty())
        draw_text(painter, {page.right() - 2.0, 12.0}, notice, style, kTextPx, style.ink.ink, Anchor::right);
}

}  // namespace howlmap::app
