// SPDX-License-Identifier: GPL-3.0-or-later
// The Inspector's tables: corners, body modes, spectra.
#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <cmath>

#include "app/panels/inspector/field_row.h"
#include "app/panels/inspector/inspector_panel.h"
#include "app/panels/inspector/number_table.h"
#include "app/panels/inspector/tables.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/show/edits.h"
#include "core/show/find.h"
#include "tests/app/panels/editing/small_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::app;

class TestNumberTables : public QObject {
    Q_OBJECT
    Document document_;
    Selection selection_;

    NumberTableSource source(const QString& id, const QString& title) const {
        for (const NumberTableSource& one : tables_of(document_.show(), id))
            if (one.title == title) return one;
        return {};
    }
    void in_feet() {
        document_.edit(QStringLiteral("x"), [](Show& show) { show.display.units = Units::imperial; });
    }
    /// The table with this title in a panel, or null where it does not apply.
    static NumberTable* table_in(InspectorPanel& panel, const QString& title) {
        for (NumberTable* one : panel.findChildren<NumberTable*>())
            if (one->model().source().title == title && one->model().applies()) return one;
        return nullptr;
    }
    static void choose(FieldRow* row, const QString& text) {
        auto* box = qobject_cast<QComboBox*>(row->editor());
        QVERIFY(box && box->findText(text) >= 0);
        box->setCurrentText(text);
        Q_EMIT box->activated(box->findText(text));
    }
    const Outline& stage() const { return document_.show().stage.outline; }

  private Q_SLOTS:
    void init() {
        document_.replace(test::small_show(), {}, false);
        selection_.clear();
    }
    void cleanup() { QLocale::setDefault(QLocale::c()); }

    void corners_are_typed_as_the_show_measures() {
        in_feet();
        NumberTableModel model(source({}, QStringLiteral("Stage corners")), document_, nullptr);
        QCOMPARE(model.headerData(0, Qt::Horizontal, Qt::DisplayRole).toString(), QStringLiteral("Stage left"));
        const QModelIndex upstage = model.index(0, 1);
        QVERIFY(model.setData(upstage, QStringLiteral("-3' 6\""), Qt::EditRole));
        QVERIFY(std::abs(stage()[0].y + 1.0668) < 1e-12);
        QCOMPARE(model.data(upstage, Qt::DisplayRole).toString(), QStringLiteral("\u22123\u2032 6\u2033"));
        QVERIFY(model.setData(upstage, QStringLiteral("-4"), Qt::EditRole));
        QVERIFY(std::abs(stage()[0].y + 4 * 0.3048) < 1e-12);  // 1 ft = 0.3048 m, agreement of 1959
        QVERIFY(model.setData(upstage, QStringLiteral("-1,5 m"), Qt::EditRole));
        QCOMPARE(stage()[0].y, -1.5);
        QSignalSpy trouble(&model, &NumberTableModel::trouble);
        QVERIFY(!model.setData(upstage, QStringLiteral("six"), Qt::EditRole));
        QVERIFY(trouble.last().first().toString().contains(QStringLiteral("length")));
        QVERIFY(!model.setData(upstage, QStringLiteral("4000'"), Qt::EditRole));
        QVERIFY2(trouble.last().first().toString().contains(QStringLiteral("3280\u2032 10")),
                 qPrintable(trouble.last().first().toString()));
        QCOMPARE(stage()[0].y, -1.5);
    }

    void a_cell_that_is_left_as_it_was_changes_nothing() {
        in_feet();
        document_.edit(QStringLiteral("x"), [](Show& show) { show.stage.outline[0].x -= 0.003; });
        const Show before = document_.show();
        NumberTableModel model(source({}, QStringLiteral("Stage corners")), document_, nullptr);
        const QModelIndex cell = model.index(0, 0);
        QVERIFY(model.setData(cell, model.data(cell, Qt::EditRole), Qt::EditRole));  // shown to half an inch
        QCOMPARE(document_.show(), before);
    }

