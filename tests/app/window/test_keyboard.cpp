// SPDX-License-Identifier: GPL-3.0-or-later
// Without a mouse and without eyes: every control has a name, and the keyboard alone reaches it.
#include <QAbstractButton>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QAction>
#include <QComboBox>
#include <QLineEdit>
#include <QMainWindow>
#include <QMenu>
#include <QPushButton>
#include <QScrollBar>
#include <QSet>
#include <QTabBar>
#include <QToolBar>
#include <QToolButton>

#include "app/settings/number_box.h"
#include "tests/app/window/windows.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

QString description(const QWidget& widget) {
    QStringList path;
    for (const QWidget* at = &widget; at && path.size() < 4; at = at->parentWidget())
        path.prepend(at->objectName().isEmpty() ? QString::fromLatin1(at->metaObject()->className())
                                                : at->objectName());
    return path.join(u'/');
}

/// Parts of a control that pass the focus on to it, such as the field of a spin box.
bool is_part_of_another(const QWidget& widget) {
    return widget.focusProxy() || (widget.parentWidget() && (qobject_cast<QAbstractSpinBox*>(widget.parentWidget()) ||
                                                             qobject_cast<QComboBox*>(widget.parentWidget())));
}

QList<QWidget*> controls_of(QWidget& window, Qt::FocusPolicy policy) {
    QList<QWidget*> found;
    for (QWidget* widget : window.findChildren<QWidget*>())
        if (widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & policy) == policy &&
            !is_part_of_another(*widget) && widget->window() == window.window())
            found.append(widget);
    return found;
}

bool is_control(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QAbstractSlider*>(&widget) ||
           qobject_cast<const QAbstractSpinBox*>(&widget) || qobject_cast<const QComboBox*>(&widget) ||
           qobject_cast<const QLineEdit*>(&widget);
}

/// A button of a tool bar stands for an action that a menu or a shortcut offers too; scroll bars follow their view, and
/// the small buttons of tab and dock titles have menu entries.
bool has_other_way(const QWidget& widget) {
    if (qobject_cast<const QScrollBar*>(&widget)) return true;
    if (widget.inherits("QTableCornerButton")) return true;                         // Ctrl+A
    if (widget.accessibleName().endsWith(QStringLiteral(", slider"))) return true;  // beside a field for the same
    for (const QWidget* at = widget.parentWidget(); at; at = at->parentWidget())
        if (qobject_cast<const QTabBar*>(at) || qobject_cast<const QLineEdit*>(at)) return true;
    if (qobject_cast<const QDockWidget*>(widget.parentWidget())) return true;
    const auto* button = qobject_cast<const QToolButton*>(&widget);
    const QAction* action = button ? button->defaultAction() : nullptr;
    if (!action) return button && button->objectName() == QStringLiteral("qt_toolbar_ext_button");
    if (!action->shortcut().isEmpty()) return true;
    for (const QObject* with : action->associatedObjects())
        if (qobject_cast<const QMenu*>(with)) return true;
    return false;
}

/// Where the Tab key leads, until nothing new comes any more. (In the plan it goes through the objects first.)
QSet<const QWidget*> reached_by_tab(QWidget& window) {
    QSet<const QWidget*> reached;
    QWidget* top = window.window();
    for (int press = 0, newest = 0; press < newest + 80; ++press) {
        QWidget* at = top->focusWidget();
        if (at && !reached.contains(at)) {
            reached.insert(at);
            newest = press;
        }
        QTest::keyClick(at ? at : top, Qt::Key_Tab);
    }
    return reached;
}

QImage with_focus(QWidget& widget) {
    widget.setFocus(Qt::TabFocusReason);
    QCoreApplication::processEvents();
    return widget.grab().toImage();
}

QImage without_focus(QWidget& widget) {
    if (QWidget* at = QApplication::focusWidget()) at->clearFocus();
    QCoreApplication::processEvents();
    return widget.grab().toImage();
}

int pixels_apart(const QImage& a, const QImage& b) {
    int apart = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) apart += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
    return apart;
}

}  // namespace

class TestKeyboard : public QObject {
    Q_OBJECT

