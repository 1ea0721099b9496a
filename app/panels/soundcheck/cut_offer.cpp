// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/cut_offer.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/document/document.h"
#include "app/settings/figures.h"
#include "app/settings/number_box.h"
#include "core/report/words.h"
#include "core/units/bands.h"
#include "core/units/notes.h"

namespace howlmap::app {
namespace {

double band_at(double hz) { return kNominalThirdOctaves[static_cast<std::size_t>(third_octave_of(hz))]; }

QString heard_words(double hz) {
    const Note note = note_of(hz);
    return CutOffer::tr("%1 · band %2 · %3 %4%5 c")
        .arg(hz_text(hz), band_text(band_at(hz)), qstr(note.name), note.cents < 0.0 ? QString() : QStringLiteral("+"))
        .arg(qRound(note.cents));
}

}  // namespace

CutOffer::CutOffer(const Workspace& workspace, QWidget* parent) : QWidget(parent), work_(workspace) {
    build();
    connect(mix_, &QComboBox::activated, this, [this] { suggest(); });
    connect(with_, &QComboBox::activated, this, [this] { suggest(); });
    connect(cut_, &QPushButton::clicked, this, &CutOffer::cut_and_log);
    connect(log_, &QPushButton::clicked, this, &CutOffer::log_only);
    connect(&work_.document, &Document::replaced, this, &CutOffer::withdraw);
    connect(&work_.document, &Document::changed, this, [this] {
        if (heard_) fill_mixes(), suggest();
    });
    withdraw();
}

void CutOffer::build() {
    title_ = new QLabel;
    title_->setWordWrap(true);
    title_->setObjectName(QStringLiteral("heard"));
    reason_ = new QLabel;
    reason_->setWordWrap(true);
    reason_->setObjectName(QStringLiteral("reason"));
    reason_->setAlignment(Qt::AlignTop);
    mix_ = new QComboBox;
    mix_->setAccessibleName(tr("Mix to cut in"));
    mix_->setToolTip(tr("The mix whose equaliser takes the cut."));
    with_ = new QComboBox;
    with_->setAccessibleName(tr("Band or notch"));
    with_->setToolTip(tr("A band of the graphic equaliser, or a notch at the frequency itself: it costs less tone."));
    with_->addItems({tr("band"), tr("notch")});
    depth_ = new NumberBox;
    depth_->setObjectName(QStringLiteral("cut_depth"));
    depth_->setAccessibleName(tr("Depth of the cut"));
    depth_->setToolTip(tr("Computed so that the next ring is as far; change it to what was really cut."));
    depth_->setRange(-15.0, 0.0);
    depth_->setSingleStep(0.5);
    depth_->setDecimals(1);
    depth_->setSuffix(tr(" dB"));
    cut_ = new QPushButton(tr("&Log and cut"));
    cut_->setObjectName(QStringLiteral("log_and_cut"));
    cut_->setToolTip(tr("Writes it in the log and cuts in the mix: one step that can be undone."));
    log_ = new QPushButton(tr("Log &only"));
    log_->setToolTip(tr("Writes in the log what was heard and cuts nothing."));
    auto* fields = new QHBoxLayout;
    fields->addWidget(mix_, 1);
    fields->addWidget(with_);
    fields->addWidget(depth_);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(cut_);
    buttons->addWidget(log_);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(6, 2, 6, 2);
    column->addWidget(title_);
    column->addLayout(fields);
    column->addLayout(buttons);
    column->addWidget(reason_, 1);
}

void CutOffer::offer(double hz, const std::string& input, const std::string& loudspeaker, const std::string& mix) {
    heard_ = RingOutStep{hz, input, loudspeaker, mix, CutWith::graphic_band, 0.0, {}};
    if (heard_->mix.empty()) heard_->mix = mix_between(work_.document.show(), input, loudspeaker);
    fill_mixes();
    QString title = heard_words(hz);
    if (!input.empty())
        title += QStringLiteral("\n") + tr("%1 → %2").arg(name_text(work_.document.show(), loudspeaker),
                                                          name_text(work_.document.show(), input));
    title_->setText(title);
    setEnabled(true);
    suggest();
}

void CutOffer::withdraw() {
    heard_.reset();
    worker_.cancel();
    title_->setText(tr("Nothing to cut yet."));
    reason_->clear();
    setEnabled(false);
}

void CutOffer::fill_mixes() {
    const QString before = mix_->currentData().toString();
    const QString wanted = mix_->count() > 0 && !before.isEmpty() && heard_->mix.empty() ? before : qstr(heard_->mix);
    mix_->clear();
    for (const Mix& mix : work_.document.show().mixes) mix_->addItem(qstr(report::name_of(mix)), qstr(mix.id));
    mix_->setCurrentIndex(std::max(0, mix_->findData(wanted)));
    cut_->setEnabled(mix_->count() > 0);
}

RingOutStep CutOffer::step() const {
    RingOutStep step = heard_.value_or(RingOutStep{});
    step.mix = mix_->currentData().toString().toStdString();
    step.with = with_->currentIndex() == 1 ? CutWith::notch : CutWith::graphic_band;
    step.cut_db = depth_->value();
    return step;
}

void CutOffer::suggest() {
    heard_->mix = mix_->currentData().toString().toStdString();
    reason_->setText(tr("Working out how much is needed …"));
    worker_.restart([this, show = work_.document.show(), wish = step()](const Job& job) -> Worker::Deliver {
        const auto cut = smallest_ring_out_cut(show, wish.mix, wish.hz, wish.with, job);
        if (!cut) return [this] { reason_->setText(tr("Nothing can be cut: there is no mix yet.")); };
        return [this, cut = *cut] {
            depth_->setValue(cut.cut_db);
            const QString next = cut.next_hz > 0.0 ? hz_text(cut.next_hz) : tr("nothing");
            reason_->setText(
                !cut.by_drawing
                    ? tr("By gain alone %1 stands higher than this one, so begin with little and listen.").arg(next)
                : cut.levels_with && cut.needed_db > cut.cut_db
                    ? tr("%1 dB would do, but less than %2 dB is hardly worth a cut: then %3 is the nearest.")
                          .arg(decimal_text(-cut.needed_db, 1))
                          .arg(decimal_text(kLeastCut, 0))
                          .arg(next)
                : cut.levels_with
                    ? tr("So much and no more: then %1 is as near.").arg(next)
                    : tr("Even the deepest cut leaves it nearer than %1: turn down, or see Cures.").arg(next));
            Q_EMIT suggested();
        };
    });
}

void CutOffer::cut_and_log() {
    if (!heard_ || mix_->count() == 0) return;
    const RingOutStep step = this->step();
    put(step, tr("Cut %1 by %2 dB and log it").arg(band_text(band_at(step.hz))).arg(decimal_text(-step.cut_db, 1)));
}

void CutOffer::log_only() {
    if (!heard_) return;
    RingOutStep step = this->step();
    step.cut_db = 0.0;
    put(step, tr("Log %1").arg(hz_text(step.hz)));
}

void CutOffer::put(const RingOutStep& step, const QString& name) {
    heard_.reset();  // the change itself must not ask for another suggestion
    work_.document.edit(name, [&](Show& show) { app::cut_and_log(show, step); });
    work_.say(tr("In the log: %1.").arg(name));
    withdraw();
    Q_EMIT done();
}

}  // namespace howlmap::app
