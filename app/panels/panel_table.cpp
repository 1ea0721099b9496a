// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/panel_table.h"

#include <QCoreApplication>
#include <vector>

namespace howlmap::app {
namespace {

template <class Widget>
QWidget* make(const Workspace& workspace, QWidget* parent) {
    return new Widget(workspace, parent);
}

}  // namespace

std::span<const PanelEntry> panel_table() {
    static const std::vector<PanelEntry> table{};
    return table;
}

QString panel_text(const char* english) { return QCoreApplication::translate("panels", english); }

}  // namespace howlmap::app
