// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <utility>

#include "app/canvas/drag_reading.h"
#include "app/canvas/items/guides.h"
#include "app/canvas/items/handles.h"
#include "app/canvas/nudge.h"
#include "app/canvas/overlay/plan_layers.h"
#include "app/canvas/plan_accessible.h"
#include "app/canvas/plan_actions.h"
#include "app/canvas/plan_furniture.h"
#include "app/canvas/plan_rulers.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/tools/plan_tools.h"
#include "app/export/ground.h"
#include "app/export/length_text.h"
#include "core/units/bands.h"

namespace howlmap::app {

PlanView::PlanView(Document& document, Selection& selection, AnalysisService& analysis, QWidget* parent)
    : QGraphicsView(parent),
      document_(document),
      selection_(selection),
      analysis_(analysis),
      scene_(std::make_unique<PlanScene>(document, selection)),
      guides_(std::make_unique<Guides>(*scene_)),
      handles_(new Handles(*scene_)),
      reading_(new DragReading(*this)),
      furniture_(new PlanFurniture(*this)),
      rulers_(new PlanRulers(*this)) {
    scene_->addItem(handles_);
    setScene(scene_.get());
    setViewportUpdateMode(MinimalViewportUpdate);
    setCacheMode(CacheBackground);              // paper and grid
    setOptimizationFlag(DontSavePainterState);  // each item sets its own pen and brush
    setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    setTransformationAnchor(NoAnchor);
    setResizeAnchor(AnchorViewCenter);
    setFrameShape(NoFrame);
    // Bars that come and go change what the whole plan has to fit into, which can make them go and come for ever.
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    setLayoutDirection(Qt::LeftToRight);  // stage left stays on the right, whichever way one reads
    setFocusPolicy(Qt::StrongFocus);
    setAcceptDrops(true);
    viewport()->setMouseTracking(true);
    setAccessibleName(tr("Plan"));
    setAccessibleDescription(
        tr("The stage seen from above, audience at the bottom. Tab goes from object to object, arrows move."));
    scene_->set_font(font());
    scene_->set_ink(Ink::from(palette()));
    install_plan_accessibility();
    nudge_ = std::make_unique<Nudge>(document_);
    tools_ = std::make_unique<PlanTools>(*this);
    layers_ = new PlanLayers(*this);
    layers_->setParent(this);
    connect(layers_, &PlanLayers::map_changed, furniture_, qOverload<>(&QWidget::update));
    connect(layers_, &PlanLayers::map_changed, this, [this] {
        if (fits_ && furniture_->legend().isEmpty() == legend_fitted_) return zoom_fit();
        scene_->set_view(1.0 / pixels_per_metre(), name_room());
    });
    actions_ = new PlanActions(*this);
    connect(&selection_, &Selection::changed, this, [this] { handles_->refresh(); });
    connect(scene_.get(), &PlanScene::objects_changed, this, [this] { handles_->refresh(); });
    connect(scene_.get(), &PlanScene::style_changed, this, [this] {
        handles_->refresh();
        resetCachedContent();
    });
    connect(&document_, &Document::replaced, this, [this] {
        tools_->cancel();
        selection_.clear();
        highlight_.reset();
        set_overlay({});
        zoom_fit();
    });
    connect(&analysis_, &AnalysisService::updated, this, &PlanView::follow_frequency);
    set_rulers_visible(true);
    zoom_fit();
}

PlanView::~PlanView() {
    delete layers_;
    tools_.reset();
    setScene(nullptr);
}

ToolKind PlanView::tool() const { return tools_->kind(); }

void PlanView::set_tool(ToolKind tool) {
    if (tool == tools_->kind()) return;
    tools_->choose(tool);
    Q_EMIT tool_changed(tool);
}

void PlanView::set_overlay(const OverlayChoice& choice) {
    if (choice == overlay_) return;
    overlay_ = choice;
    layers_->set_overlay(choice);
    follow_frequency();
    Q_EMIT overlay_changed();
}

double PlanView::shown_frequency() const {
    constexpr double kUsualHz = 1000.0;  // while nothing rings and nothing is chosen
    if (overlay_.hz) return *overlay_.hz;
    if (overlay_.band) return third_octave_centre(*overlay_.band);
    if (highlight_) return highlight_->hz;
    const auto result = analysis_.result();
    return result && !result->rings.empty() ? result->rings.front().hz : kUsualHz;
}

void PlanView::follow_frequency() {
    const double hz = shown_frequency();
    if (hz == std::exchange(told_hz_, hz)) return;
    layers_->frequency_changed();
    Q_EMIT shown_frequency_changed(hz);
}

void PlanView::set_snapping(bool on) { snapping_ = on; }

void PlanView::set_grid_visible(bool on) {
    grid_visible_ = on;
    resetCachedContent();
    viewport()->update();
}

void PlanView::set_rulers_visible(bool on) {
    rulers_visible_ = on;
    rulers_->show(on);
    setViewportMargins(on ? kRulerPx : 0, on ? kRulerPx : 0, 0, 0);
}

void PlanView::set_highlight(const std::optional<Ring>& ring) {
    highlight_ = ring;
    layers_->set_highlight(ring);
    follow_frequency();
}

void PlanView::set_ghost(const std::optional<Show>& show) { layers_->set_ghost(show); }

Vec2 PlanView::plan_point(QPoint viewport_point) const {
    // Through the inverse of the whole transform: mapToScene of a QPoint is the same, but says so less clearly.
    return to_plan(viewportTransform().inverted().map(QPointF(viewport_point)));
}

QPoint PlanView::viewport_point(Vec2 plan_point) const { return mapFromScene(to_page(plan_point)); }

Ids PlanView::selected_ids() const {
    Ids ids;
    for (const QString& id : selection_.ids()) ids.push_back(id.toStdString());
    return ids;
}

void PlanView::escape() {
    if (tools_->cancel()) return;
    if (tools_->kind() != ToolKind::select) return set_tool(ToolKind::select);
    selection_.clear();
}

void PlanView::mousePressEvent(QMouseEvent* event) {
    nudge_->finish();
    tools_->press(*event);
}
void PlanView::mouseMoveEvent(QMouseEvent* event) {
    read_place(event->position().toPoint());
    tools_->move(*event);  // what a tool reads there says more than the place alone
}
void PlanView::mouseReleaseEvent(QMouseEvent* event) { tools_->release(*event); }
void PlanView::mouseDoubleClickEvent(QMouseEvent* event) {
    tools_->double_click(*event);
    tools_->press(*event);
}

/// Place under the pointer, and what the map says there.
void PlanView::read_place(QPoint viewport_point) {
    rulers_->mark_pointer(viewport_point);
    const Vec2 at = plan_point(viewport_point);
    const auto picture = layers_->maps().picture();
    const QString value = picture ? map_reading(*picture->grid, at) : QString();
    furniture_->set_reading(value);
    const Units units = document_.show().display.units;
    QString place = tr("x %1, y %2").arg(length_text(at.x, units), length_text(at.y, units));
    if (!value.isEmpty()) place += QStringLiteral("   ") + value;
    Q_EMIT pointer_reading(place);
}

void PlanView::drawBackground(QPainter* painter, const QRectF& rect) {
    const PlanStyle& style = scene_->style();
    painter->fillRect(rect, style.ink.paper);
    if (grid_visible_) paint_grid(*painter, rect, style);
}

void PlanView::resizeEvent(QResizeEvent* event) {
    QGraphicsView::resizeEvent(event);
    furniture_->setGeometry(viewport()->geometry());
    rulers_->lay_out();
    if (fits_) zoom_fit();
}

void PlanView::scrollContentsBy(int dx, int dy) {
    QGraphicsView::scrollContentsBy(dx, dy);
    if (rulers_) rulers_->update();
}

void PlanView::changeEvent(QEvent* event) {
    QGraphicsView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) scene_->set_ink(Ink::from(palette()));
    if (event->type() == QEvent::FontChange) scene_->set_font(font());
}

void PlanView::leaveEvent(QEvent* event) {
    scene_->set_hovered({});
    furniture_->set_reading({});
    rulers_->mark_pointer({-1, -1});
    QGraphicsView::leaveEvent(event);
}

}  // namespace howlmap::app
