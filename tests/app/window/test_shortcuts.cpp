// SPDX-License-Identifier: GPL-3.0-or-later
// One key, one meaning: wherever the focus is, no two actions of window, plan and panels wait for the same keys.
#include <QAction>
#include <QMenu>
#include <QRegularExpression>
#include <QShortcut>
#include <QTableView>

#include "app/canvas/plan_view.h"
#include "tests/app/window/windows.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

QWidget* owner_of(const QObject* with) { return qobject_cast<QWidget*>(const_cast<QObject*>(with)); }

/// Whether an action hears its keys while a widget has the focus (Qt, Qt::ShortcutContext).
bool hears(const QAction& action, const QWidget& focus) {
    for (const QObject* with : action.associatedObjects()) {
        const QWidget* widget = owner_of(with);
        if (!widget || qobject_cast<const QMenu*>(widget)) continue;
        switch (action.shortcutContext()) {
            case Qt::ApplicationShortcut:
                return true;
            case Qt::WindowShortcut:
                if (widget->window() == focus.window()) return true;
                break;
            case Qt::WidgetWithChildrenShortcut:
                if (widget == &focus || widget->isAncestorOf(&focus)) return true;
                break;
            case Qt::WidgetShortcut:
                if (widget == &focus) return true;
                break;
        }
    }
    return false;
}

QString name_of(const QAction& action) { return QString(action.text()).remove(u'&'); }

QList<QWidget*> places_of_focus(QWidget& window) {
    QList<QWidget*> places;
    for (QWidget* widget : window.findChildren<QWidget*>())
        if ((widget->focusPolicy() & Qt::TabFocus) && !widget->focusProxy()) places.append(widget);
    return places;
}

QStringList clashes_at(QWidget& window, const QWidget& focus) {
    QHash<QString, const QAction*> taken;
    QStringList found;
    for (const QAction* action : window.findChildren<QAction*>()) {
        if (!hears(*action, focus)) continue;
        for (const QKeySequence& keys : action->shortcuts()) {
            const QAction*& holder = taken[keys.toString()];
            if (holder && holder != action)
                found.append(QStringLiteral("%1: %2 and %3, with the focus in %4")
                                 .arg(keys.toString(), name_of(*holder), name_of(*action),
                                      focus.accessibleName().isEmpty() ? focus.objectName() : focus.accessibleName()));
            holder = action;
        }
    }
    return found;
}

}  // namespace

class TestShortcuts : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void noTwoActionsWaitForTheSameKeys() {
        const auto window = filled_window();
        QStringList found;
        int places = 0, heard = 0;
        for (const PanelEntry& entry : panel_table()) {
            window->docks().bring_up(QLatin1StringView(entry.id));
            for (QWidget* focus : places_of_focus(*window)) {
                ++places;
                found += clashes_at(*window, *focus);
                for (const QAction* action : window->findChildren<QAction*>())
                    heard += hears(*action, *focus) && !action->shortcut().isEmpty();
            }
        }
        found.removeDuplicates();
        QVERIFY2(found.isEmpty(), qPrintable(u'\n' + found.join(u'\n')));
        QVERIFY(places > 30 && heard > 20 * places);
        QAction intruder(window.get());  // one that clashes is found
        intruder.setShortcut(Qt::CTRL | Qt::Key_D);
        window->addAction(&intruder);
        QCOMPARE(clashes_at(*window, window->plan()).size(), 1);
        window->document().set_clean();
    }
    /// The same with real keys. Everything is allowed and nothing happens, and Qt says when it finds two that fit.
    void everyShortcutReachesOneAction() {
        const auto window = filled_window();
        window->selection().set({QString::fromStdString(window->document().show().inputs.front().id)});
        QSet<QKeySequence> all;
        QStringList reached;
        for (QAction* action : window->findChildren<QAction*>()) {
            for (const QKeySequence& keys : action->shortcuts()) all.insert(keys);
            action->setEnabled(true);
            action->setCheckable(false);
            action->setMenu(static_cast<QMenu*>(nullptr));
            disconnect(action, &QAction::triggered, nullptr, nullptr);
            connect(action, &QAction::triggered, this,
                    [&reached, action] { reached.append(action->shortcut().toString()); });
        }
        QTest::failOnWarning(QRegularExpression(QStringLiteral("[Aa]mbiguous")));
        QList<QWidget*> places{&window->plan()};
        for (const PanelEntry& entry : panel_table()) {
            window->docks().bring_up(QLatin1StringView(entry.id));
            QCoreApplication::processEvents();
            for (auto* table : window->docks().dock(QLatin1StringView(entry.id))->findChildren<QTableView*>())
                if (table->isVisible()) places.append(table);
        }
        QSet<QString> worked;
        for (QWidget* place : places)
            for (const QKeySequence& keys : std::as_const(all)) {
                if (!place->isVisible()) continue;
                QApplication::setActiveWindow(window.get());
                place->setFocus();
                reached.clear();
                QTest::keySequence(place, keys);
                QVERIFY2(reached.size() <= 1, qPrintable(keys.toString()));
                for (const QString& one : std::as_const(reached)) worked.insert(one);
            }
        QVERIFY2(worked.size() > 40, qPrintable(QStringList(worked.values()).join(u' ')));
        window->document().set_clean();
    }
};

HOWLMAP_TEST(TestShortcuts)

}  // namespace howlmap::app

#include "test_shortcuts.moc"
