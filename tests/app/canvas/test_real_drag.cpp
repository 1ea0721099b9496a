// SPDX-License-Identifier: GPL-3.0-or-later
// The program itself on a virtual screen, and a real pointer that drags a part from Parts onto the plan. Skipped where
// Xvfb or xdotool is not installed.
#include <QFile>
#include <QTemporaryDir>

#include "app/settings/theme.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "tests/app/canvas/virtual_screen.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {
constexpr int kTries = 3;
constexpr int kLit = 25;                ///< pixels of the accent in a line of a marked row, between its letters too
const QRect kParts(0, 60, 230, 500);    ///< Parts is among this, and nothing else changes there
const QRect kPlan(330, 200, 420, 220);  ///< well inside the plan
constexpr QPoint kGoal(560, 330);

/// The middle of the row of Parts that is marked: a run of the accent that is as high as a row.
std::optional<QPoint> marked_row(const QImage& screen) {
    const QRgb accent = light_palette().color(QPalette::Highlight).rgb() | 0xff000000;
    int run = 0;
    for (int y = kParts.top(); y <= kParts.bottom(); ++y) {
        int lit = 0;
        for (int x = kParts.left(); x <= kParts.right(); ++x) lit += screen.pixel(x, y) == accent ? 1 : 0;
        if (lit > kLit && ++run >= 18) return QPoint(90, y - run / 2);
        if (lit <= kLit) run = 0;
    }
    return std::nullopt;
}

/// One try, from a first start with an empty stage to the saved file; empty, or where it stopped.
QString drag_a_wedge(VirtualScreen& screen, const QString& file) {
    if (!save_atomically(file.toStdString(), write_show(Show{}))) return QStringLiteral("no file");
    if (!screen.start_program(file)) return QStringLiteral("no window that has the focus and rests");

    const QImage all_parts = screen.picture();
    screen.hand(QStringLiteral("key alt+1"));  // leads to the search field
    screen.hand(QStringLiteral("type --delay 80 wedge"));
    if (!screen.differs(all_parts, kParts, 2000) || !screen.comes_to_rest())
        return QStringLiteral("the search changes nothing in Parts");
    const auto row = marked_row(screen.picture());
    if (!row) return QStringLiteral("no part is marked");

    screen.hand(QStringLiteral("mousemove %1 %2").arg(row->x()).arg(row->y()));
    screen.comes_to_rest();
    screen.hand(QStringLiteral("mousedown 1"));
    for (const int step : {4, 12, 30, 60})
        screen.hand(QStringLiteral("mousemove %1 %2").arg(row->x() + step).arg(row->y() + step / 4));
    const QImage before = screen.picture();
    for (int step = 1; step <= 10; ++step) {
        const QPoint at = *row + (kGoal - *row) * step / 10;
        screen.hand(QStringLiteral("mousemove %1 %2").arg(at.x()).arg(at.y()));
    }
    // The part hangs at the pointer: more than the pointer alone.
    if (!screen.differs(before, QRect(kGoal - QPoint(150, 40), QSize(300, 80)), 600) || !screen.comes_to_rest())
        return QStringLiteral("nothing hangs at the pointer");
    screen.hand(QStringLiteral("mouseup 1"));
    if (!screen.differs(before, kPlan, 100) || !screen.comes_to_rest()) return QStringLiteral("nothing lands");

    screen.hand(QStringLiteral("key ctrl+s"));
    const auto saved = [&] {
        const auto show = load_show(file.toStdString());
        return show && !(show->show == Show{});
    };
    if (!VirtualScreen::until(saved, 30)) return QStringLiteral("nothing is saved");
    const Show show = load_show(file.toStdString())->show;
    if (show.loudspeakers.size() != 1) return QStringLiteral("what is saved is not the wedge");
    return show.loudspeakers.front().position.xy() == Vec2{} ? QStringLiteral("it lies where nobody put it")
                                                             : QString();
}

}  // namespace

class TestRealDrag : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void a_part_is_dragged_onto_the_plan();
};

void TestRealDrag::a_part_is_dragged_onto_the_plan() {
    if (!VirtualScreen::possible()) QSKIP("no Xvfb or xdotool here");
    if (!QFile::exists(qEnvironmentVariable("HOWLMAP_PROGRAM"))) QSKIP("the program is not built");
    QTemporaryDir folder;
    VirtualScreen screen;
    QVERIFY(screen.is_there());
    QString stopped;
    for (int i = 0; i < kTries; ++i) {
        stopped = drag_a_wedge(screen, folder.filePath(QStringLiteral("stage.howlmap")));
        if (stopped.isEmpty()) return;
        screen.keep_picture(QStringLiteral("real-drag-%1").arg(i));
        qWarning("try %d: %s\n%s", i, qPrintable(stopped), qPrintable(screen.story()));
    }
    QFAIL(qPrintable(stopped));
}

HOWLMAP_TEST(TestRealDrag)

}  // namespace howlmap::app

#include "test_real_drag.moc"
