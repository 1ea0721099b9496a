// SPDX-License-Identifier: GPL-3.0-or-later
// Cards of rings and cures: how near to ringing one is reads without colour, too.
#include <QListView>
#include <QStandardItemModel>
#include <QtTest>

#include "app/panels/common/card.h"
#include "app/settings/theme.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestCards : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void marksDifferInGrey_data() {
        QTest::addColumn<bool>("dark");
        QTest::newRow("light") << false;
        QTest::newRow("dark") << true;
    }
    void marksDifferInGrey() {
        QFETCH(const bool, dark);
        const QPalette palette = dark ? dark_palette() : light_palette();
        QStandardItemModel model;
        for (const double risk : {1.0, 0.6, 0.2, 0.0}) {
            auto* item = new QStandardItem(QStringLiteral("415 Hz"));
            item->setData(risk, kRisk);
            model.appendRow(item);
        }
        QListView list;
        show_as_cards(list, model, "cards", QStringLiteral("cards"));
        list.setPalette(palette);
        list.resize(300, 400);
        list.show();
        QVERIFY(QTest::qWaitForWindowExposed(&list));
        const QImage grey = list.viewport()->grab().toImage().convertToFormat(QImage::Format_Grayscale8);
        QList<int> marks;
        for (int row = 0; row < model.rowCount(); ++row) {
            const QRect card = list.visualRect(model.index(row, 0));
            marks.append(qGray(grey.pixel(card.left() + 1, card.center().y())));
        }
        // On paper danger darkens, on slate it glows: each step is seen.
        for (int row = 0; row + 1 < marks.size(); ++row)
            QVERIFY2((dark ? marks[row] - marks[row + 1] : marks[row + 1] - marks[row]) >= 12,
                     qPrintable(QStringLiteral("%1: %2 and %3").arg(row).arg(marks[row]).arg(marks[row + 1])));
    }
};

HOWLMAP_TEST(TestCards)

}  // namespace howlmap::app

#include "test_cards.moc"
