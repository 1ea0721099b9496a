// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/response/response_plot.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "app/export/ink.h"
#include "app/export/risk_scale.h"
#include "app/panels/response/response_axes.h"
#include "app/settings/figures.h"
#include "app/settings/theme.h"
#include "core/units/notes.h"

namespace howlmap::app {
namespace {

constexpr double kPickPixels = 9.0;
constexpr int kNames = 6;           ///< rings that are named at most, at one time
constexpr double kNameRoom = 92.0;  ///< pixels between two names

QVector<double> vector_of(const std::vector<double>& values) { return {values.begin(), values.end()}; }

void set_data(QCPGraph* graph, const std::vector<double>& hz, const std::vector<double>& db) {
    graph->setData(vector_of(hz), vector_of(db), true);
}

QCPItemStraightLine* level_line(QCustomPlot& plot, double db) {
    auto* line = new QCPItemStraightLine(&plot);
    line->point1->setCoords(100.0, db);
    line->point2->setCoords(1000.0, db);
    line->setSelectable(false);
    return line;
}

}  // namespace

ResponsePlot::ResponsePlot(QWidget* parent) : QCustomPlot(parent), axes_(new ResponseAxes(*this)) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Loop gain over frequency"));
    setMinimumHeight(110);
    setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    setNoAntialiasingOnDrag(false);
    setPlottingHints(QCP::phFastPolylines | QCP::phCacheLabels);  // it is drawn anew while the hand moves on the plan
    for (QCPGraph** graph : {&low_, &high_, &worst_, &gain_, &preview_, &marks_, &lit_}) *graph = addGraph();
    high_->setChannelFillGraph(low_);
    marks_->setLineStyle(QCPGraph::lsNone);
    lit_->setLineStyle(QCPGraph::lsNone);
    ringing_ = level_line(*this, 0.0);
    target_ = level_line(*this, -target_db_);
    cursor_ = new QCPItemStraightLine(this);
    cursor_->setVisible(false);
    for (int i = 0; i < kNames; ++i) {
        names_.append(new QCPItemText(this));
        names_.last()->setPositionAlignment(Qt::AlignHCenter | Qt::AlignBottom);
        names_.last()->setSelectable(false);
        names_.last()->setVisible(false);
    }
    connect(this, &QCustomPlot::beforeReplot, this, &ResponsePlot::place_names);
    connect(xAxis, qOverload<const QCPRange&>(&QCPAxis::rangeChanged), this, &ResponsePlot::view_changed);
    connect(this, &QCustomPlot::afterLayout, this, [this] {
        if (std::exchange(laid_out_, axisRect()->rect()) != axisRect()->rect()) Q_EMIT view_changed();
    });
    restyle();
}

void ResponsePlot::set_curves(std::shared_ptr<const LoopResponse> curves) {
    curves_ = std::move(curves);
    static const LoopResponse nothing;
    const LoopResponse& shown = curves_ ? *curves_ : nothing;
    set_data(gain_, shown.hz, shown.gain_db);
    set_data(worst_, shown.hz, shown.worst_phase_db);
    if (!shown.hz.empty()) {
        const double top = *std::max_element(shown.worst_phase_db.begin(), shown.worst_phase_db.end());
        // Room for the names of rings above the highest of them.
        yAxis->setRange(-36.0, std::max(9.0, std::ceil((top + 12.0) / 3.0) * 3.0));
    }
    replot(rpQueuedReplot);
}

void ResponsePlot::set_band(const ResponseBand* band) {
    static const ResponseBand nothing;
    const ResponseBand& shown = band ? *band : nothing;
    set_data(low_, shown.hz, shown.p05_db);
    set_data(high_, shown.hz, shown.p95_db);
    replot(rpQueuedReplot);
}

void ResponsePlot::set_preview(const LoopResponse* preview) {
    static const LoopResponse nothing;
    const LoopResponse& shown = preview ? *preview : nothing;
    set_data(preview_, shown.hz, shown.gain_db);
    replot(rpQueuedReplot);
}

void ResponsePlot::set_rings(const std::vector<Ring>& rings, double target_db) {
    rings_ = rings;
    target_db_ = target_db;
    target_->point1->setCoords(100.0, -target_db);
    target_->point2->setCoords(1000.0, -target_db);
    std::ranges::sort(rings_, {}, &Ring::hz);
    std::vector<double> hz, db;
    for (const Ring& ring : rings_) {
        hz.push_back(ring.hz);
        db.push_back(-ring.margin_db);
    }
    set_data(marks_, hz, db);
    replot(rpQueuedReplot);
}

void ResponsePlot::set_highlight(const std::optional<Ring>& ring) {
    highlight_ = ring;
    set_data(lit_, ring ? std::vector{ring->hz} : std::vector<double>{},
             ring ? std::vector{-ring->margin_db} : std::vector<double>{});
    replot(rpQueuedReplot);
}

