// SPDX-License-Identifier: GPL-3.0-or-later
#include <QClipboard>
#include <QDoubleSpinBox>
#include <QGuiApplication>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>

#include "app/panels/inputs/inputs_model.h"
#include "app/panels/inputs/inputs_panel.h"
#include "app/panels/mixes/mixes_panel.h"
#include "app/panels/mixes/sends_model.h"
#include "app/panels/numbers.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/show/find.h"
#include "tests/app/panels/editing/small_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::app;

class TestTables : public QObject {
    Q_OBJECT
    Document document_;
    Selection selection_;

  private Q_SLOTS:
    void init() {
        document_.replace(test::small_show(), {}, false);
        selection_.clear();
    }

    void numbers_are_read_as_people_type_them_data() {
        QTest::addColumn<QString>("text");
        QTest::addColumn<bool>("readable");
        QTest::addColumn<double>("value");
        QTest::newRow("point") << "98.5" << true << 98.5;
        QTest::newRow("comma") << "98,5" << true << 98.5;
        QTest::newRow("unit") << "98.5 dB" << true << 98.5;
        QTest::newRow("cubic metres") << QStringLiteral("6000 m\u00b3") << true << 6000.0;
        QTest::newRow("minus sign") << QStringLiteral("\u22123 dB") << true << -3.0;
        QTest::newRow("two marks") << "1,234.5" << false << 0.0;
        QTest::newRow("word") << "loud" << false << 0.0;
        QTest::newRow("empty") << "" << false << 0.0;
    }
    void numbers_are_read_as_people_type_them() {
        QFETCH(QString, text);
        QFETCH(bool, readable);
        QFETCH(double, value);
        QCOMPARE(number_of(text).has_value(), readable);
        if (readable) QCOMPARE(*number_of(text), value);
    }

    void names_of_another_show_have_room() {
        document_.replace({}, {}, false);
        InputsPanel panel(document_, selection_);
        Show show = test::small_show();
        show.inputs[0].name = "a name that takes more room than its title";
        document_.replace(show, {}, false);
        const auto* table = panel.findChild<QTableView*>();
        const QAbstractItemView* view = table;  // where it is public
        QVERIFY(table->columnWidth(InputsModel::name) >= view->sizeHintForColumn(InputsModel::name));
    }

    void a_cell_is_one_step_and_nonsense_changes_nothing() {
        InputsModel model(document_);
        QVERIFY(model.setData(model.index(0, InputsModel::stand), QStringLiteral("tall boom"), Qt::EditRole));
        QCOMPARE(document_.show().inputs[0].stand, std::string("tall boom"));
        QVERIFY(model.setData(model.index(0, InputsModel::phantom), Qt::Checked, Qt::CheckStateRole));
        QVERIFY(document_.show().inputs[0].phantom);
        QCOMPARE(document_.undo_stack().count(), 2);
        QVERIFY(!model.setData(model.index(0, InputsModel::channel), QStringLiteral("first"), Qt::EditRole));
        QVERIFY(!model.setData(model.index(0, InputsModel::player), QStringLiteral("Nobody I know"), Qt::EditRole));
        QCOMPARE(document_.undo_stack().count(), 2);
    }

    void a_transducer_is_chosen_by_its_words_and_keeps_what_it_can() {
        InputsModel model(document_);
        QVERIFY(model.setData(model.index(0, InputsModel::transducer), QStringLiteral("supercardioid"), Qt::EditRole));
        QCOMPARE(std::get<PatternName>(microphone_of(document_.show().inputs[0])->pattern), PatternName::supercardioid);
        QVERIFY(model.setData(model.index(1, InputsModel::transducer), QStringLiteral("pickup"), Qt::EditRole));
        QCOMPARE(pickup_of(document_.show().inputs[1])->modes.size(), std::size_t{1});
        QVERIFY(model.setData(model.index(1, InputsModel::transducer), QStringLiteral("line"), Qt::EditRole));
        QVERIFY(is_line(document_.show().inputs[1]));
    }

    void a_line_that_stood_nowhere_gets_a_place_with_its_microphone() {
        InputsModel model(document_);
        document_.edit(QStringLiteral("x"), [](Show& show) {
            show.inputs[0].transducer = Line{};
            show.inputs[0].has_position = false;
        });
        QVERIFY(model.setData(model.index(0, InputsModel::transducer), QStringLiteral("omni"), Qt::EditRole));
        QVERIFY(document_.show().inputs[0].has_position);
        const auto read = read_show(write_show(document_.show()));  // without a place the file would be refused
        QVERIFY2(read, read ? "" : read.error().message().c_str());
        QCOMPARE(read->show, document_.show());
    }

    void rows_move_under_their_channel_numbers() {
        InputsModel model(document_);
        QVERIFY(model.move_row(1, 0));
        QCOMPARE(model.id_at(0), QStringLiteral("fid"));
        QCOMPARE(find_by_id(document_.show().inputs, "fid")->channel, 1);
        QCOMPARE(find_by_id(document_.show().inputs, "vox")->channel, 2);
        QCOMPARE(document_.undo_stack().count(), 1);
        QVERIFY(!model.move_row(0, 0));
    }