    void corners_take_a_comma_in_german() {
        QLocale::setDefault(QLocale(QLocale::German));
        NumberTableModel model(source({}, QStringLiteral("Stage corners")), document_, nullptr);
        QVERIFY(model.setData(model.index(0, 0), QStringLiteral("-4,25"), Qt::EditRole));
        QCOMPARE(stage()[0].x, -4.25);
        QVERIFY(model.setData(model.index(0, 0), QStringLiteral("-4.125"), Qt::EditRole));
        QCOMPARE(stage()[0].x, -4.125);
    }

    void corners_are_pasted_in_feet_and_inches() {
        in_feet();
        NumberTableModel model(source({}, QStringLiteral("Stage corners")), document_, nullptr);
        QVERIFY(model.paste(QStringLiteral("left\tup\n-10'\t0\n10' 6\"\t0\n0\t12' 3\"\n")));
        QCOMPARE(stage().size(), std::size_t{3});
        QVERIFY(std::abs(stage()[1].x - 3.2004) < 1e-12);
        QVERIFY(model.paste(QStringLiteral("-10', 0\n10' 6\" 0\n0, 12' 3\"\n")));
        QVERIFY(std::abs(stage()[2].y - 3.7338) < 1e-12);
        QSignalSpy trouble(&model, &NumberTableModel::trouble);
        QVERIFY(!model.paste(QStringLiteral("\n-10'\t0\n10' 6\n0\t12' 3\"\n")));
        QVERIFY2(trouble.last().first().toString().contains(QStringLiteral("line 3")),
                 qPrintable(trouble.last().first().toString()));
    }

    void what_is_copied_can_be_pasted_again_data() {
        QTest::addColumn<bool>("feet");
        QTest::newRow("metres") << false;
        QTest::newRow("feet and inches") << true;
    }
    void what_is_copied_can_be_pasted_again() {
        QFETCH(bool, feet);
        if (feet) in_feet();
        document_.edit(QStringLiteral("x"), [](Show& show) {
            show.stage.outline = {{-4.033, -0.5}, {4.25, 0.0}, {3.9, 6.017}, {-4.0, 6.0}};
        });
        const Outline before = stage();
        NumberTable table(source({}, QStringLiteral("Stage corners")), document_);
        table.findChild<QTableView*>()->actions().at(0)->trigger();
        document_.edit(QStringLiteral("x"), [](Show& show) { show.stage.outline = {{0, 0}, {1, 0}, {0, 1}}; });
        table.refresh();
        table.findChild<QTableView*>()->actions().at(1)->trigger();
        QCOMPARE(stage().size(), before.size());
        const double rounding = feet ? 0.0254 / 4 + 1e-9 : 1e-9;  // half an inch is shown
        for (std::size_t i = 0; i < before.size(); ++i)
            QVERIFY(std::abs(stage()[i].x - before[i].x) <= rounding &&
                    std::abs(stage()[i].y - before[i].y) <= rounding);
    }

    void corners_of_a_locked_riser_stay() {
        document_.edit(QStringLiteral("x"), [](Show& show) {
            show.stage.risers.push_back({"r", "riser", {{0, 2}, {2, 2}, {2, 4}, {0, 4}}, 0.4, {}});
            set_locked(show, {"r"}, true);
        });
        NumberTableModel model(source(QStringLiteral("r"), QStringLiteral("Riser corners")), document_, nullptr);
        QSignalSpy trouble(&model, &NumberTableModel::trouble);
        QVERIFY(!model.setData(model.index(0, 0), QStringLiteral("-1"), Qt::EditRole));
        QVERIFY(trouble.last().first().toString().contains(QStringLiteral("locked")));
        document_.edit(QStringLiteral("x"), [](Show& show) { set_locked(show, {"r"}, false); });
        QVERIFY(model.setData(model.index(0, 0), QStringLiteral("-1"), Qt::EditRole));
    }

