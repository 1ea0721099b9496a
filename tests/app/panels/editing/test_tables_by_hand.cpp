// SPDX-License-Identifier: GPL-3.0-or-later
// Input list and sends by mouse and keys, as people use them.
#include <QDoubleSpinBox>
#include <QHeaderView>
#include <QTableView>
#include <cmath>

#include "app/panels/inputs/inputs_model.h"
#include "app/panels/inputs/inputs_panel.h"
#include "app/panels/mixes/mixes_panel.h"
#include "app/panels/mixes/sends_model.h"
#include "core/listening/ears.h"
#include "core/show/find.h"
#include "core/units/level.h"
#include "tests/app/panels/editing/small_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::app;

namespace {

QPoint middle_of(const QHeaderView& header, int section) {
    return {header.sectionViewportPosition(section) + header.sectionSize(section) / 2, header.height() / 2};
}

void drag_column(QHeaderView& header, int from, int to) {
    // Past the middle of the column there, which is what makes room.
    const QPoint past(header.sectionSize(to) / 4 * (to > from ? 1 : -1), 0);
    const QPoint start = middle_of(header, from), end = middle_of(header, to) + past;
    QWidget* port = header.viewport();
    QTest::mousePress(port, Qt::LeftButton, {}, start);
    for (int i = 1; i <= 10; ++i) {
        const QPoint at = start + (end - start) * i / 10;
        QMouseEvent move(QEvent::MouseMove, at, port->mapToGlobal(at), Qt::NoButton, Qt::LeftButton, {});
        QCoreApplication::sendEvent(port, &move);
    }
    QTest::mouseRelease(port, Qt::LeftButton, {}, end);
}

QStringList titles_of(const QTableView& table) {
    QStringList titles;
    for (int visual = 0; visual < table.model()->columnCount(); ++visual)
        titles.append(table.model()
                          ->headerData(table.horizontalHeader()->logicalIndex(visual), Qt::Horizontal, Qt::DisplayRole)
                          .toString());
    return titles;
}

QStringList list(const char* a, const char* b, const char* c) {
    return {QString::fromLatin1(a), QString::fromLatin1(b), QString::fromLatin1(c)};
}

QDoubleSpinBox* box_named(QWidget& panel, const char* name) {
    for (auto* box : panel.findChildren<QDoubleSpinBox*>())
        if (box->accessibleName() == QLatin1StringView(name)) return box;
    return nullptr;
}

void type_into(QDoubleSpinBox& box, const QString& text) {
    box.setFocus();
    QTest::keyClick(&box, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(&box, text);
    QTest::keyClick(&box, Qt::Key_Return);
}

/// What one send makes at a player's ear by the core alone, dBA.
double heard_dba(const Show& show, const char* player, const char* input) {
    const ChainEnergies chains(show);
    double energy = 0.0;
    for (const EarSource& source : sources_at_ear(show, chains, *find_by_id(show.performers, player)))
        if (source.kind == SourceKind::send &&
            show.mixes[std::size_t(source.mix)].sends[std::size_t(source.send)].input == input)
            energy += source.weighted();
    return energy_to_db(energy);
}

}  // namespace

class TestTablesByHand : public QObject {
    Q_OBJECT
    Document document_;
    Selection selection_;

    void show_panel(QWidget& panel) {
        panel.resize(900, 400);
        panel.show();
        QVERIFY(QTest::qWaitForWindowExposed(&panel));
        qApp->setActiveWindow(&panel);
    }

  private Q_SLOTS:
    void init() {
        Show show = test::small_show();
        for (int number : {2, 3}) {
            Mix mix;
            mix.number = number;
            mix.id = "m" + std::to_string(number);
            mix.name = number == 2 ? "drums" : "side";
            show.mixes.push_back(mix);
        }
        document_.replace(show, {}, false);
        selection_.clear();
    }

    void a_mix_is_dragged_to_another_place() {
        MixesPanel panel(document_, selection_);
        show_panel(panel);
        QHeaderView& header = *panel.table().horizontalHeader();
        QCOMPARE(titles_of(panel.table()), list("1  front", "2  drums", "3  side"));
        drag_column(header, 0, 2);
        QCOMPARE(titles_of(panel.table()), list("1  drums", "2  side", "3  front"));
        drag_column(header, 2, 1);
        QCOMPARE(titles_of(panel.table()), list("1  drums", "2  front", "3  side"));
        QCOMPARE(find_by_id(document_.show().mixes, "m1")->number, 2);
        QCOMPARE(find_send(*find_by_id(document_.show().mixes, "m1"), "vox")->level_db, 92.0);
        QCOMPARE(document_.undo_stack().count(), 2);
        document_.undo_stack().undo();
        document_.undo_stack().undo();
        QCOMPARE(titles_of(panel.table()), list("1  front", "2  drums", "3  side"));
    }