/// The highlighted ring first, then the worst ones in view, as far as their names do not run into each other.
void ResponsePlot::place_names() {
    std::vector<Ring> wanted = rings_;
    std::ranges::sort(wanted, {}, &Ring::margin_db);
    if (highlight_) wanted.insert(wanted.begin(), *highlight_);
    std::vector<double> taken;
    int used = 0;
    for (const Ring& ring : wanted) {
        const double x = x_of(ring.hz);
        const bool free = std::ranges::none_of(taken, [x](double other) { return std::abs(x - other) < kNameRoom; });
        if (used == kNames || !free || !xAxis->range().contains(ring.hz)) continue;
        QCPItemText* name = names_[used++];
        name->setText(QStringLiteral("%1 %2").arg(hz_text(ring.hz), qstr(ring.note)));
        name->position->setCoords(ring.hz, yAxis->pixelToCoord(yAxis->coordToPixel(-ring.margin_db) - 7.0));
        name->setVisible(true);
        taken.push_back(x);
    }
    for (; used < kNames; ++used) names_[used]->setVisible(false);
}

QStringList ResponsePlot::ring_names() const {
    QStringList names;
    for (const QCPItemText* name : names_)
        if (name->visible()) names.append(name->text());
    return names;
}

std::optional<double> ResponsePlot::gain_at(double hz) const {
    if (!curves_ || curves_->hz.empty()) return std::nullopt;
    const auto next = std::ranges::lower_bound(curves_->hz, hz);
    const auto index = static_cast<std::size_t>(std::min(next - curves_->hz.begin(), std::ssize(curves_->hz) - 1));
    return curves_->gain_db[index];
}

void ResponsePlot::show_all() {
    axes_->show_all();
    replot();
}

void ResponsePlot::read_at(double hz) {
    const auto gain = gain_at(hz);
    const Note note = note_of(hz);
    QString text =
        QStringLiteral("%1   %2 %3 c").arg(hz_text(hz), qstr(note.name), QString::asprintf("%+d", qRound(note.cents)));
    if (gain) text += QStringLiteral("   %1").arg(gain_text(*gain));
    Q_EMIT reading(text);
}

void ResponsePlot::mouseMoveEvent(QMouseEvent* event) {
    QCustomPlot::mouseMoveEvent(event);
    if (!axisRect()->rect().contains(event->pos())) return leaveEvent(event);
    const double hz = xAxis->pixelToCoord(event->pos().x());
    cursor_->point1->setCoords(hz, 0.0);
    cursor_->point2->setCoords(hz, 1.0);
    cursor_->setVisible(true);
    read_at(hz);
    replot(rpQueuedReplot);
}

void ResponsePlot::leaveEvent(QEvent*) {
    if (!cursor_->visible()) return;
    cursor_->setVisible(false);
    Q_EMIT reading({});
    replot(rpQueuedReplot);
}

void ResponsePlot::mousePressEvent(QMouseEvent* event) {
    QCustomPlot::mousePressEvent(event);
    for (const Ring& ring : rings_) {
        const QPointF at(x_of(ring.hz), yAxis->coordToPixel(-ring.margin_db));
        if (QLineF(at, event->position()).length() <= kPickPixels) return Q_EMIT ring_picked(ring);
    }
}

void ResponsePlot::mouseDoubleClickEvent(QMouseEvent* event) {
    QCustomPlot::mouseDoubleClickEvent(event);
    if (event->button() == Qt::LeftButton) show_all();
}

void ResponsePlot::pan(double octaves) {
    const QCPRange range = xAxis->range();
    const double room = octaves > 0.0 ? std::log2(20000.0 / range.upper) : std::log2(20.0 / range.lower);
    const double by = std::exp2(octaves > 0.0 ? std::min(octaves, room) : std::max(octaves, room));
    xAxis->setRange(range.lower * by, range.upper * by);
    replot();
}

void ResponsePlot::zoom(double factor) {
    xAxis->scaleRange(factor);
    replot();
}

void ResponsePlot::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            return pan(-1.0 / 3.0);
        case Qt::Key_Right:
            return pan(1.0 / 3.0);
        case Qt::Key_Plus:
            return zoom(0.8);
        case Qt::Key_Minus:
            return zoom(1.25);
        case Qt::Key_Home:
            return show_all();
        default:
            QCustomPlot::keyPressEvent(event);
    }
}

void ResponsePlot::changeEvent(QEvent* event) {
    QCustomPlot::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && lit_) restyle();
}

void ResponsePlot::resizeEvent(QResizeEvent* event) {
    QCustomPlot::resizeEvent(event);
    Q_EMIT view_changed();
}

void ResponsePlot::restyle() {
    const Ink ink = Ink::from(palette());
    axes_->restyle();
    QColor veil = ink.ink;
    veil.setAlphaF(0.14F);
    low_->setPen(Qt::NoPen);
    high_->setPen(Qt::NoPen);
    high_->setBrush(veil);
    gain_->setPen(QPen(ink.ink, 1.6));
    worst_->setPen(QPen(ink.soft, 1.0, Qt::DotLine));
    preview_->setPen(QPen(ink.ink, 1.2, Qt::DashLine));
    const RiskScale risk(target_db_, ink.dark);
    ringing_->setPen(QPen(risk.solid(1.0), 1.4));
    target_->setPen(QPen(risk.solid(0.5), 1.2, Qt::DashLine));
    marks_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssTriangleInverted, QPen(risk.solid(1.0), 1.2), QBrush(risk.solid(0.7)), 8));
    lit_->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(ink.accent, 2.0), Qt::NoBrush, 15));
    cursor_->setPen(QPen(ink.soft, 1.0));
    for (QCPItemText* name : names_) {
        name->setColor(ink.ink);
        name->setFont(tabular(font()));
    }
    replot(rpQueuedReplot);
}

}  // namespace howlmap::app
