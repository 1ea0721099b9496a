// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/sheet_plan.h"

#include <QCoreApplication>

#include "app/export/plan_painter.h"
#include "app/export/sheet/flow.h"
#include "core/report/words.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {
constexpr double kPixelInPoints = 0.75;
constexpr double kMapOpacity = 0.7;  ///< names stay readable on it

QString map_words(const Show& show, const std::string& input) {
    const Input* found = find_by_id(show.inputs, input);
    return QCoreApplication::translate("Sheet",
                                       "Map: how much gain channel %1, %2, has left before it rings if it stood there, "
                                       "everything else as drawn.")
        .arg(found ? found->channel : 0)
        .arg(QString::fromStdString(found ? report::name_of(*found) : input));
}

QString caption(const Show& show, const SheetPlanLook& look) {
    QStringList words;
    if (look.map) words.append(map_words(show, look.map->grid->id));
    if (look.loops)
        words.append(QCoreApplication::translate(
            "Sheet", "Lines: the loops from loudspeaker to microphone that matter, heavier the nearer to ringing."));
    return words.join(u' ');
}
}  // namespace

PlanBlock plan_of_sheet(const SheetContent& content, const SheetPlanLook& look) {
    // Places in the house are for the levels, not for who sets the stage up: without them the stage fills the page.
    auto stage = std::make_shared<Show>(content.show);
    stage->listeners.clear();
    PlanDrawing drawing;
    drawing.font = sheet_font(Type::body);
    drawing.title = false;  // the sheet has its own
    drawing.background = false;
    drawing.map = look.map;
    drawing.map_opacity = kMapOpacity;
    if (look.loops) drawing.analysis = std::make_shared<const AnalysisResult>(content.result);
    auto plan = std::make_shared<PlanPainter>(*stage, std::move(drawing));
    return {[stage, plan](QSizeF room) { return plan->height_for(room / kPixelInPoints) * kPixelInPoints; },
            [stage, plan](QPainter& painter, const QRectF& area) {
                painter.save();
                painter.setClipRect(area);  // a wall far out front belongs to the room, not to the next paragraph
                plan->paint(painter, area, kPixelInPoints);
                painter.restore();
            },
            caption(content.show, look)};
}

std::string input_of_first_ring(const AnalysisResult& result) {
    return result.rings.empty() ? std::string() : result.rings.front().strongest_input;
}

tl::expected<std::shared_ptr<const MapPicture>, QString> sheet_map(const Show& show, const std::string& input,
                                                                   const Job& job) {
    const MapRequest request{MapKind::feedback, input, {}};
    auto grid = make_map(show, request, job);
    if (!grid) return tl::make_unexpected(QString::fromStdString(grid.error().message));
    const MapLook look = look_of(show, request, Ink::for_print());
    return std::make_shared<const MapPicture>(picture_of(std::make_shared<const MapGrid>(std::move(*grid)), look));
}

}  // namespace howlmap::app
