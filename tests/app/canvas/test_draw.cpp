// SPDX-License-Identifier: GPL-3.0-or-later
// The example with sixteen inputs, drawn from an empty stage by mouse and keyboard alone; the plan as a PDF; saved,
// and opened again with the same bytes.
#include <QFile>
#include <QTemporaryDir>

#include "app/document/autosave.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "tests/app/canvas/drawing.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

Show example() {
    QFile file(QStringLiteral(":/examples/sixteen-inputs.howlmap"));
    if (!file.open(QIODevice::ReadOnly)) qFatal("the example is not there");
    return read_show(file.readAll().toStdString())->show;
}

QByteArray bytes_of(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace

class TestDraw : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void the_sixteen_inputs_are_drawn_by_hand();
};

#define HOWLMAP_STEP(step)                      \
    do {                                        \
        step;                                   \
        if (QTest::currentTestFailed()) return; \
    } while (false)

void TestDraw::the_sixteen_inputs_are_drawn_by_hand() {
    QDir(Autosave::folder()).removeRecursively();
    QTemporaryDir folder;
    const Show wanted = example();
    MainWindow window;
    window.resize(1920, 1080);
    window.show();
    Drawing drawing(window, wanted);
    HOWLMAP_STEP(drawing.stage());
    HOWLMAP_STEP(drawing.risers());
    HOWLMAP_STEP(drawing.players());
    HOWLMAP_STEP(drawing.loudspeakers());
    HOWLMAP_STEP(drawing.inputs());
    HOWLMAP_STEP(drawing.the_rest());
    HOWLMAP_STEP(drawing.mixes());
    HOWLMAP_STEP(drawing.sends());
    HOWLMAP_STEP(drawing.input_list());
    const QString drawn = QString::fromStdString(write_show(drawing.renamed()));
    const QStringList have = drawn.split(u'\n'), want = QString::fromStdString(write_show(wanted)).split(u'\n');
    for (qsizetype i = 0; i < std::min(have.size(), want.size()); ++i)
        QVERIFY2(have[i] == want[i],
                 qPrintable(QStringLiteral("line %1: %2 instead of %3").arg(i).arg(have[i], want[i])));
    QCOMPARE(have.size(), want.size());

    Hands& hands = drawing.hands();
    const QString file = folder.filePath(QStringLiteral("drawn.howlmap")),
                  pdf = folder.filePath(QStringLiteral("p.pdf")), printed = folder.filePath(QStringLiteral("q.pdf"));
    hands.with_file_name([&] { hands.press(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E)); }, pdf);
    QTRY_VERIFY(bytes_of(pdf).startsWith("%PDF"));
    hands.with_file_name([&] { hands.press(QKeySequence::Save); }, file);
    QVERIFY(!window.document().modified());
    const QByteArray saved = bytes_of(file);
    QCOMPARE(saved.toStdString(), write_show(window.document().show()));
    hands.print_to_file([&] { hands.press(QKeySequence::Print); }, printed);
    QVERIFY(bytes_of(printed).startsWith("%PDF"));
    hands.press(QKeySequence::New);
    QVERIFY(window.document().show().inputs.empty());
    hands.with_file_name([&] { hands.press(QKeySequence::Open); }, file);
    QCOMPARE(window.document().path(), file);
    QCOMPARE(write_show(window.document().show()), saved.toStdString());
    hands.press(QKeySequence::New);
    hands.drop_file(file);
    QCOMPARE(window.document().path(), file);
    QCOMPARE(write_show(window.document().show()), saved.toStdString());
}

HOWLMAP_TEST(TestDraw)

}  // namespace howlmap::app

#include "test_draw.moc"
