// SPDX-License-Identifier: GPL-3.0-or-later
// The window's own actions: one row each, with text, shortcut and a sentence that serves as status tip and What's This.
// (The plan brings its own, see app/canvas/plan_actions.h.)
#pragma once
#include <QHash>
#include <QKeySequence>
#include <QObject>
#include <functional>

class QAction;
class QWidget;

namespace howlmap::app {

/// Tool tip with the shortcut, status tip and What's This from one sentence.
void explain(QAction* action, const QString& sentence);

class ActionTable : public QObject {
    Q_OBJECT
  public:
    /// Makes all actions of the table and adds them to the widget, so that their shortcuts work in it.
    explicit ActionTable(QWidget* owner);

    /// The action of an id of the table; an unknown id is a broken contract.
    QAction* at(const char* id) const;
    /// Connects an action and gives it back.
    QAction* on(const char* id, std::function<void()> what);
    QList<QAction*> all() const { return actions_.values(); }

  private:
    QHash<QString, QAction*> actions_;
};

}  // namespace howlmap::app
