// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/status_figures.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/settings/figures.h"
#include "app/settings/theme.h"

namespace howlmap::app {

StatusFigures::StatusFigures(Document& document, AnalysisService& analysis, QWidget* parent)
    : QWidget(parent), document_(document), analysis_(analysis) {
    const auto label = [&](const char* name, const QString& tip) {
        auto* made = new QLabel;
        made->setObjectName(QString::fromLatin1(name));
        made->setFont(tabular(font()));
        made->setToolTip(tip);
        return made;
    };
    ring_ = label("first_ring", {});
    drawn_ = label("margin_as_drawn",
                   tr("How far all sends can come up before the stage rings, if everything stands exactly as drawn."));
    counted_ = label("margin_to_count_on",
                     tr("What is left in 95 of 100 stages set up by hand from this drawing. Believe this one."));
    counted_->setFont(figure_font(font()));
    progress_ = new QProgressBar;
    progress_->setAccessibleName(tr("Progress of the draws"));
    progress_->setMaximumWidth(64);
    progress_->setTextVisible(false);
    progress_->setRange(0, 100);

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 8, 0);
    row->setSpacing(14);
    for (QWidget* widget : std::initializer_list<QWidget*>{ring_, progress_, drawn_, counted_}) row->addWidget(widget);
    connect(&analysis_, &AnalysisService::updated, this, &StatusFigures::refresh);
    connect(&analysis_, &AnalysisService::margin_moved, this, &StatusFigures::refresh_margins);
    connect(&analysis_, &AnalysisService::started, this, &StatusFigures::refresh);
    connect(&analysis_, &AnalysisService::progress, this,
            [this](double fraction) { progress_->setValue(qRound(100.0 * fraction)); });
    refresh();
}

void StatusFigures::refresh() {
    const bool waiting = !analysis_.counted() && analysis_.busy();
    QSizePolicy keep = progress_->sizePolicy();
    keep.setRetainSizeWhenHidden(true);
    progress_->setSizePolicy(keep);
    progress_->setVisible(waiting);
    if (!waiting) progress_->setValue(0);
    refresh_margins();
    refresh_ring();
}

void StatusFigures::refresh_margins() {
    const auto result = analysis_.result();
    const QString none = QStringLiteral("–");
    drawn_->setText(tr("as drawn %1").arg(result ? margin_text(analysis_.margin_db()) : none));
    const bool known = result && result->tolerance;
    // Until the draws of this revision are there the last figure stays, marked as such.
    const QString figure = known ? margin_text(result->tolerance->margin_p05_db) : none;
    counted_->setText(analysis_.counted() || !known ? tr("count on %1").arg(figure) : tr("count on %1 ?").arg(figure));
    drawn_->setAccessibleName(tr("Margin as drawn"));
    counted_->setAccessibleName(tr("Margin to count on"));
}

/// The drawing names one ring, stages set up by hand often another: who rests on it reads both.
QString StatusFigures::ring_tip() const {
    const QString drawn = tr("What rings first if everything is raised and stands exactly as drawn, and between whom.");
    const auto result = analysis_.result();
    if (!result || !result->tolerance || result->tolerance->first_ring.empty()) return drawn;
    const BandProbability& first = result->tolerance->first_ring.front();
    return drawn + u' ' +
           tr("Set up by hand, band %1 rings first in %2 of 100 stages: %3 → %4.")
               .arg(band_text(first.band_hz))
               .arg(qRound(100.0 * first.probability))
               .arg(name_text(document_.show(), first.loudspeaker), name_text(document_.show(), first.input));
}

void StatusFigures::refresh_ring() {
    ring_->setToolTip(ring_tip());
    const auto result = analysis_.result();
    if (!result) return ring_->clear();
    if (result->rings.empty())
        return ring_->setText(tr("No loop: no loudspeaker plays a microphone or pickup that hears it."));
    const Ring& ring = result->rings.front();
    ring_->setText(tr("%1  %2  %3 → %4")
                       .arg(hz_text(ring.hz), QString::fromStdString(ring.note),
                            name_text(document_.show(), ring.strongest_loudspeaker),
                            name_text(document_.show(), ring.strongest_input)));
}

}  // namespace howlmap::app
