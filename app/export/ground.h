// SPDX-License-Identifier: GPL-3.0-or-later
// What lies under the objects: page, grid, stage floor with its edge, reflecting surfaces, the words around the stage.
#pragma once
#include <QLineF>
#include <QRectF>
#include <QString>
#include <vector>

#include "app/export/plan_style.h"
#include "core/show/show.h"

namespace howlmap::app {

/// Metres between grid lines: half a metre or its 1, 2, 5 series (feet: 1, 2, 5 ..) so that lines stand at least 14
/// pixels apart.
double grid_step(const PlanStyle& style);
/// Area of stage, risers and objects, page coordinates. Places in the house count only within two metres of the stage
/// edge: the stage is what one wants to see.
QRectF extent_of(const Show& show);
/// The same with every place in the house.
QRectF extent_with_house(const Show& show);

void paint_grid(QPainter& painter, const QRectF& area, const PlanStyle& style);
void paint_stage_floor(QPainter& painter, const Show& show, const PlanStyle& style);
/// A plane that reflects, as a line a little longer than the stage, and its name beside.
struct PlaneMark {
    QLineF line;
    QString name;
    QPointF name_at;  ///< middle of the height of its first letter
    double turn_deg = 0.0;
};
struct StageWord {
    QString text;
    QPointF at;  ///< its middle
    double turn_deg = 0.0;
};
/// "AUDIENCE" below, "STAGE LEFT" and "STAGE RIGHT" beside, "UPSTAGE" above, and the planes. They make way for objects
/// and for each other, which takes longer to find than to paint.
struct StageWords {
    std::vector<StageWord> words;
    std::vector<PlaneMark> planes;
};
StageWords stage_words(const Show& show, const PlanStyle& style);
/// Edge of the stage, front edge heavier, and the planes that reflect.
void paint_stage_edge(QPainter& painter, const Outline& stage, const StageWords& words, const PlanStyle& style);
void paint_stage_words(QPainter& painter, const StageWords& words, const PlanStyle& style);
/// The places in the house that the page does not reach, as words; empty without such places.
QString house_words(const Show& show);
/// Where those words stand, page coordinates.
std::vector<QRectF> stage_word_boxes(const Show& show, const PlanStyle& style);

}  // namespace howlmap::app
