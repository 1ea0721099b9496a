// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/knob_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>
#include <cmath>

#include "app/lesson/lesson_state.h"
#include "app/settings/number_box.h"
#include "core/report/words.h"
#include "core/units/lengths.h"

namespace howlmap::app {
namespace {

constexpr int kColumns = 6, kSliderSteps = 1000;

// The slider of a frequency goes by octaves.
double along(Knob knob, double value) {
    const KnobRange& r = range_of(knob);
    const bool octaves = knob == Knob::hz || knob == Knob::cut_hz;
    return octaves ? std::log(value / r.least) / std::log(r.most / r.least) : (value - r.least) / (r.most - r.least);
}
double value_at(Knob knob, double along) {
    const KnobRange& r = range_of(knob);
    const bool octaves = knob == Knob::hz || knob == Knob::cut_hz;
    const double value = octaves ? r.least * std::pow(r.most / r.least, along) : r.least + along * (r.most - r.least);
    return std::round(value / r.step) * r.step;
}

bool is_length(Knob knob) { return knob == Knob::distance || knob == Knob::height || knob == Knob::speaker_height; }

}  // namespace

KnobPanel::KnobPanel(LessonState& state, QWidget* parent) : QWidget(parent), state_(state) {
    setObjectName(QStringLiteral("knobs"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(10, 4, 10, 8);
    grid->setHorizontalSpacing(14);
    grid->setVerticalSpacing(2);
    add_number(grid, 0, Knob::hz, tr("Freq&uency"), tr(" Hz"));
    add_number(grid, 1, Knob::distance, tr("&Distance"), tr(" m"));
    add_number(grid, 2, Knob::height, tr("&Height"), tr(" m"));
    add_number(grid, 3, Knob::aim, tr("Microphone &aim"), tr("°"));
    add_number(grid, 4, Knob::level, tr("&Level at 1 m"), tr(" dB"));
    add_number(grid, 5, Knob::source, tr("Player at m&ic"), tr(" dB"));
    add_number(grid, 6, Knob::latency, tr("La&tency"), tr(" ms"));
    add_number(grid, 7, Knob::speaker_height, tr("Loudspeaker height"), tr(" m"));
    add_number(grid, 8, Knob::tilt, tr("Loudspeaker aim"), tr("°"));
    add_number(grid, 9, Knob::middle_cut, tr("&Middle"), tr(" dB"));
    add_number(grid, 10, Knob::cut_hz, tr("One band at"), tr(" Hz"));
    add_number(grid, 11, Knob::band_cut, tr("One &band by"), tr(" dB"));
    auto* switches = new QHBoxLayout;
    switches->setSpacing(14);
    add_switch(switches, Knob::polarity, tr("&Polarity turned"));
    add_switch(switches, Knob::floor, tr("&Floor reflects"));
    add_switch(switches, Knob::body, tr("Instrument with pick&up"));
    add_switch(switches, Knob::covered, tr("Sound holes &covered"));
    add_switch(switches, Knob::in_ears, tr("In-&ears"));
    switches->addStretch(1);
    add_pattern(switches);
    grid->addLayout(switches, 12 / kColumns, 0, 1, kColumns);
    for (int column = 0; column < kColumns; ++column) grid->setColumnStretch(column, 1);
    connect(&state_, &LessonState::changed, this, &KnobPanel::refresh);
    refresh();
}

void KnobPanel::add_number(QGridLayout* grid, int place, Knob knob, const QString& name, const QString& unit) {
    const KnobRange& range = range_of(knob);
    auto* box = new NumberBox;
    box->setObjectName(QString::fromLatin1(range.key));
    box->setRange(range.least, range.most);
    box->setDecimals(range.step < 0.05 ? 2 : range.step < 1.0 ? 1 : 0);
    box->setSingleStep(knob == Knob::hz ? 10.0 : range.step < 0.05 ? 0.05 : range.step);
    if (!is_length(knob)) box->setSuffix(unit);
    box->setKeyboardTracking(false);
    auto* label = new QLabel(name);
    label->setBuddy(box);
    const QString plain = QString(name).remove(u'&');
    box->setAccessibleName(plain);
    auto* slider = new QSlider(Qt::Horizontal);
    slider->setRange(0, kSliderSteps);
    slider->setAccessibleName(tr("%1, slider").arg(plain));
    slider->setFocusPolicy(Qt::NoFocus);  // the box beside it answers the same keys
    connect(box, &QDoubleSpinBox::valueChanged, this,
            [this, knob](double value) { state_.turn(knob, is_length(knob) ? value * unit_m_ : value); });
    connect(slider, &QSlider::sliderPressed, &state_, &LessonState::begin_drag);
    connect(slider, &QSlider::sliderReleased, &state_, &LessonState::end_drag);
    connect(slider, &QSlider::valueChanged, this,
            [this, knob](int value) { state_.turn(knob, value_at(knob, static_cast<double>(value) / kSliderSteps)); });
    auto* cell = new QVBoxLayout;
    cell->setSpacing(0);
    // The name has the whole width: other languages need it.
    cell->addWidget(label);
    auto* row = new QHBoxLayout;
    row->addWidget(slider, 1);
    row->addWidget(box);
    cell->addLayout(row);
    grid->addLayout(cell, place / kColumns, place % kColumns);
    numbers_[knob] = {box, slider};
}

void KnobPanel::add_switch(QBoxLayout* row, Knob knob, const QString& name) {
    auto* box = new QCheckBox(name);
    box->setObjectName(QString::fromLatin1(range_of(knob).key));
    box->setAccessibleName(QString(name).remove(u'&'));
    connect(box, &QCheckBox::toggled, this, [this, knob](bool on) { state_.turn(knob, on ? 1.0 : 0.0); });
    row->addWidget(box);
    switches_[knob] = box;
}

void KnobPanel::add_pattern(QBoxLayout* row) {
    pattern_ = new QComboBox;
    pattern_->setObjectName(QStringLiteral("pattern"));
    pattern_->setAccessibleName(tr("Pattern of the microphone"));
    for (int k = 0; k <= static_cast<int>(PatternName::figure_8); ++k)
        pattern_->addItem(QString::fromStdString(report::pattern_words(static_cast<PatternName>(k))));
    connect(pattern_, &QComboBox::currentIndexChanged, this, [this](int index) { state_.turn(Knob::pattern, index); });
    row->addWidget(pattern_);
}

/// Lengths in the units of the show that the bench came from.
void KnobPanel::follow_units() {
    const double unit_m = state_.bench().show.display.units == Units::imperial ? kMetresPerFoot : 1.0;
    if (unit_m == unit_m_) return;
    unit_m_ = unit_m;
    for (auto& [knob, number] : numbers_) {
        if (!is_length(knob)) continue;
        const QSignalBlocker quiet(number.box);
        number.box->setRange(range_of(knob).least / unit_m, range_of(knob).most / unit_m);
        number.box->setSuffix(unit_m == 1.0 ? tr(" m") : tr(" ft"));
    }
}

void KnobPanel::refresh() {
    follow_units();
    for (auto& [knob, number] : numbers_) {
        const QSignalBlocker quiet_box(number.box), quiet_slider(number.slider);
        number.box->setValue(state_.value(knob) / (is_length(knob) ? unit_m_ : 1.0));
        number.slider->setValue(static_cast<int>(std::lround(kSliderSteps * along(knob, state_.value(knob)))));
    }
    for (auto& [knob, button] : switches_) {
        const QSignalBlocker quiet(button);
        button->setChecked(state_.value(knob) > 0.5);
    }
    const bool body = state_.value(Knob::body) > 0.5;
    switches_[Knob::covered]->setEnabled(body);
    pattern_->setEnabled(!body);
    const QSignalBlocker quiet(pattern_);
    pattern_->setCurrentIndex(static_cast<int>(state_.value(Knob::pattern)));
}

}  // namespace howlmap::app
