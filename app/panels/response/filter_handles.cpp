// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/response/filter_handles.h"

#include <QEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <cmath>
#include <utility>

#include "app/export/ink.h"
#include "app/panels/response/mix_edits.h"
#include "app/panels/response/response_plot.h"
#include "app/settings/figures.h"
#include "core/report/words.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

constexpr double kReachPixels = 10.0, kQStep = 1.15;
constexpr auto kLayer = "handles";

}  // namespace

FilterHandles::FilterHandles(Document& document, ResponsePlot& plot)
    : QObject(&plot), document_(document), plot_(plot) {
    plot_.addLayer(QLatin1StringView(kLayer));
    plot_.installEventFilter(this);
}

std::vector<FilterHandles::Handle> FilterHandles::handles_of(const Mix* mix) {
    std::vector<Handle> handles;
    if (!mix) return handles;
    for (const PeakFilter& notch : mix->notches)
        handles.push_back({notch.hz, notch.gain_db, false, qstr(report::peak_words(notch))});
    if (mix->high_pass)
        handles.push_back({mix->high_pass->hz, -3.0, true, qstr(report::high_pass_words(*mix->high_pass))});
    return handles;
}

void FilterHandles::set_mix(const std::string& mix) {
    std::vector<Handle> handles = handles_of(find_by_id(document_.show().mixes, mix));
    if (mix == mix_ && handles == handles_) return;
    if (mix != mix_) chosen_.reset();
    mix_ = mix;
    handles_ = std::move(handles);
    place();
}

void FilterHandles::place() {
    for (QCPLayerable* old : plot_.layer(QLatin1StringView(kLayer))->children())
        if (auto* item = qobject_cast<QCPAbstractItem*>(old)) plot_.removeItem(item);
    const Ink ink = Ink::from(plot_.palette());
    for (std::size_t i = 0; i < handles_.size(); ++i) {
        auto* tracer = new QCPItemTracer(&plot_);
        tracer->setLayer(QLatin1StringView(kLayer));
        tracer->position->setCoords(handles_[i].hz, handles_[i].db);
        tracer->setStyle(handles_[i].high_pass ? QCPItemTracer::tsSquare : QCPItemTracer::tsCircle);
        tracer->setSize(11.0);
        tracer->setPen(QPen(chosen_ == i ? ink.accent : ink.ink, chosen_ == i ? 2.2 : 1.4));
        tracer->setBrush(ink.paper);
    }
    plot_.replot(QCustomPlot::rpQueuedReplot);
}

std::optional<std::size_t> FilterHandles::chosen_notch() const {
    return chosen_ && *chosen_ < handles_.size() && !handles_[*chosen_].high_pass ? chosen_ : std::nullopt;
}

QPoint FilterHandles::handle(std::size_t index) const {
    const Handle& handle = handles_.at(index);
    return QPointF(plot_.xAxis->coordToPixel(handle.hz), plot_.yAxis->coordToPixel(handle.db)).toPoint();
}

std::optional<std::size_t> FilterHandles::handle_at(QPointF point) const {
    for (std::size_t i = 0; i < handles_.size(); ++i)
        if (QLineF(point, handle(i)).length() <= kReachPixels) return i;
    return std::nullopt;
}

bool FilterHandles::press(const QMouseEvent& event) {
    const auto at = event.button() == Qt::LeftButton ? handle_at(event.position()) : std::nullopt;
    if (!at) return false;
    held_ = chosen_ = at;
    document_.begin_gesture(handles_[*at].high_pass ? tr("Move high-pass") : tr("Move notch"));
    place();
    return true;
}

bool FilterHandles::move(const QMouseEvent& event) {
    if (!held_) {
        const auto at = handle_at(event.position());
        plot_.setToolTip(at ? handles_[*at].words : QString());
        return false;
    }
    const double hz = plot_.xAxis->pixelToCoord(event.position().x()),
                 db = plot_.yAxis->pixelToCoord(event.position().y());
    const bool high_pass = handles_[*held_].high_pass;
    document_.update_gesture([&, notch = *held_](Show& show) {
        high_pass ? set_high_pass(show, mix_, hz) : set_notch(show, mix_, notch, hz, db);
    });
    set_mix(mix_);
    return true;
}

bool FilterHandles::release() {
    if (!std::exchange(held_, std::nullopt)) return false;
    document_.end_gesture();
    return true;
}

bool FilterHandles::wheel(const QWheelEvent& event) {
    const auto at = handle_at(event.position());
    if (!at || handles_[*at].high_pass) return false;
    const Mix* mix = find_by_id(document_.show().mixes, mix_);
    const double q = mix->notches[*at].q * std::pow(kQStep, event.angleDelta().y() / 120.0);
    document_.edit(tr("Change width of notch"), [&](Show& show) { set_notch_q(show, mix_, *at, q); });
    return true;
}

bool FilterHandles::eventFilter(QObject*, QEvent* event) {
    switch (event->type()) {
        case QEvent::MouseButtonPress:
            return press(static_cast<QMouseEvent&>(*event));
        case QEvent::MouseMove:
            return move(static_cast<QMouseEvent&>(*event));
        case QEvent::MouseButtonRelease:
            return release();
        case QEvent::Wheel:
            return wheel(static_cast<QWheelEvent&>(*event));
        case QEvent::PaletteChange:
            place();
            return false;
        default:
            return false;
    }
}

}  // namespace howlmap::app
