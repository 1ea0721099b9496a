// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/loops/loops_panel.h"

#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/document/response_service.h"
#include "app/document/spotlight.h"
#include "app/panels/common/card.h"
#include "app/panels/loops/ring_model.h"
#include "app/panels/loops/ring_why.h"
#include "app/settings/icons.h"

namespace howlmap::app {

LoopsPanel::LoopsPanel(const Workspace& workspace, QWidget* parent)
    : QWidget(parent),
      work_(workspace),
      model_(new RingModel(this)),
      list_(new QListView),
      empty_(new QLabel),
      figures_(new QLabel),
      why_(new QLabel),
      teach_(new QPushButton(icon(QStringLiteral("lesson")), tr("Show in the &lesson"))) {
    show_as_cards(*list_, *model_, "rings", tr("Rings, worst first"));
    list_->setWhatsThis(
        tr("Each card is a frequency that can ring: note, band, who makes it; at the right the margin to count on, and "
           "below it "
           "the margin as drawn."));
    set_up_sentence(*empty_, 12);
    why_->setObjectName(QStringLiteral("ring_why"));
    why_->setWordWrap(true);
    why_->setMargin(8);
    why_->setTextFormat(Qt::RichText);
    why_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    figures_->setText(tr("Large: margin to count on"));
    figures_->setAlignment(Qt::AlignRight);
    figures_->setContentsMargins(8, 2, 8, 2);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(empty_);
    column->addWidget(figures_);
    column->addWidget(list_, 1);
    column->addWidget(why_);
    teach_->setObjectName(QStringLiteral("show_in_lesson"));
    teach_->setToolTip(tr("Puts the loudspeaker and the microphone that make this ring on the bench of the lesson."));
    column->addWidget(teach_);
    connect(teach_, &QPushButton::clicked, this, [this] {
        const auto* row = model_->at(list_->currentIndex().row());
        if (row) Q_EMIT teach(row->ring);
    });
    setFocusProxy(list_);

    connect(&work_.analysis, &AnalysisService::updated, this, &LoopsPanel::refresh);
    connect(&work_.response, &ResponseService::band_changed, this, &LoopsPanel::refresh);
    connect(&work_.document, &Document::replaced, this, &LoopsPanel::refresh);
    connect(&work_.spotlight, &Spotlight::ring_changed, this, &LoopsPanel::follow_spotlight);
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &LoopsPanel::selected);
    refresh();
}

void LoopsPanel::refresh() {
    const auto result = work_.analysis.result();
    std::vector<RingModel::Row> rows;
    if (result)
        for (const Ring& ring : result->rings) rows.push_back({ring, work_.response.count_on_at(ring)});
    refreshing_ = true;
    const bool any = !rows.empty();
    model_->set(std::move(rows), work_.document.show());
    empty_->setText(
        result ? tr("Nothing can ring. Give a mix a loudspeaker and send it a microphone or a pickup, in Mixes.")
               : tr("The first figures are on their way."));
    empty_->setVisible(!any);
    list_->setVisible(any);
    figures_->setVisible(any);
    setFocusProxy(any ? list_ : nullptr);  // Tab does not go on from what hides behind a proxy
    // The ring that was looked at is followed while things move.
    const auto& ring = work_.spotlight.ring();
    const int row = ring ? model_->row_near(ring->hz) : -1;
    list_->setCurrentIndex(model_->index(row));
    refreshing_ = false;
    if (row >= 0) work_.spotlight.set_ring(model_->at(row)->ring);
    explain_ring();
}

void LoopsPanel::selected() {
    if (refreshing_) return;
    const auto* row = model_->at(list_->currentIndex().row());
    work_.spotlight.set_ring(row ? std::optional(row->ring) : std::nullopt);
}

void LoopsPanel::follow_spotlight() {
    const auto& ring = work_.spotlight.ring();
    refreshing_ = true;
    if (const int row = ring ? model_->row_near(ring->hz) : -1; row != list_->currentIndex().row())
        list_->setCurrentIndex(model_->index(row));
    refreshing_ = false;
    explain_ring();
}

void LoopsPanel::explain_ring() {
    const auto* row = model_->at(list_->currentIndex().row());
    why_->setVisible(row != nullptr);
    teach_->setVisible(row != nullptr);
    if (row) why_->setText(ring_why(work_.document.show(), row->ring, row->count_on_db));
}

}  // namespace howlmap::app