  private Q_SLOTS:
    void pointAndCommaAreBothDecimalMarks() {
        for (const char* language : {"de_DE", "en_US", "de_CH"})
            for (const char* typed : {"9.5", "9,5"}) {
                NumberBox box;
                box.setLocale(QLocale(QLatin1String(language)));
                box.setRange(-120.0, 2000.0);
                box.setDecimals(2);
                box.setSuffix(QStringLiteral(" dB"));
                box.selectAll();
                QTest::keyClicks(&box, QLatin1String(typed));
                QTest::keyClick(&box, Qt::Key_Return);
                QCOMPARE(box.value(), 9.5);
            }
    }
    void everyNumberIsTypedThatWay() {
        int seen = 0;
        for_every_window([&](QWidget& window, const QString& name) {
            for (auto* box : window.findChildren<QDoubleSpinBox*>()) {
                ++seen;
                QVERIFY2(qobject_cast<NumberBox*>(box), qPrintable(name + u' ' + box->objectName()));
            }
        });
        QVERIFY(seen >= 8);
    }
    void everyControlHasAName() {
        QStringList nameless;
        int seen = 0;
        for_every_window([&](QWidget& window, const QString& name) {
            for (QWidget* widget : controls_of(window, Qt::ClickFocus) + controls_of(window, Qt::TabFocus)) {
                QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(widget);
                if (!accessible) continue;
                ++seen;
                if (accessible->text(QAccessible::Name).isEmpty())
                    nameless.append(name + QStringLiteral(": ") + description(*widget));
            }
        });
        nameless.removeDuplicates();
        QVERIFY2(nameless.isEmpty(), qPrintable(u'\n' + nameless.join(u'\n')));
        QVERIFY(seen > 150);
    }
    /// Text fields on X11 keep these for themselves (Qt, QKeySequence, table of standard shortcuts): with the cursor in
    /// the search field, where the window begins, an action on one of them would do nothing.
    void noActionWantsAKeyThatTextFieldsTake() {
        int seen = 0;
        for_every_window([&](QWidget& window, const QString& name) {
            for (const QAction* action : window.findChildren<QAction*>())
                for (const QKeySequence& keys : action->shortcuts()) {
                    ++seen;
                    for (const auto key : {Qt::Key_E, Qt::Key_K, Qt::Key_U})
                        QVERIFY2(keys != QKeySequence(Qt::CTRL | key), qPrintable(name + u' ' + action->text()));
                }
        });
        QVERIFY(seen > 30);
    }
    void everyControlIsReachedByTheTabKey() {
        QStringList lost;
        int reached = 0;
        for_every_window([&](QWidget& window, const QString& name) {
            const auto by_tab = reached_by_tab(window);
            // Asked for afterwards: the Inspector is made anew for each object that the plan went through.
            for (const QWidget* widget : controls_of(window, Qt::TabFocus)) {
                reached += by_tab.contains(widget);
                if (!by_tab.contains(widget)) lost.append(name + QStringLiteral(": ") + description(*widget));
            }
        });
        lost.removeDuplicates();
        QVERIFY2(lost.isEmpty(), qPrintable(u'\n' + lost.join(u'\n')));
        QVERIFY(reached > 50);
    }
    /// Whoever has the keys is seen. (The plan has a test of its own.)
    void focusIsSeenOnEveryControl() {
        QStringList unseen;
        int seen = 0;
        for_every_window([&](QWidget& window, const QString& name) {
            QWidget* top = window.window();
            QApplication::setActiveWindow(top);
            QTest::keyClick(top->focusWidget() ? top->focusWidget() : top, Qt::Key_Tab);  // from here on by keys
            for (QWidget* widget : controls_of(window, Qt::TabFocus)) {
                const QImage with = with_focus(*widget), without = without_focus(*widget);
                // The button that Enter presses wears its ring always; who else has the keys shows it.
                const auto* button = qobject_cast<QPushButton*>(widget);
                if (button && button->isDefault()) continue;
                if (with.size() != without.size()) continue;  // it makes room for what it shows then
                ++seen;
                if (pixels_apart(with, without) >= 20) continue;
                unseen.append(name + QStringLiteral(": ") + description(*widget));
                if (const QString folder = qEnvironmentVariable("HOWLMAP_PICTURES"); !folder.isEmpty())
                    with.save(folder + QStringLiteral("/unseen-%1.png").arg(unseen.size()));
            }
        });
        unseen.removeDuplicates();
        QVERIFY2(unseen.isEmpty(), qPrintable(u'\n' + unseen.join(u'\n')));
        QVERIFY(seen > 50);
    }
    void noControlIsForTheMouseAlone() {
        QStringList lost;
        for_every_window([&](QWidget& window, const QString& name) {
            for (const QWidget* widget : window.findChildren<QWidget*>())
                if (widget->isVisible() && is_control(*widget) && !is_part_of_another(*widget) &&
                    !(widget->focusPolicy() & Qt::TabFocus) && !has_other_way(*widget))
                    lost.append(name + QStringLiteral(": ") + description(*widget));
        });
        lost.removeDuplicates();
        QVERIFY2(lost.isEmpty(), qPrintable(u'\n' + lost.join(u'\n')));
    }
};

HOWLMAP_TEST(TestKeyboard)

}  // namespace howlmap::app

#include "test_keyboard.moc"