    void a_spreadsheet_goes_in_and_comes_out() {
        InputsPanel panel(document_, selection_);
        panel.table().clearSelection();
        panel.copy_cells();
        const QString before = QGuiApplication::clipboard()->text();
        QVERIFY(before.startsWith(QStringLiteral("Ch\tName\tTransducer")));
        QCOMPARE(before.count(QLatin1Char('\n')), 3);
        const QStringList troubles = panel.model().paste(
            panel.model().index(1, InputsModel::name), QStringLiteral("viola\tomni\r\nkeys\tline\r\nharp\tspoon\r\n"));
        QCOMPARE(troubles.size(), 1);
        QVERIFY(troubles.first().contains(QStringLiteral("row 4")));
        QCOMPARE(document_.show().inputs.size(), std::size_t{4});
        QCOMPARE(document_.show().inputs[1].name, std::string("viola"));
        QCOMPARE(document_.show().inputs[2].channel, 3);
        QCOMPARE(document_.undo_stack().count(), 1);
        document_.undo_stack().undo();
        panel.table().clearSelection();
        panel.copy_cells();
        QCOMPARE(QGuiApplication::clipboard()->text(), before);
    }

    void a_send_is_set_removed_and_refused() {
        SendsModel model(document_);
        const QModelIndex cell = model.cell_of(QStringLiteral("m1"), QStringLiteral("fid"));
        QVERIFY(model.setData(cell, QStringLiteral("97,5 dB"), Qt::EditRole));
        QCOMPARE(find_send(document_.show().mixes[0], "fid")->level_db, 97.5);
        QVERIFY(!model.setData(cell, QStringLiteral("161"), Qt::EditRole));
        QVERIFY(!model.setData(cell, QStringLiteral("loud"), Qt::EditRole));
        QCOMPARE(find_send(document_.show().mixes[0], "fid")->level_db, 97.5);
        QVERIFY(model.setData(cell, QString(), Qt::EditRole));
        QVERIFY(!find_send(document_.show().mixes[0], "fid"));
        QCOMPARE(document_.undo_stack().count(), 2);
    }

    void a_send_is_solved_for_the_ear() {
        SendsModel model(document_);
        const QModelIndex cell = model.cell_of(QStringLiteral("m1"), QStringLiteral("vox"));
        QTRY_VERIFY(model.ear_level(cell).has_value());
        const double wanted = std::round(*model.ear_level(cell)) - 5.0;
        QVERIFY(model.set_for_ear(cell, wanted));
        QVERIFY(model.set_for_ear(cell, wanted + 2.0));                    // at once, without new figures
        QVERIFY(std::abs(*model.ear_level(cell) - wanted - 2.0) <= 0.06);  // sends are set to 0.1 dB
        QSignalSpy measured(&model, &SendsModel::ears_updated);
        QTRY_VERIFY(measured.count() > 0);
        QVERIFY(std::abs(*model.ear_level(cell) - wanted - 2.0) <= 0.06);
        QCOMPARE(model.listener(0), QStringLiteral("Ada"));
    }

    void a_send_that_the_ear_would_need_beyond_its_range_is_told() {
        MixesPanel panel(document_, selection_);
        panel.show();
        QTRY_VERIFY(panel.model().settled());
        panel.table().setCurrentIndex(panel.model().cell_of(QStringLiteral("m1"), QStringLiteral("vox")));
        QSignalSpy said(&panel, &MixesPanel::message);
        QDoubleSpinBox* ear = nullptr;
        for (auto* box : panel.findChildren<QDoubleSpinBox*>())
            if (box->accessibleName().contains(QStringLiteral("ear"))) ear = box;
        QVERIFY(ear && ear->isEnabled());
        const double before = ear->value();
        ear->setValue(160.0);
        QCOMPARE(said.count(), 1);
        QVERIFY2(said[0][0].toString().contains(QStringLiteral("a send has -60 to 160 dB")),
                 qPrintable(said[0][0].toString()));
        QCOMPARE(find_send(document_.show().mixes[0], "vox")->level_db, 92.0);
        QCOMPARE(ear->value(), before);
        QVERIFY(!panel.model().setData(panel.table().currentIndex(), QStringLiteral("161"), Qt::EditRole));
        QCOMPARE(said.count(), 2);
    }

    void mixes_come_and_go_whole() {
        MixesPanel panel(document_, selection_);
        panel.add_mix();
        QCOMPARE(document_.show().mixes.size(), std::size_t{2});
        QCOMPARE(document_.show().mixes[1].number, 2);
        QVERIFY(panel.model().move_mix(1, 0));
        QCOMPARE(document_.show().mixes[0].number, 2);
        panel.table().setCurrentIndex(panel.model().cell_of(QStringLiteral("m1"), QStringLiteral("vox")));
        panel.remove_mix();
        QCOMPARE(document_.show().mixes.size(), std::size_t{1});
        QVERIFY(document_.show().performers[0].mix.empty());
        while (document_.undo_stack().canUndo()) document_.undo_stack().undo();
        QCOMPARE(document_.show(), test::small_show());
    }

    void typing_in_a_cell_of_the_real_table() {
        MixesPanel panel(document_, selection_);
        panel.show();
        panel.table().setCurrentIndex(panel.model().cell_of(QStringLiteral("m1"), QStringLiteral("fid")));
        panel.table().edit(panel.table().currentIndex());
        auto* editor = panel.table().findChild<QLineEdit*>();
        QVERIFY(editor);
        QTest::keyClicks(editor, QStringLiteral("101.5"));
        QTest::keyClick(editor, Qt::Key_Return);
        QTRY_VERIFY(find_send(document_.show().mixes[0], "fid"));
        QCOMPARE(find_send(document_.show().mixes[0], "fid")->level_db, 101.5);
    }
};

HOWLMAP_TEST(TestTables)
#include "test_tables.moc"
