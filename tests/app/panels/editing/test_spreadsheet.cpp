// SPDX-License-Identifier: GPL-3.0-or-later
// Input list and sends between Howlmap and a spreadsheet, by the keys that people press there.
#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QLocale>
#include <QTableView>
#include <QTranslator>

#include "app/panels/inputs/inputs_model.h"
#include "app/panels/inputs/inputs_panel.h"
#include "app/panels/mixes/mixes_panel.h"
#include "app/panels/mixes/sends_model.h"
#include "app/panels/table_clipboard.h"
#include "app/settings/language.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/units/translate.h"
#include "tests/app/panels/editing/small_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::app;

namespace {

QString clipboard() { return QGuiApplication::clipboard()->text(); }
void to_clipboard(const QString& text) { QGuiApplication::clipboard()->setText(text); }

Show example(const QString& name) {
    QFile file(QStringLiteral(":/examples/") + name);
    if (!file.open(QIODevice::ReadOnly)) return {};
    const auto read = read_show(file.readAll().toStdString());
    return read ? read->show : Show{};
}

/// What makes a list hard to carry over: breaks, tabs, quotation marks, names that come twice, levels between two
/// tenths.
void make_hard(Show& show) {
    if (show.inputs.size() > 1) {
        show.inputs[0].notes = "first line\nsecond\tline";
        show.inputs[1].name = "\"Spoons\"";
        show.inputs[1].notes = "\"so\" she said";
    }
    if (show.performers.size() > 1) show.performers[1].name = show.performers[0].name;
    for (Mix& mix : show.mixes)
        for (Send& send : mix.sends) send.level_db -= 0.04;
}

template <class Panel>
void press(Panel& panel, const QKeySequence& keys) {
    qApp->setActiveWindow(&panel);
    panel.table().setFocus();
    QTest::keySequence(&panel.table(), keys);
}

template <class Panel>
void copy_and_paste_back(Document& document, Panel& panel, bool all_marked) {
    panel.resize(900, 400);
    panel.show();
    QVERIFY(QTest::qWaitForWindowExposed(&panel));
    const std::string before = write_show(document.show());
    const int steps = document.undo_stack().count();
    to_clipboard({});
    if (all_marked)
        press(panel, QKeySequence::SelectAll);
    else
        panel.table().clearSelection();
    press(panel, QKeySequence::Copy);
    QVERIFY(clipboard().count(u'\n') >= panel.table().model()->rowCount());
    if (all_marked) panel.table().setCurrentIndex(panel.table().model()->index(0, 0));
    QSignalSpy said(&panel, &Panel::message);
    press(panel, QKeySequence::Paste);
    QVERIFY2(said.isEmpty(), qPrintable(said.value(0).value(0).toString()));
    QCOMPARE(QString::fromStdString(write_show(document.show())), QString::fromStdString(before));
    QCOMPARE(document.undo_stack().count(), steps);
}

}  // namespace

class TestSpreadsheet : public QObject {
    Q_OBJECT
    Document document_;
    Selection selection_;

  private Q_SLOTS:
    void init() {
        document_.replace(test::small_show(), {}, false);
        selection_.clear();
    }
    void cleanup() {
        set_translator({});
        set_decimal_mark('.');
        qDeleteAll(qApp->findChildren<QTranslator*>());
        QLocale::setDefault(QLocale::c());
    }

    void what_is_copied_and_pasted_back_changes_nothing_data() {
        QTest::addColumn<QString>("show");
        QTest::addColumn<bool>("german");
        for (const QString& name : QDir(QStringLiteral(":/examples")).entryList({QStringLiteral("*.howlmap")}))
            for (const bool german : {false, true})
                QTest::newRow(qPrintable(name + (german ? QStringLiteral(" de") : QString()))) << name << german;
    }
    void what_is_copied_and_pasted_back_changes_nothing() {
        QFETCH(const QString, show);
        QFETCH(const bool, german);
        if (german) {
            QLocale::setDefault(QLocale(QLocale::German));
            speak(QLocale());
        }
        Show hard = example(show);
        QVERIFY(!hard.inputs.empty());
        make_hard(hard);
        document_.replace(hard, {}, false);
        for (const bool all_marked : {true, false}) {
            InputsPanel inputs(document_, selection_);
            copy_and_paste_back(document_, inputs, all_marked);
            MixesPanel mixes(document_, selection_);
            copy_and_paste_back(document_, mixes, all_marked);
        }
    }

