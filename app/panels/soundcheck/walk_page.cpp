// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/walk_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/document/document.h"
#include "app/panels/soundcheck/cut_offer.h"
#include "app/panels/soundcheck/ring_out_list.h"
#include "app/settings/figures.h"
#include "core/units/bands.h"

namespace howlmap::app {

WalkPage::WalkPage(const Workspace& workspace, const RingOutModel& order, QWidget* parent)
    : QWidget(parent), work_(workspace), order_(order) {
    build();
    connect(forward_, &QPushButton::clicked, this, &WalkPage::forward);
    connect(finish_, &QPushButton::clicked, this, &WalkPage::finish);
    connect(band_, &QComboBox::activated, this, &WalkPage::choose_band);
    connect(offer_, &CutOffer::done, this, [this] {
        ++cuts_;
        go(Stage::raise);
    });
    connect(&work_.document, &Document::replaced, this, [this] {
        cuts_ = 0;
        heard_hz_.reset();
        go(Stage::caution);
    });
    go(Stage::caution);
}

void WalkPage::build() {
    caution_ = new QLabel(
        tr("<b>Ears and hands first.</b> Ring out at low level, hands on the fader, ears protected, nobody's head in "
           "front of a wedge, players warned. Levels here are estimates and no measurement of hearing safety. House "
           "rules and local codes come first."));
    caution_->setObjectName(QStringLiteral("walk_caution"));
    caution_->setWordWrap(true);
    step_ = new QLabel;
    step_->setObjectName(QStringLiteral("walk_step"));
    step_->setWordWrap(true);
    step_->setAlignment(Qt::AlignTop);
    band_ = new QComboBox;
    band_->setObjectName(QStringLiteral("walk_band"));
    band_->setAccessibleName(tr("Band that rings"));
    band_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    band_->setPlaceholderText(tr("Which band?"));
    band_->setToolTip(tr("The band that rings; the likeliest stand first."));
    forward_ = new QPushButton;
    forward_->setObjectName(QStringLiteral("walk_forward"));
    forward_->setToolTip(tr("Takes the walk one step on."));
    finish_ = new QPushButton(tr("Loud enough: &finish"));
    finish_->setObjectName(QStringLiteral("walk_finish"));
    finish_->setToolTip(tr("The mix is as loud as the players need it, and nothing rings."));
    offer_ = new CutOffer(work_, this);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(forward_);
    buttons->addWidget(band_);
    buttons->addWidget(finish_);
    buttons->addStretch(1);
    auto* left = new QVBoxLayout;
    left->addWidget(step_, 1);
    left->addLayout(buttons);
    auto* lower = new QHBoxLayout;
    lower->addLayout(left, 1);
    lower->addWidget(offer_, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(6, 6, 6, 6);
    column->addWidget(caution_);
    column->addLayout(lower, 1);
    setFocusProxy(forward_);
}

void WalkPage::go(Stage stage) {
    stage_ = stage;
    band_->setVisible(stage == Stage::name);
    offer_->setVisible(stage == Stage::name);
    finish_->setVisible(stage == Stage::raise);
    forward_->setText(stage == Stage::caution    ? tr("Ears and hands are &ready: begin")
                      : stage == Stage::raise    ? tr("It &rings")
                      : stage == Stage::finished ? tr("&Begin again")
                                                 : tr("It has &stopped: listen again"));
    if (stage == Stage::name) fill_bands();
    step_->setText(instruction());
}

QString WalkPage::instruction() const {
    const QString so_far = cuts_ > 0 ? tr(" Cuts so far: %1, all in the log.").arg(cuts_) : QString();
    const BandProbability* first = order_.at(0);
    switch (stage_) {
        case Stage::caution:
            if (heard_hz_)
                return tr("%1 rings: take the fader back first. When ears and hands are ready, the cut for it comes "
                          "next.")
                    .arg(hz_text(*heard_hz_));
            return tr("One mix at a time: raise, listen, name the band, cut no more than needed, and again.");
        case Stage::raise:
            return (first ? tr("Raise mix %1 slowly until something begins to ring, then take the fader back a little. "
                               "Most likely it is %2: %3 → %4.")
                                .arg(name_text(work_.document.show(), first->mix), band_text(first->band_hz),
                                     name_text(work_.document.show(), first->loudspeaker),
                                     name_text(work_.document.show(), first->input))
                          : tr("Raise the mix slowly until something begins to ring.")) +
                   so_far;
        case Stage::name:
            return tr("Which band is it? Choose it here, or let Live name it. The cut is as deep as it takes for the "
                      "next ring to be as far, and no deeper.") +
                   so_far;
        case Stage::finished:
            return tr("Done.") + so_far + QLatin1Char(' ') +
                   tr("Play the loudest song, open every microphone, and keep a hand on the fader.");
    }
    return {};
}

void WalkPage::forward() {
    if (stage_ == Stage::raise) {
        go(Stage::name);
        return choose_band();
    }
    if (stage_ != Stage::name) cuts_ = 0;
    go(Stage::raise);
    if (heard_hz_) name_frequency(*std::exchange(heard_hz_, std::nullopt));
}

void WalkPage::finish() {
    go(Stage::finished);
    work_.say(tr("Ring-out done. Cuts in the log: %1.").arg(cuts_));
}

const BandProbability* WalkPage::likely(int band) const {
    for (const BandProbability& b : order_.bands())
        if (third_octave_of(b.band_hz) == band) return &b;
    return nullptr;
}

void WalkPage::fill_bands() {
    band_->clear();
    for (const BandProbability& b : order_.bands())
        band_->addItem(tr("%1 (%2 %)").arg(band_text(b.band_hz)).arg(qRound(100.0 * b.probability)),
                       third_octave_of(b.band_hz));
    for (int band = 0; band < kThirdOctaves; ++band)
        if (!likely(band)) band_->addItem(band_text(kNominalThirdOctaves[static_cast<std::size_t>(band)]), band);
    band_->setCurrentIndex(order_.at(0) ? 0 : -1);  // without an order nobody knows which is likely
}

void WalkPage::choose_band() {
    if (band_->currentIndex() < 0) return offer_->withdraw();
    const int band = band_->currentData().toInt();
    if (const BandProbability* b = likely(band)) return offer_->offer(b->hz, b->input, b->loudspeaker, b->mix);
    const BandProbability* first = order_.at(0);
    offer_->offer(std::clamp(third_octave_centre(band), kLowestHz, kHighestHz), {}, {},
                  first ? first->mix : std::string());
}

void WalkPage::name_band(const BandProbability& band) {
    if (stage_ == Stage::caution) return work_.say(tr("First the cautions: then begin the walk."));
    go(Stage::name);
    band_->setCurrentIndex(std::max(0, band_->findData(third_octave_of(band.band_hz))));
    choose_band();
}

void WalkPage::name_frequency(double hz) {
    if (stage_ == Stage::caution) {
        heard_hz_ = hz;
        return step_->setText(instruction());
    }
    go(Stage::name);
    band_->setCurrentIndex(std::max(0, band_->findData(third_octave_of(hz))));
    const BandProbability* b = likely(third_octave_of(hz));
    offer_->offer(hz, b ? b->input : std::string(), b ? b->loudspeaker : std::string(), b ? b->mix : std::string());
}

void WalkPage::refresh() {
    if (stage_ == Stage::raise) step_->setText(instruction());
}

}  // namespace howlmap::app
