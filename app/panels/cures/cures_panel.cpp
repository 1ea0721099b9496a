// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/cures/cures_panel.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QListView>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/document/document.h"
#include "app/document/spotlight.h"
#include "app/panels/common/card.h"
#include "app/panels/cures/cure_model.h"
#include "app/panels/cures/cure_text.h"
#include "app/panels/cures/kinds_dialog.h"
#include "app/settings/figures.h"

namespace howlmap::app {

CuresPanel::CuresPanel(const Workspace& workspace, QWidget* parent)
    : QWidget(parent),
      work_(workspace),
      service_(workspace.document, workspace.analysis),
      model_(new CureModel(this)),
      list_(new QListView),
      empty_(new QLabel),
      figures_(new QLabel),
      detail_(new QLabel),
      plan_(new QLabel),
      progress_(new QProgressBar) {
    build_list();
    for (QLabel* label : {empty_, detail_, plan_}) set_up_sentence(*label, 8);
    empty_->setObjectName(QStringLiteral("cures_empty"));
    progress_->setObjectName(QStringLiteral("cures_progress"));
    progress_->setTextVisible(false);
    progress_->setMaximumHeight(4);
    progress_->setAccessibleName(tr("Progress of the search"));
    figures_->setText(tr("Large: gain to count on. First what gains most for its trouble and tone."));
    figures_->setWordWrap(true);
    figures_->setContentsMargins(8, 2, 8, 2);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(progress_);
    column->addWidget(empty_);
    column->addWidget(figures_);
    column->addWidget(list_, 1);
    column->addWidget(build_buttons());
    column->addWidget(build_words(), 1);  // equal shares: the buttons stay where they are, whatever the words
    setFocusProxy(list_);
    connect(&service_, &CureService::changed, this, &CuresPanel::refresh);
    connect(&service_, &CureService::progress, this,
            [this](double fraction) { progress_->setValue(qRound(100.0 * fraction)); });
    connect(&work_.analysis, &AnalysisService::updated, this, &CuresPanel::refresh_empty);
    refresh();
}

void CuresPanel::build_list() {
    show_as_cards(*list_, *model_, "cures", tr("Cures, most gain for their cost first"));
    list_->setMouseTracking(true);
    list_->setWhatsThis(
        tr("Each card is one cure, judged at equal loudness for the player: at the right what it gains to count on, "
           "below it as drawn, at the left its cost: trouble, which Kinds sets, and tone. Rest on one to see it as a "
           "ghost on the plan and as a dashed curve."));
    list_->viewport()->installEventFilter(this);
    connect(list_, &QListView::entered, this, &CuresPanel::preview);
    connect(list_, &QListView::activated, this, &CuresPanel::apply);
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& index) {
        if (const auto cure = model_->at(index.row()); cure && !filling_) current_ = cure->id;
        if (list_->hasFocus()) preview(index);
        refresh_detail();
    });
}

/// What scrolls below the buttons: the current cure, then the plan.
QWidget* CuresPanel::build_words() {
    detail_->setObjectName(QStringLiteral("cure_detail"));
    plan_->setObjectName(QStringLiteral("plan_words"));
    auto* words = new QWidget;
    auto* column = new QVBoxLayout(words);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(detail_);
    column->addWidget(plan_);
    column->addStretch(1);
    auto* area = new QScrollArea;
    area->setWidget(words);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setAccessibleName(tr("The marked cure and the plan"));
    return area;
}

/// Two by two: in a row they would ask for more width than a small screen has.
QWidget* CuresPanel::build_buttons() {
    auto* row = new QWidget;
    auto* grid = new QGridLayout(row);
    grid->setContentsMargins(8, 2, 8, 2);
    const auto add = [&](const QString& text, const QString& tip, const char* name) {
        auto* button = new QPushButton(text);
        button->setToolTip(tip);
        button->setStatusTip(tip);
        button->setObjectName(QString::fromLatin1(name));
        grid->addWidget(button, grid->count() / 2, grid->count() % 2);
        return button;
    };
    apply_ = add(tr("&Apply"), tr("Makes this change to the show; one step that can be undone."), "apply_cure");
    why_ = add(tr("&Why"), tr("Shows the figures before and after."), "why_cure");
    why_->setCheckable(true);
    apply_plan_ = add(tr("Apply &plan"), tr("Makes all changes of the plan, in order; one step that can be undone."),
                      "apply_plan");
    QPushButton* kinds =
        add(tr("&Kinds"), tr("Which kinds of cure can be had here, and how much trouble each is."), "cure_kinds");
    connect(kinds, &QPushButton::clicked, this, &CuresPanel::ask_kinds);
    connect(apply_, &QPushButton::clicked, this, &CuresPanel::apply);
    connect(why_, &QPushButton::toggled, this, &CuresPanel::refresh_detail);
    connect(apply_plan_, &QPushButton::clicked, this, &CuresPanel::apply_plan);
    return row;
}

void CuresPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    service_.set_wanted(true);
}

void CuresPanel::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    service_.set_wanted(false);
    work_.spotlight.set_preview({});
}

bool CuresPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Leave) work_.spotlight.set_preview({});
    return QWidget::eventFilter(watched, event);
}

void CuresPanel::refresh() {
    filling_ = true;
    model_->set(service_.cures(), work_.document.show(), service_.fresh());
    const bool any = model_->rowCount() > 0;
    if (any) list_->setCurrentIndex(model_->index(std::max(0, model_->row_of(current_))));
    filling_ = false;
    list_->setVisible(any);
    figures_->setVisible(any);
    setFocusProxy(any ? list_ : nullptr);  // Tab does not go on from what hides behind a proxy
    for (QWidget* button : {apply_, why_, apply_plan_}) button->setVisible(any || service_.report());
    const bool searching = service_.busy() && !service_.report();
    progress_->setRange(0, 100);
    progress_->setVisible(searching);
    if (!searching) progress_->setValue(0);
    refresh_empty();
    refresh_plan();
    refresh_detail();
}

void CuresPanel::refresh_empty() {
    empty_->setVisible(model_->rowCount() == 0);
    const auto result = work_.analysis.result();
    if (result && !result->margin_db)
        empty_->setText(tr("Nothing can ring here, so there is nothing to cure."));
    else if (service_.report() && service_.fresh())
        empty_->setText(tr("No cure was found that helps at equal loudness."));
    else
        empty_->setText(tr("Looking for cures: the first appear within a moment, the plan a little later."));
}

void CuresPanel::refresh_plan() {
    const auto report = service_.report();
    const bool usable = report && service_.fresh();
    apply_plan_->setEnabled(usable && !report->plan.steps.empty());
    plan_->setVisible(usable);
    if (!usable) return;
    const QString after = margin_text(report->plan.after.margin_p05_db);
    const QString head = report->plan.steps.empty()    ? tr("Plan")
                         : report->plan.reaches_target ? tr("Plan: count on %1, the target is reached").arg(after)
                                                       : tr("Plan: count on %1, short of the target").arg(after);
    plan_->setText(QStringLiteral("<b>%1</b>%2").arg(head.toHtmlEscaped(), plan_words(model_->show(), *report)));
}

void CuresPanel::refresh_detail() {
    const auto cure = model_->at(list_->currentIndex().row());
    const bool usable = cure && service_.fresh();
    apply_->setEnabled(usable);
    why_->setEnabled(usable && service_.report());
    detail_->setVisible(cure != nullptr);
    if (!cure) return;
    QString words = cure_words(model_->show(), *cure);
    if (why_->isChecked() && service_.report()) words += cure_figures(service_.report()->before, *cure);
    detail_->setText(words);
}

void CuresPanel::preview(const QModelIndex& index) {
    const auto cure = model_->at(index.row());
    if (!cure || !service_.fresh()) return work_.spotlight.set_preview({});
    work_.spotlight.set_preview(
        Preview{cure_title(work_.document.show(), *cure), std::shared_ptr<const Show>(cure, &cure->after)});
}

void CuresPanel::apply() {
    const auto cure = model_->at(list_->currentIndex().row());
    if (!cure || !service_.fresh()) return;
    const QString title = cure_title(work_.document.show(), *cure);
    work_.document.edit(title, [&](Show& show) { show = cure->after; });
    work_.say(tr("Applied: %1").arg(qstr(cure->instruction)));
    work_.spotlight.set_preview({});
}

void CuresPanel::ask_kinds() {
    KindsDialog dialog(this);
    if (dialog.exec() == QDialog::Accepted) service_.look_again();
}

void CuresPanel::apply_plan() {
    const auto report = service_.report();
    if (!report || !service_.fresh()) return;
    work_.document.edit(tr("Plan of %1 steps").arg(report->plan.steps.size()),
                        [&](Show& show) { show = report->plan.show; });
    work_.say(tr("Applied the plan: %1 steps.").arg(report->plan.steps.size()));
    work_.spotlight.set_preview({});
}

}  // namespace howlmap::app
