// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/overlay_look.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>
#include <algorithm>
#include <cmath>

#include "app/canvas/plan_view.h"
#include "app/settings/figures.h"
#include "core/units/bands.h"

namespace howlmap::app {
namespace {
constexpr int kStepsAnOctave = 24;
constexpr int kLastStep = 240;  ///< beyond 20 kHz, which counts instead
constexpr int kOneFrequency = 1;  ///< place in the list, after "worst of all"
constexpr int kFirstBand = 2;
constexpr double kUsualHz = 1000.0;

double hz_at(int position) {
    return std::clamp(kLowestHz * std::exp2(static_cast<double>(position) / kStepsAnOctave), kLowestHz, kHighestHz);
}
int position_of(double hz) {
    return static_cast<int>(std::lround(kStepsAnOctave * std::log2(std::max(hz, kLowestHz) / kLowestHz)));
}

bool shows_levels(OverlayKind kind) { return kind == OverlayKind::level || kind == OverlayKind::wash; }

QSlider* slider(int least, int most, int page) {
    auto* made = new QSlider(Qt::Horizontal);
    made->setRange(least, most);
    made->setPageStep(page);
    made->setMinimumWidth(60);
    return made;
}
}  // namespace

OverlayLook::OverlayLook(PlanView& plan, QWidget* parent)
    : QWidget(parent),
      plan_(plan),
      band_(new QComboBox),
      frequency_(slider(0, kLastStep, kStepsAnOctave)),
      opacity_(slider(10, 100, 10)),
      hz_(new QLabel),
      slider_name_(new QLabel(tr("&Frequency"))) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(4, 0, 4, 0);
    row->addWidget(frequency_part(), 3);
    row->addWidget(opacity_part(), 1);
    row->addStretch(1);
    connect(band_, &QComboBox::activated, this, &OverlayLook::band_chosen);
    connect(frequency_, &QSlider::valueChanged, this, &OverlayLook::slid);
    connect(opacity_, &QSlider::valueChanged, this, [this](int percent) {
        OverlayChoice choice = plan_.overlay();
        choice.opacity = percent / 100.0;
        plan_.set_overlay(choice);
    });
    connect(&plan_, &PlanView::overlay_changed, this, &OverlayLook::follow);
    follow();
}

QWidget* OverlayLook::frequency_part() {
    band_->setAccessibleName(tr("Frequencies of the map"));
    band_->setToolTip(
        tr("Worst of all: at every place the frequency that rings first. Or one third-octave band, or one frequency."));
    frequency_->setAccessibleName(tr("Frequency of the map"));
    frequency_->setToolTip(tr("The map at this one frequency alone. \"Worst of all\" in the list goes back."));
    slider_name_->setBuddy(frequency_);
    hz_->setMinimumWidth(hz_->fontMetrics().horizontalAdvance(QStringLiteral("12.5 kHz ")));
    auto* at = new QLabel(tr("&at"));
    at->setBuddy(band_);
    auto* part = new QWidget;
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    for (QWidget* widget : std::initializer_list<QWidget*>{at, band_, slider_name_}) row->addWidget(widget);
    row->addWidget(frequency_, 1);
    row->addWidget(hz_);
    return part;
}

QWidget* OverlayLook::opacity_part() {
    opacity_->setAccessibleName(tr("Opacity of the map"));
    opacity_->setToolTip(tr("How strongly the map shows under the objects."));
    auto* name = new QLabel(tr("&Opacity"));
    name->setBuddy(opacity_);
    auto* part = new QWidget;
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(name);
    row->addWidget(opacity_, 1);
    return part;
}

void OverlayLook::band_chosen(int index) {
    OverlayChoice choice = plan_.overlay();
    choice.band.reset();
    choice.hz.reset();
    const int band = band_->itemData(index).toInt();
    if (band >= 0) choice.band = band;
    if (index == kOneFrequency && !shows_levels(choice.kind)) choice.hz = hz_at(frequency_->value());
    plan_.set_overlay(choice);
}

void OverlayLook::slid(int position) {
    OverlayChoice choice = plan_.overlay();
    choice.band.reset();
    choice.hz = hz_at(position);
    plan_.set_overlay(choice);
}

/// Shows what the plan shows.
void OverlayLook::follow() {
    const OverlayChoice& choice = plan_.overlay();
    const bool levels = shows_levels(choice.kind);
    const QSignalBlocker quiet_bands(band_), quiet_slider(frequency_), quiet_opacity(opacity_);
    band_->clear();
    band_->addItem(levels ? tr("all bands, A-weighted") : tr("worst of all"), -1);
    if (!levels) band_->addItem(tr("one frequency"), -1);
    for (int band = 0; band < kThirdOctaves; ++band)
        band_->addItem(tr("band %1").arg(band_text(kNominalThirdOctaves[static_cast<std::size_t>(band)])), band);
    const int first_band = levels ? kFirstBand - 1 : kFirstBand;
    band_->setCurrentIndex(choice.band ? first_band + *choice.band : choice.hz && !levels ? kOneFrequency : 0);
    const double hz = choice.hz ? *choice.hz : choice.band ? third_octave_centre(*choice.band) : kUsualHz;
    if (choice.hz || choice.band) frequency_->setValue(position_of(hz));
    hz_->setText(choice.hz ? hz_text(*choice.hz) : QString());
    for (QWidget* widget : std::initializer_list<QWidget*>{slider_name_, frequency_, hz_}) widget->setVisible(!levels);
    opacity_->setValue(static_cast<int>(std::lround(100.0 * choice.opacity)));
}

}  // namespace howlmap::app
