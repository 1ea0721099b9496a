// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>

#include "app/window/file_actions.h"
#include "app/window/main_window.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// What a screen reader says of a widget.
QString spoken(QWidget* widget) {
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
    return face ? face->text(QAccessible::Name) : QString();
}

/// The line inside a spin box or a combo box speaks through its owner.
bool part_of_another(const QWidget* widget) {
    const QWidget* parent = widget->parentWidget();
    return qobject_cast<const QAbstractSpinBox*>(parent) || qobject_cast<const QComboBox*>(parent) ||
           widget->objectName().startsWith(QStringLiteral("qt_"));
}

QString described(const QWidget* widget) {
    QString text;
    for (const QWidget* at = widget; at; at = at->parentWidget())
        text += QStringLiteral(" < %1 '%2'").arg(QLatin1StringView(at->metaObject()->className()), at->objectName());
    return text;
}

}  // namespace

class TestAccessibility : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void everythingThatTakesTheFocusHasAName() {
        MainWindow window;
        window.show();
        QVERIFY(window.files().open_example(QStringLiteral(":/examples/folk-band-six.howlmap")));
        int named = 0;
        QStringList silent;
        for (QWidget* widget : window.findChildren<QWidget*>()) {
            if (!(widget->focusPolicy() & Qt::TabFocus) || part_of_another(widget)) continue;
            spoken(widget).isEmpty() ? silent.append(described(widget)) : (void)++named;
        }
        QVERIFY2(silent.isEmpty(), qPrintable(silent.join(u'\n')));
        QVERIFY(named > 20);
    }
};

HOWLMAP_TEST(TestAccessibility)

}  // namespace howlmap::app

#include "test_accessibility.moc"
