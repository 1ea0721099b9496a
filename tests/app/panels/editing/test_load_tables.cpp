// SPDX-License-Identifier: GPL-3.0-or-later
// "Load table..." by its dialog: a directivity and rows of numbers, from files that are right and from files that are
// not.
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <cmath>

#include "app/panels/inspector/inspector_panel.h"
#include "app/panels/inspector/measured_directivity.h"
#include "app/panels/inspector/number_table.h"
#include "app/panels/inspector/polar_plot.h"
#include "tests/app/panels/editing/small_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::app;

class TestLoadTables : public QObject {
    Q_OBJECT
    Document document_;
    Selection selection_;
    QTemporaryDir folder_;

    QString file(const char* name, const char* text) const {
        QFile out(folder_.filePath(QLatin1StringView(name)));
        if (!out.open(QIODevice::WriteOnly) || out.write(text) < 0) return {};
        return out.fileName();
    }
    /// Presses the button that loads and gives the dialog this file.
    static void load(QWidget& part, const QString& words, const QString& file) {
        for (auto* button : part.findChildren<QPushButton*>()) {
            if (!button->text().startsWith(words)) continue;
            QTimer::singleShot(0, button, [file] {
                auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
                QVERIFY(dialog);
                dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))->setText(file);
                QMetaObject::invokeMethod(dialog, "accept");
            });
            return button->click();
        }
        QFAIL("no button that loads");
    }
    static QString told_in(const QWidget& part) {
        QStringList words;
        for (const auto* label : part.findChildren<QLabel*>()) words.append(label->text());
        return words.join(QLatin1Char(' '));
    }

  private Q_SLOTS:
    void init() {
        document_.replace(test::small_show(), {}, false);
        document_.edit(QStringLiteral("x"), [](Show& show) {
            const DirectivityTable even{{0, 180}, {1000}, {{0, 0}}, {}};
            show.loudspeakers[0].directivity = even;
            std::get<Microphone>(show.inputs[0].transducer).pattern = even;
        });
        selection_.clear();
    }

    void a_directivity_is_loaded_and_drawn_data() {
        QTest::addColumn<QString>("id");
        QTest::newRow("loudspeaker") << QStringLiteral("w1");
        QTest::newRow("microphone") << QStringLiteral("vox");
    }
    void a_directivity_is_loaded_and_drawn() {
        QFETCH(QString, id);
        InspectorPanel panel(document_, selection_);
        panel.show();
        selection_.set({id});
        auto* measured = panel.findChild<MeasuredDirectivity*>();
        auto* plot = panel.findChild<PolarPlot*>();
        QVERIFY(measured->isVisible() && plot->isVisible());
        panel.set_frequency(2000.0);
        const QImage before = plot->grab().toImage();
        load(*measured, QStringLiteral("Load"), file("good.csv", "Hz,0,90,180\n500,0,-3,-10\n2000,0,-9,-20\n"));
        QVERIFY2(told_in(*measured).contains(QStringLiteral("3 angles by 2 frequencies")),
                 qPrintable(told_in(*measured)));
        const auto curve = polar_of(document_.show(), id.toStdString(), 2000.0);
        QVERIFY(curve && std::abs(curve->db.back() + 20.0) < 1e-9);
        const QImage high = plot->grab().toImage();
        QVERIFY(high != before);
        panel.set_frequency(500.0);
        QVERIFY(plot->grab().toImage() != high);
    }

    void a_bad_directivity_names_its_line_and_changes_nothing() {
        InspectorPanel panel(document_, selection_);
        panel.show();
        selection_.set({QStringLiteral("w1")});
        auto* measured = panel.findChild<MeasuredDirectivity*>();
        const Show before = document_.show();
        load(*measured, QStringLiteral("Load"), file("bad.csv", "Hz,0,90,180\n500,0,-3,-10\n2000,0,loud,-20\n"));
        QVERIFY2(told_in(*measured).contains(QStringLiteral("line 3")), qPrintable(told_in(*measured)));
        QCOMPARE(document_.show(), before);
        load(*measured, QStringLiteral("Load"), file("good.csv", "Hz,0,180\n500,0,-3\n"));
        QVERIFY(!told_in(*measured).contains(QStringLiteral("line 3")));
    }

    void rows_are_loaded_from_a_file_and_a_bad_line_is_named() {
        InspectorPanel panel(document_, selection_);
        panel.show();
        selection_.set({QStringLiteral("w1")});
        NumberTable* response = nullptr;
        for (auto* table : panel.findChildren<NumberTable*>())
            if (table->model().source().title == QStringLiteral("Response table")) response = table;
        QVERIFY(response);
        load(*response, QStringLiteral("Load"), file("response.csv", "Hz,dB\n100,-3\n1000,0\n"));
        QCOMPARE(document_.show().loudspeakers[0].response.table.size(), std::size_t{2});
        load(*response, QStringLiteral("Load"), file("torn.csv", "Hz,dB\n100,-3\n\n1000\n"));
        QVERIFY2(told_in(*response).contains(QStringLiteral("line 4")), qPrintable(told_in(*response)));
        QCOMPARE(document_.show().loudspeakers[0].response.table.size(), std::size_t{2});
    }
};

HOWLMAP_TEST(TestLoadTables)
#include "test_load_tables.moc"
