// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/log_page.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "app/panels/choice_delegate.h"
#include "app/panels/soundcheck/log_model.h"
#include "app/panels/steady_delegate.h"

namespace howlmap::app {

LogPage::LogPage(const Workspace& workspace, QWidget* parent)
    : QWidget(parent), model_(new LogModel(workspace.document, this)), table_(new QTableView), empty_(new QLabel) {
    table_->setObjectName(QStringLiteral("soundcheck_log"));
    table_->setModel(model_);
    table_->setAccessibleName(tr("Log of the soundcheck"));
    table_->setItemDelegate(new SteadyDelegate(table_));
    table_->setItemDelegateForColumn(LogModel::input,
                                     new ChoiceDelegate([this] { return model_->input_names(); }, this));
    table_->setItemDelegateForColumn(LogModel::mix, new ChoiceDelegate([this] { return model_->mix_names(); }, this));
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 6);
    table_->setWordWrap(false);
    table_->setTabKeyNavigation(false);
    empty_->setText(tr("Nothing logged yet: rings that you log appear here and on the printed sheet."));
    empty_->setWordWrap(true);
    auto* remove = new QAction(tr("Remove row"), table_);
    remove->setShortcut(QKeySequence::Delete);
    remove->setShortcutContext(Qt::WidgetShortcut);
    remove->setToolTip(tr("Takes the marked rows out of the log (Del)."));
    remove->setStatusTip(tr("Takes the marked rows out of the log."));
    connect(remove, &QAction::triggered, this, &LogPage::remove_rows);
    table_->addAction(remove);
    table_->setContextMenuPolicy(Qt::ActionsContextMenu);
    auto* buttons = new QHBoxLayout;
    const auto button = [&](const QString& text, const QString& tip, const char* name, auto slot) {
        auto* made = new QPushButton(text);
        made->setObjectName(QString::fromLatin1(name));
        made->setToolTip(tip);
        connect(made, &QPushButton::clicked, this, slot);
        buttons->addWidget(made);
    };
    button(tr("&Add row"), tr("Adds a row for something that was found by ear."), "add_log_row", &LogPage::add_row);
    button(tr("&Remove row"), tr("Takes the marked rows out of the log."), "remove_log_row", &LogPage::remove_rows);
    buttons->addWidget(empty_, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(6, 6, 6, 6);
    column->addWidget(table_, 1);
    column->addLayout(buttons);
    setFocusProxy(table_);
    connect(model_, &LogModel::refused, this, [say = workspace.say](const QString& why) { say(why); });
    connect(model_, &QAbstractItemModel::modelReset, this, &LogPage::refresh);
    refresh();
}

void LogPage::refresh() { empty_->setVisible(model_->rowCount() == 0); }

void LogPage::add_row() {
    model_->add();
    const QModelIndex cell = model_->index(model_->rowCount() - 1, LogModel::hz);
    table_->setCurrentIndex(cell);
    table_->edit(cell);
}

void LogPage::remove_rows() { model_->remove(table_->selectionModel()->selectedIndexes()); }

}  // namespace howlmap::app
