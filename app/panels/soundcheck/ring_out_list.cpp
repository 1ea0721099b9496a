// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/ring_out_list.h"

#include <QLabel>
#include <QListView>
#include <QProgressBar>
#include <QVBoxLayout>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/panels/common/card.h"
#include "app/settings/figures.h"

namespace howlmap::app {

void RingOutModel::set(std::vector<BandProbability> bands, const Show& show) {
    beginResetModel();
    bands_ = std::move(bands);
    show_ = show;
    endResetModel();
}

const BandProbability* RingOutModel::at(int row) const {
    return row >= 0 && row < rowCount() ? &bands_[static_cast<std::size_t>(row)] : nullptr;
}

int RingOutModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(bands_.size());
}

QVariant RingOutModel::data(const QModelIndex& index, int role) const {
    const BandProbability* band = at(index.row());
    if (!band) return {};
    const QString percent = band->probability < 0.01 ? tr("< 1 %") : tr("%1 %").arg(qRound(100.0 * band->probability));
    const QString who = tr("%1 → %2").arg(name_text(show_, band->loudspeaker), name_text(show_, band->input));
    switch (role) {
        case Qt::DisplayRole:
            return band_text(band->band_hz);
        case kCountOn:
            return percent;
        case kAsDrawn:
            return hz_text(band->hz);
        case kWords:
            return band->mix.empty() ? who : tr("%1 · %2").arg(who, name_text(show_, band->mix));
        case Qt::ToolTipRole:
        case Qt::AccessibleTextRole:
            return tr("Band %1 rings first with a probability of %2, near %3: %4, mix %5")
                .arg(band_text(band->band_hz), percent, hz_text(band->hz), who, name_text(show_, band->mix));
        default:
            return {};
    }
}

RingOutList::RingOutList(const Workspace& workspace, QWidget* parent)
    : QWidget(parent),
      work_(workspace),
      model_(new RingOutModel(this)),
      list_(new QListView),
      empty_(new QLabel),
      progress_(new QProgressBar) {
    show_as_cards(*list_, *model_, "ring_out", tr("Bands in the order in which they are likely to ring"));
    list_->setWhatsThis(
        tr("Each card is a third-octave band: at the right the probability that it rings first, over all stages that "
           "the "
           "tolerances allow, and the frequency at which it mostly does; below who makes it and in which mix. "
           "Press Enter to take it into the walk."));
    set_up_sentence(*empty_, 8);
    progress_->setTextVisible(false);
    progress_->setMaximumHeight(4);
    progress_->setRange(0, 100);
    progress_->setAccessibleName(tr("Draws done"));
    progress_->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    auto* title = new QLabel(tr("Likely to ring first"));
    title->setMargin(4);
    column->addWidget(title);
    column->addWidget(progress_);
    column->addWidget(empty_, 1);
    column->addWidget(list_, 1);
    setFocusProxy(list_);
    connect(&work_.analysis, &AnalysisService::updated, this, &RingOutList::refresh);
    connect(&work_.analysis, &AnalysisService::progress, progress_, [this](double fraction) {
        progress_->setVisible(fraction < 1.0);
        progress_->setValue(qRound(100.0 * fraction));
    });
    connect(list_, &QListView::activated, this, [this](const QModelIndex& index) {
        if (const BandProbability* band = model_->at(index.row())) Q_EMIT chosen(*band);
    });
    refresh();
}

void RingOutList::refresh() {
    const auto result = work_.analysis.result();
    if (!work_.analysis.counted() || !result || !result->tolerance) return say_empty();
    progress_->hide();
    model_->set(result->tolerance->first_ring, work_.document.show());
    list_->setCurrentIndex(model_->index(0));
    say_empty();
    Q_EMIT updated();
}

void RingOutList::say_empty() {
    const bool any = model_->rowCount() > 0;
    list_->setVisible(any);
    setFocusProxy(any ? list_ : nullptr);  // Tab does not go on from what hides behind a proxy
    empty_->setVisible(!any);
    empty_->setText(
        work_.analysis.counted()
            ? tr("Nothing can ring. Give a mix a loudspeaker and send it a microphone or a pickup, in Mixes.")
            : tr("The stage is drawn a thousand times as it might really stand; the order follows in a moment."));
}

}  // namespace howlmap::app
