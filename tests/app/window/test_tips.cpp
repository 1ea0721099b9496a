// SPDX-License-Identifier: GPL-3.0-or-later
// Every button and every action of a table says what it does.
#include <QAbstractButton>
#include <QCheckBox>
#include <QDialogButtonBox>
#include <QTableView>

#include "tests/app/window/windows.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestTips : public QObject {
    Q_OBJECT

    /// Not those that Qt puts into its own widgets, nor "OK" and "Cancel", nor what is ticked: it is named by its
    /// words.
    static bool is_ours(const QAbstractButton& button) {
        if (qobject_cast<const QCheckBox*>(&button) || button.text().isEmpty() ||
            button.objectName().startsWith(QStringLiteral("qt_")))
            return false;
        for (const QWidget* above = button.parentWidget(); above; above = above->parentWidget())
            if (qobject_cast<const QDialogButtonBox*>(above)) return false;
        return true;
    }

  private Q_SLOTS:
    void everyButtonAndEveryActionOfATableSaysWhatItDoes() {
        QStringList mute;
        for_every_window([&](QWidget& window, const QString& name) {
            for (const auto* button : window.findChildren<QAbstractButton*>())
                if (is_ours(*button) && button->toolTip().isEmpty())
                    mute.append(name + QStringLiteral(": ") + button->text());
            for (const auto* table : window.findChildren<QAbstractItemView*>())
                for (const QAction* action : table->actions())
                    if (!action->isSeparator() && (action->toolTip().isEmpty() || action->statusTip().isEmpty()))
                        mute.append(name + QStringLiteral(": ") + action->text());
        });
        mute.removeDuplicates();
        QVERIFY2(mute.isEmpty(), qPrintable(u'\n' + mute.join(u'\n')));
    }
};

HOWLMAP_TEST(TestTips)

}  // namespace howlmap::app

#include "test_tips.moc"