    void a_body_mode_has_a_name_that_goes_with_it() {
        NumberTableModel model(source(QStringLiteral("fid"), QStringLiteral("Body modes")), document_, nullptr);
        const auto& modes = [this]() -> const std::vector<BodyMode>& {
            return pickup_of(document_.show().inputs[1])->modes;
        };
        QVERIFY(model.paste(QStringLiteral("275;15;0;1;A0\n470;25;-1;0;corpus one\n")));
        QCOMPARE(modes()[0].name, std::string("A0"));
        QCOMPARE(modes()[1].name, std::string("corpus one"));
        QVERIFY(model.setData(model.index(1, 4), QStringLiteral("B1-"), Qt::EditRole));
        QCOMPARE(modes()[1].name, std::string("B1-"));
        document_.edit(QStringLiteral("x"), [](Show& show) {
            std::get<Pickup>(show.inputs[1].transducer).modes[1].extras.emplace_back("heard", "true");
        });
        model.refresh();
        QVERIFY(model.remove_row(0));  // what stays keeps its name and what else the file says of it
        QCOMPARE(modes().size(), std::size_t{1});
        QCOMPARE(modes()[0].hz, 470.0);
        QCOMPARE(modes()[0].name, std::string("B1-"));
        QCOMPARE(modes()[0].extras.size(), std::size_t{1});
    }

    void a_spectrum_is_given_by_bands() {
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("vox")});
        const QString title = QStringLiteral("Spectrum by third-octave bands");
        QVERIFY(!table_in(panel, title));
        choose(panel.row(QStringLiteral("Spectrum")), QStringLiteral("voice"));
        choose(panel.row(QStringLiteral("Spectrum")), QStringLiteral("third-octave bands"));
        NumberTable* table = table_in(panel, title);
        QVERIFY(table);
        const auto bands = [this] { return std::get<std::map<int, double>>(document_.show().inputs[0].spectrum); };
        QCOMPARE(bands().size(), std::size_t{31});
        QCOMPARE(bands()[17], 0.0);   // 1 kHz, on the plateau of the voice
        QCOMPARE(bands()[20], -6.0);  // an octave above it
        QVERIFY(table->model().setData(table->model().index(17, 1), QStringLiteral("-3,5"), Qt::EditRole));
        QCOMPARE(bands()[17], -3.5);
        QVERIFY(!table->model().setData(table->model().index(17, 0), QStringLiteral("1100"), Qt::EditRole));
        QVERIFY(!table->model().setData(table->model().index(17, 0), QStringLiteral("800"), Qt::EditRole));
        QVERIFY(table->model().paste(QStringLiteral("200 -2\n")));
        QVERIFY(!table->model().remove_row(0));  // no band: no sound
        QVERIFY(table->model().add_row());
        QCOMPARE(bands(), (std::map<int, double>{{10, -2.0}, {11, -2.0}}));
        QCOMPARE(read_show(write_show(document_.show()))->show, document_.show());
        choose(panel.row(QStringLiteral("Spectrum")), QStringLiteral("bass"));
        QVERIFY(!table_in(panel, title));
    }

    void backline_has_a_spectrum_too() {
        document_.edit(QStringLiteral("x"), [](Show& show) {
            show.backline.push_back({"amp", "amp", "amplifier", {1, 2, 0.5}, 90.0, SpectrumName::pink, {}, {}});
        });
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("amp")});
        choose(panel.row(QStringLiteral("Spectrum")), QStringLiteral("bass"));
        QCOMPARE(std::get<SpectrumName>(document_.show().backline[0].spectrum), SpectrumName::bass);
        choose(panel.row(QStringLiteral("Spectrum")), QStringLiteral("third-octave bands"));
        QVERIFY(table_in(panel, QStringLiteral("Spectrum by third-octave bands")));
    }
};

HOWLMAP_TEST(TestNumberTables)
#include "test_number_tables.moc"
