// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/soundcheck_panel.h"

#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

#include "app/document/document.h"
#include "app/panels/soundcheck/live_page.h"
#include "app/panels/soundcheck/log_page.h"
#include "app/panels/soundcheck/recording_page.h"
#include "app/panels/soundcheck/ring_out_list.h"
#include "app/panels/soundcheck/tap_page.h"
#include "app/panels/soundcheck/walk_page.h"

namespace howlmap::app {

SoundcheckPanel::SoundcheckPanel(const Workspace& workspace, QWidget* parent)
    : QWidget(parent), order_(new RingOutList(workspace, this)), pages_(new QTabWidget) {
    setObjectName(QStringLiteral("soundcheck_panel"));
    walk_ = new WalkPage(workspace, order_->model(), this);
    recording_ = new RecordingPage(workspace, this);
    live_ = new LivePage(workspace, this);
    tap_ = new TapPage(workspace.document, this);
    pages_->setDocumentMode(true);
    pages_->setAccessibleName(tr("Soundcheck pages"));
    add_page(walk_, tr("Walk"), tr("Rings the stage out step by step."));
    add_page(recording_, tr("Recording"), tr("Finds out what howls in a recording."));
    add_page(live_, tr("Live"), tr("Listens and names what rings, in large type."));
    add_page(tap_, tr("Tap test"), tr("Finds the modes of an instrument's body."));
    add_page(new LogPage(workspace, this), tr("Log"), tr("What was found and done."));
    auto* splitter = new QSplitter(Qt::Horizontal);
    splitter->addWidget(order_);
    splitter->addWidget(pages_);
    splitter->setStretchFactor(0, 1);
    splitter->setStretchFactor(1, 4);
    splitter->setSizes({260, 660});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(splitter);
    setFocusProxy(order_);
    connect(order_, &RingOutList::updated, walk_, &WalkPage::refresh);
    connect(live_, &LivePage::ring_named, this, [this](double hz) {
        pages_->setCurrentWidget(walk_);
        walk_->name_frequency(hz);
    });
    connect(order_, &RingOutList::chosen, this, [this](const BandProbability& band) {
        pages_->setCurrentWidget(walk_);
        walk_->name_band(band);
    });
}

void SoundcheckPanel::add_page(QWidget* page, const QString& title, const QString& tip) {
    pages_->setTabToolTip(pages_->addTab(page, title), tip);
}

}  // namespace howlmap::app
