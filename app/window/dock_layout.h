// SPDX-License-Identifier: GPL-3.0-or-later
// The panels of the table as docks around the plan: made, arranged, remembered.
#pragma once
#include <QList>
#include <QObject>
#include <QString>

#include "app/panels/panel_table.h"

class QAction;
class QDockWidget;
class QMainWindow;

namespace howlmap::app {

class DockLayout : public QObject {
    Q_OBJECT
  public:
    DockLayout(QMainWindow& window, const Workspace& workspace);

    /// Arranges as remembered, or as at first if nothing (or nonsense) was.
    void restore();
    void save() const;
    void reset();

    /// Hides all panels and tool bars, or brings back those that were there.
    void set_plan_alone(bool alone);
    bool plan_alone() const { return !before_alone_.isEmpty(); }
    /// Shows a panel, in front of its tabs, with the focus.
    void bring_up(const QString& id);
    /// One action a panel, with its shortcut.
    const QList<QAction*>& actions() const { return actions_; }
    QDockWidget* dock(const QString& id) const;
    /// Id of the panel that holds a widget, empty if none does.
    QString panel_of(const QWidget* widget) const;

  private:
    void add(const PanelEntry& entry, const Workspace& workspace);
    void arrange();

    QMainWindow& window_;
    QList<QDockWidget*> docks_;
    QList<QAction*> actions_;
    QByteArray before_alone_;
};

}  // namespace howlmap::app