    void titles_say_where_cells_belong() {
        InputsPanel panel(document_, selection_);
        panel.table().setCurrentIndex(panel.model().index(0, InputsModel::name));
        // Columns in another order, a row that is new and the rows turned round.
        to_clipboard(QStringLiteral("Notes\tCh\tName\nbring a stool\t7\tharp\nsings\t2\tfiddle two\n"));
        panel.paste_cells();
        QCOMPARE(document_.show().inputs.size(), std::size_t{3});
        QCOMPARE(find_by_id(document_.show().inputs, "vox")->name, std::string("voice"));
        QCOMPARE(find_by_id(document_.show().inputs, "fid")->name, std::string("fiddle two"));
        QCOMPARE(find_by_id(document_.show().inputs, "fid")->notes, std::string("sings"));
        const Input& harp = document_.show().inputs.back();
        QCOMPARE(harp.channel, 7);
        QCOMPARE(harp.name, std::string("harp"));
        QCOMPARE(document_.undo_stack().count(), 1);
    }

    void a_cell_with_a_line_break_stays_one_cell() {
        const QList<QStringList> cells{{QStringLiteral("a\nb"), QStringLiteral("say \"x\"")},
                                       {QStringLiteral("\"q\""), QString()}};
        // Written as spreadsheets write it, with either end of line.
        QCOMPARE(cells_of(QStringLiteral("\"a\nb\"\tsay \"x\"\r\n\"\"\"q\"\"\"\t\r\n")), cells);
        // Marks that nothing calls for are part of the word; a mark that is never closed, too.
        QCOMPARE(cells_of(QStringLiteral("\"q\"\t\n")), QList<QStringList>({{QStringLiteral("\"q\""), QString()}}));
        QCOMPARE(cells_of(QStringLiteral("\"a\tb")),
                 QList<QStringList>({{QStringLiteral("\"a"), QStringLiteral("b")}}));
        QVERIFY(cells_of({}).isEmpty() && cells_of(QStringLiteral("\n\n")).isEmpty());
    }

    void sends_go_in_and_out_under_their_titles() {
        MixesPanel panel(document_, selection_);
        panel.add_mix();
        panel.table().clearSelection();
        panel.copy_cells();
        QCOMPARE(clipboard(), QStringLiteral("\t1  front\t2  Mix 2\n1  voice\t92\t\n2  fiddle\t\t\n"));
        // A spreadsheet sorted it by another column and filled in the gaps; one row is of another show.
        to_clipboard(QStringLiteral("\t2  Mix 2\t1  front\n9  zither\t80\t80\n2  fiddle\t88,5\t90\n1  voice\t\t91\n"));
        QSignalSpy said(&panel, &MixesPanel::message);
        panel.paste_cells();
        QCOMPARE(said.size(), 1);
        const Mix& front = document_.show().mixes[0];
        const Mix& second = document_.show().mixes[1];
        QCOMPARE(find_send(front, "fid")->level_db, 90.0);
        QCOMPARE(find_send(front, "vox")->level_db, 91.0);
        QCOMPARE(find_send(second, "fid")->level_db, 88.5);
        QVERIFY(!find_send(second, "vox"));
        QCOMPARE(document_.undo_stack().undoText(), QStringLiteral("Paste sends"));
        document_.undo_stack().undo();
        QVERIFY(!find_send(document_.show().mixes[1], "fid"));
    }

    void levels_are_pasted_where_the_mark_is() {
        MixesPanel panel(document_, selection_);
        panel.add_mix();
        panel.show();
        QVERIFY(QTest::qWaitForWindowExposed(&panel));
        QTest::mouseClick(panel.table().viewport(), Qt::LeftButton, {},
                          panel.table().visualRect(panel.model().index(0, 1)).center());
        to_clipboard(QStringLiteral("95\n96.5\tloud\n"));
        QSignalSpy said(&panel, &MixesPanel::message);
        press(panel, QKeySequence::Paste);
        QCOMPARE(find_send(document_.show().mixes[1], "vox")->level_db, 95.0);
        QCOMPARE(find_send(document_.show().mixes[1], "fid")->level_db, 96.5);
        QCOMPARE(said.size(), 1);
        QVERIFY(said[0][0].toString().contains(QStringLiteral("loud")));
    }

    void transducers_are_chosen_in_every_language() {
        for (const QLocale& language : {QLocale(QLocale::C), QLocale(QLocale::German)}) {
            QLocale::setDefault(language);
            speak(language);
            Input line, pickup;
            line.transducer = Line{};
            pickup.transducer = Pickup{};
            for (const Input& wanted : {line, pickup, Input{}}) {
                document_.replace(test::small_show(), {}, false);
                InputsModel model(document_);
                for (int row : {0, 1}) {
                    const QString words = QString::fromStdString(report::transducer_words(wanted));
                    QVERIFY2(model.setData(model.index(row, InputsModel::transducer), words, Qt::EditRole),
                             qPrintable(words));
                    QCOMPARE(document_.show().inputs[std::size_t(row)].transducer.index(), wanted.transducer.index());
                }
            }
        }
    }
};

HOWLMAP_TEST(TestSpreadsheet)
#include "test_spreadsheet.moc"
