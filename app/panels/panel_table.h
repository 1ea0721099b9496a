// SPDX-License-Identifier: GPL-3.0-or-later
// All panels. A panel is one widget class; it becomes part of the window by a row in panel_table.cpp and nothing else:
// dock, menu entry, shortcut, tear-off, layout, help anchor and accessible name follow from the row.
#pragma once
#include <QString>
#include <span>

#include "app/panels/workspace.h"

class QWidget;

namespace howlmap::app {

struct PanelEntry {
    const char* id;  ///< object name, key of the stored layout and anchor in the help page of the panels: never changes
    const char* title;        ///< English; shown through panel_text()
    const char* hint;         ///< one sentence: what it is for
    const char* keys;         ///< shortcut that shows it and moves the focus there, portable text
    Qt::DockWidgetArea area;  ///< panels of one area start as tabs of one group, in the order of the table
    QWidget* (*make)(const Workspace& workspace, QWidget* parent);
};

std::span<const PanelEntry> panel_table();
/// A title or a hint of the table in the user's language.
QString panel_text(const char* english);

}  // namespace howlmap::app