    void a_level_at_the_ear_is_reached() {
        MixesPanel panel(document_, selection_);
        show_panel(panel);
        const QModelIndex cell = panel.model().cell_of(QStringLiteral("m1"), QStringLiteral("vox"));
        QTest::mouseClick(panel.table().viewport(), Qt::LeftButton, {}, panel.table().visualRect(cell).center());
        QDoubleSpinBox* ear = box_named(panel, "Level of the send at the ear");
        QDoubleSpinBox* at_1m = box_named(panel, "Level of the send at 1 m");
        QVERIFY(ear && at_1m);
        QTRY_VERIFY_WITH_TIMEOUT(ear->isEnabled(), 30000);
        QVERIFY(std::abs(ear->value() - heard_dba(document_.show(), "ada", "vox")) <= 0.051);
        for (const double wanted : {88.0, 71.5}) {
            type_into(*ear, QString::number(wanted));
            QVERIFY(std::abs(heard_dba(document_.show(), "ada", "vox") - wanted) <= 0.051);  // sends go by 0.1 dB
            QVERIFY(std::abs(at_1m->value() - find_send(document_.show().mixes[0], "vox")->level_db) < 1e-9);
        }
        QCOMPARE(document_.undo_stack().count(), 2);
        // And the other way round: the ear follows the send.
        type_into(*at_1m, QStringLiteral("90"));
        QCOMPARE(find_send(document_.show().mixes[0], "vox")->level_db, 90.0);
        QVERIFY(std::abs(ear->value() - heard_dba(document_.show(), "ada", "vox")) <= 0.051);
    }

    void where_nobody_listens_there_is_no_ear_to_set() {
        MixesPanel panel(document_, selection_);
        show_panel(panel);
        const QModelIndex cell = panel.model().cell_of(QStringLiteral("m2"), QStringLiteral("vox"));
        QVERIFY(panel.model().setData(cell, QStringLiteral("90"), Qt::EditRole));
        QTest::mouseClick(panel.table().viewport(), Qt::LeftButton, {}, panel.table().visualRect(cell).center());
        QTRY_VERIFY(panel.model().settled());
        QVERIFY(box_named(panel, "Level of the send at 1 m")->isEnabled());
        QVERIFY(!box_named(panel, "Level of the send at the ear")->isEnabled());
    }

    void alt_and_arrows_move_an_input() {
        InputsPanel panel(document_, selection_);
        show_panel(panel);
        panel.table().setFocus();
        QTest::mouseClick(panel.table().viewport(), Qt::LeftButton, {},
                          panel.table().visualRect(panel.model().index(0, InputsModel::name)).center());
        const auto channel = [&](const char* id) { return find_by_id(document_.show().inputs, id)->channel; };
        QTest::keyClick(&panel.table(), Qt::Key_Down, Qt::AltModifier);
        QCOMPARE(channel("vox"), 2);
        QCOMPARE(channel("fid"), 1);
        // The mark goes along, so that the same key moves it further; at the end it stays.
        QCOMPARE(panel.table().currentIndex(), panel.model().index(1, InputsModel::name));
        QTest::keyClick(&panel.table(), Qt::Key_Down, Qt::AltModifier);
        QCOMPARE(document_.undo_stack().count(), 1);
        QTest::keyClick(&panel.table(), Qt::Key_Up, Qt::AltModifier);
        QCOMPARE(channel("vox"), 1);
        QTest::keyClick(&panel.table(), Qt::Key_Up, Qt::AltModifier);
        QCOMPARE(document_.undo_stack().count(), 2);
        // Without Alt the arrows only walk.
        QTest::keyClick(&panel.table(), Qt::Key_Down);
        QCOMPARE(panel.table().currentIndex().row(), 1);
        QCOMPARE(document_.undo_stack().count(), 2);
    }
};

HOWLMAP_TEST(TestTablesByHand)
#include "test_tables_by_hand.moc"
