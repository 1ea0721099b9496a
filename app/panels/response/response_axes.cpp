// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/response/response_axes.h"

#include <algorithm>
#include <cmath>

#include "app/export/ink.h"
#include "app/settings/figures.h"
#include "app/settings/theme.h"
#include "core/units/bands.h"
#include "core/units/notes.h"

namespace howlmap::app {
namespace {

constexpr double kRoomForLabel = 38.0;  ///< pixels
constexpr double kRoomForLine = 15.0;
constexpr int kLowestNote = 16, kHighestNote = 136;  ///< semitones, 69 is A4
constexpr double kNarrowest = 1.2;                   ///< least ratio of highest to lowest frequency shown

QString short_band(double hz) { return hz < 1000.0 ? number_text(hz, 1) : number_text(hz / 1000.0, 2) + u'k'; }

}  // namespace

ResponseAxes::ResponseAxes(QCustomPlot& plot)
    : QObject(&plot),
      plot_(plot),
      band_ticks_(new QCPAxisTickerText),
      note_ticks_(new QCPAxisTickerText),
      level_ticks_(new QCPAxisTickerFixed) {
    QCPAxisRect* rect = plot_.axisRect();
    notes_ = rect->addAxis(QCPAxis::atBottom);
    for (QCPAxis* axis : {plot_.xAxis, notes_}) {
        axis->setScaleType(QCPAxis::stLogarithmic);
        axis->setSubTicks(false);
        axis->setTickLength(0, 4);
        axis->setRange(kLowestHz, kHighestHz);
    }
    plot_.xAxis->setTicker(band_ticks_);
    plot_.xAxis->grid()->setSubGridVisible(false);
    notes_->setTicker(note_ticks_);
    notes_->setPadding(0);
    plot_.yAxis->setRange(-36.0, 9.0);
    plot_.yAxis->setSubTicks(false);
    plot_.yAxis->setTicker(level_ticks_);
    rect->setRangeDrag(Qt::Horizontal);
    rect->setRangeZoom(Qt::Horizontal);
    rect->setRangeZoomAxes(plot_.xAxis, nullptr);
    rect->setRangeDragAxes(plot_.xAxis, nullptr);
    rect->setMinimumMargins(QMargins(44, 4, 14, 0));
    connect(plot_.xAxis, qOverload<const QCPRange&>(&QCPAxis::rangeChanged), this, &ResponseAxes::keep_inside);
    connect(&plot_, &QCustomPlot::beforeReplot, this, &ResponseAxes::label);
    restyle();
}

void ResponseAxes::show_all() { plot_.xAxis->setRange(kLowestHz, kHighestHz); }

void ResponseAxes::keep_inside(const QCPRange& range) {
    QCPRange kept(std::max(range.lower, kLowestHz), std::min(range.upper, kHighestHz));
    if (kept.upper / kept.lower < kNarrowest) {
        const double middle =
            std::clamp(std::sqrt(std::max(1.0, range.lower * range.upper)), kLowestHz * 1.1, kHighestHz / 1.1);
        kept = {middle / std::sqrt(kNarrowest), middle * std::sqrt(kNarrowest)};
    }
    const QSignalBlocker block(plot_.xAxis);
    plot_.xAxis->setRange(kept);
    notes_->setRange(kept);
}

void ResponseAxes::label() {
    const double six = plot_.yAxis->coordToPixel(-6.0) - plot_.yAxis->coordToPixel(0.0);
    level_ticks_->setTickStep(six >= kRoomForLine ? 6.0 : six >= kRoomForLine / 2.0 ? 12.0 : 18.0);
    const double octave = plot_.xAxis->coordToPixel(2000.0) - plot_.xAxis->coordToPixel(1000.0);
    const int every_band = octave / 3.0 >= kRoomForLabel ? 1 : octave >= kRoomForLabel ? 3 : 6;
    band_ticks_->clear();
    for (int band = 0; band < kThirdOctaves; ++band)
        band_ticks_->addTick(third_octave_centre(band),
                             (band - 17) % every_band == 0
                                 ? short_band(kNominalThirdOctaves[static_cast<std::size_t>(band)])
                                 : QString());
    const int every_note = octave / 12.0 >= kRoomForLabel  ? 1
                           : octave / 4.0 >= kRoomForLabel ? 3
                           : octave >= kRoomForLabel       ? 12
                                                           : 24;
    note_ticks_->clear();
    for (int note = kLowestNote; note <= kHighestNote; ++note) {
        const double hz = semitone_hz(note);
        if (note % 12 == 0 || octave / 12.0 > 4.0)
            note_ticks_->addTick(hz, note % every_note == 0 ? QString::fromStdString(note_of(hz).name) : QString());
    }
}

void ResponseAxes::restyle() {
    const Ink ink = Ink::from(plot_.palette());
    plot_.setBackground(QBrush(ink.paper));
    QFont font = tabular(plot_.font());
    for (QCPAxis* axis : {plot_.xAxis, plot_.yAxis, notes_}) {
        axis->setBasePen(QPen(ink.soft));
        axis->setTickPen(QPen(ink.soft));
        axis->setSubTickPen(QPen(ink.soft));
        axis->setTickLabelColor(ink.soft);
        axis->setTickLabelFont(font);
        axis->setLabelColor(ink.soft);
        axis->grid()->setPen(QPen(ink.faint));
        axis->grid()->setZeroLinePen(Qt::NoPen);
    }
    notes_->setBasePen(Qt::NoPen);
    notes_->grid()->setVisible(false);
}

}  // namespace howlmap::app
