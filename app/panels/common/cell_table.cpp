// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/common/cell_table.h"

#include <QAction>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

namespace howlmap::app {

void add_cell_actions(QTableView& table, const std::vector<CellAction>& actions) {
    for (const CellAction& cell : actions) {
        auto* action = new QAction(cell.text, &table);
        action->setShortcut(cell.keys);
        action->setToolTip(QStringLiteral("%1 (%2)").arg(cell.text, cell.keys.toString(QKeySequence::NativeText)));
        action->setStatusTip(cell.sentence);
        action->setShortcutContext(Qt::WidgetShortcut);
        QObject::connect(action, &QAction::triggered, &table, cell.run);
        table.addAction(action);
    }
    table.setContextMenuPolicy(Qt::ActionsContextMenu);
}

void lay_out_table(QWidget& panel, QLabel& hint, QTableView& table, QWidget* fields) {
    hint.setWordWrap(true);
    table.setWordWrap(false);
    auto* layout = new QVBoxLayout(&panel);
    layout->setContentsMargins(6, 6, 6, 6);
    layout->addWidget(&hint);
    layout->addWidget(&table, 1);
    if (fields) layout->addWidget(fields);
}

}  // namespace howlmap::app
