// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/sheet_plan.h"

#include "app/export/plan_painter.h"
#include "app/export/sheet/flow.h"

namespace howlmap::app {
namespace {
constexpr double kPixelInPoints = 0.75;
}

PlanDrawer plan_of_sheet(const SheetContent& content, bool loops) {
    // Places in the house are for the levels, not for who sets the stage up: without them the stage fills the page.
    auto stage = std::make_shared<Show>(content.show);
    stage->listeners.clear();
    return [&content, stage, loops](QPainter& painter, const QRectF& area) {
        PlanDrawing drawing;
        drawing.font = sheet_font(Type::body);
        drawing.title = false;  // the sheet has its own
        drawing.background = false;
        if (loops) drawing.analysis = std::make_shared<const AnalysisResult>(content.result);
        painter.save();
        PlanPainter(*stage, drawing).paint(painter, area, kPixelInPoints);
        painter.restore();
    };
}

}  // namespace howlmap::app
