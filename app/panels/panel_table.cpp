// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/panel_table.h"

#include <QCoreApplication>
#include <vector>

#include "app/panels/loops/loops_panel.h"
#include "app/panels/response/response_panel.h"

namespace howlmap::app {
namespace {

template <class Widget>
QWidget* make(const Workspace& workspace, QWidget* parent) {
    return new Widget(workspace, parent);
}

}  // namespace

std::span<const PanelEntry> panel_table() {
    static const std::vector<PanelEntry> table{
        {"loops", QT_TRANSLATE_NOOP("panels", "Loops"),
         QT_TRANSLATE_NOOP("panels", "What rings first, worst first, and who makes it."), "Alt+1",
         Qt::RightDockWidgetArea, make<LoopsPanel>},
    };
    return table;
}

QString panel_text(const char* english) { return QCoreApplication::translate("panels", english); }

}  // namespace howlmap::app
