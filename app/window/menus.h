// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QMainWindow;

namespace howlmap::app {

class ActionTable;
class DockLayout;
class FileActions;
class PlanView;
class RecentFiles;

/// Where menus and tool bar take their actions from.
struct MenuSources {
    ActionTable& actions;
    RecentFiles& recent;
    FileActions& files;
    DockLayout& docks;
    PlanView& plan;
};

/// Fills the menu bar and adds the tool bar.
void build_menus(QMainWindow& window, const MenuSources& sources);

}  // namespace howlmap::app
