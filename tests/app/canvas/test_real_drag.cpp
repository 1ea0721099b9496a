// SPDX-License-Identifier: GPL-3.0-or-later
// The program itself on a virtual screen, and a real pointer that drags a part from Parts onto the plan
// and an input to another row of its list. Skipped where
// Xvfb or xdotool is not installed.
#include <QFile>
#include <QTemporaryDir>

#include "app/settings/theme.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/show/find.h"
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

Input line(const char* id, int channel) {
    Input input;
    input.id = id;
    input.name = id;
    input.channel = channel;
    input.transducer = Line{};
    input.has_position = false;
    return input;
}

/// The row of the input list that is marked, somewhere below the plan.
std::optional<QRect> marked_line(const QImage& screen) {
    int run = 0;
    for (int y = 560; y < screen.height(); ++y) {
        int lit = 0;  // the style shades the accent
        for (int x = 10; x < 150; ++x) lit += qBlue(screen.pixel(x, y)) - qRed(screen.pixel(x, y)) > 80 ? 1 : 0;
        if (lit > 60) {
            ++run;
            continue;
        }
        if (run >= 14) return QRect(10, y - run, 140, run);  // the ring around the table is two lines high
        run = 0;
    }
    return std::nullopt;
}

/// The first input is dragged below the third; empty, or where it stopped.
QString drag_an_input(VirtualScreen& screen, const QString& file) {
    Show show;
    for (const auto& [id, channel] : {std::pair{"harp", 1}, {"keys", 2}, {"drum", 3}, {"bass", 4}})
        show.inputs.push_back(line(id, channel));
    if (!save_atomically(file.toStdString(), write_show(show))) return QStringLiteral("no file");
    if (!screen.start_program(file)) return QStringLiteral("no window that has the focus and rests");
    screen.hand(QStringLiteral("key alt+6"));  // the input list
    screen.comes_to_rest();
    for (const char* key : {"ctrl+Home", "shift+Right", "shift+Right"})
        screen.hand(QStringLiteral("key ") + QLatin1StringView(key));
    screen.comes_to_rest();
    const auto row = marked_line(screen.picture());
    if (!row) return QStringLiteral("no row is marked");
    const QPoint from = row->center();
    const QPoint to(from.x(), from.y() + row->height() * 5 / 2 + 2);  // the line below the third
    screen.hand(QStringLiteral("mousemove %1 %2").arg(from.x()).arg(from.y()));
    screen.comes_to_rest();
    screen.hand(QStringLiteral("mousedown 1"));
    for (int step = 1; step <= 12; ++step)
        screen.hand(QStringLiteral("mousemove %1 %2").arg(from.x()).arg(from.y() + (to.y() - from.y()) * step / 12));
    screen.comes_to_rest();
    const QImage before = screen.picture();
    screen.hand(QStringLiteral("mouseup 1"));
    if (!screen.differs(before, QRect(40, row->top() - 4, 300, row->height() * 4), 30) || !screen.comes_to_rest())
        return QStringLiteral("nothing moves");
    screen.hand(QStringLiteral("key ctrl+s"));
    const auto saved = [&] {
        const auto now = load_show(file.toStdString());
        return now && !(now->show == show);
    };
    if (!VirtualScreen::until(saved, 30)) return QStringLiteral("nothing is saved");
    const Show now = load_show(file.toStdString())->show;
    if (now.inputs.size() != 4) return QStringLiteral("an input was lost or doubled");
    const auto channel = [&](const char* id) { return find_by_id(now.inputs, id)->channel; };
    return channel("keys") == 1 && channel("drum") == 2 && channel("harp") == 3 && channel("bass") == 4
               ? QString()
               : QStringLiteral("harp %1, keys %2, drum %3, bass %4")
                     .arg(channel("harp"))
                     .arg(channel("keys"))
                     .arg(channel("drum"))
                     .arg(channel("bass"));
}

/// Tries a few times, as a loaded machine may be slower than the hand; what stopped the last one.
QString tried(QString (*what)(VirtualScreen&, const QString&), const QString& name) {
    QTemporaryDir folder;
    VirtualScreen screen;
    if (!screen.is_there()) return QStringLiteral("no screen");
    QString stopped;
    for (int i = 0; i < kTries; ++i) {
        stopped = what(screen, folder.filePath(QStringLiteral("stage.howlmap")));
        if (stopped.isEmpty()) break;
        screen.keep_picture(QStringLiteral("%1-%2").arg(name).arg(i));
        qWarning("try %d: %s\n%s", i, qPrintable(stopped), qPrintable(screen.story()));
    }
    return stopped;
}

}  // namespace

class TestRealDrag : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void a_part_is_dragged_onto_the_plan();
    void an_input_is_dragged_to_another_row();
};

void TestRealDrag::a_part_is_dragged_onto_the_plan() {
    if (!VirtualScreen::possible()) QSKIP("no Xvfb or xdotool that may be started here");
    if (!QFile::exists(qEnvironmentVariable("HOWLMAP_PROGRAM"))) QSKIP("the program is not built");
    const QString stopped = tried(&drag_a_wedge, QStringLiteral("real-drag"));
    QVERIFY2(stopped.isEmpty(), qPrintable(stopped));
}

void TestRealDrag::an_input_is_dragged_to_another_row() {
    if (!VirtualScreen::possible()) QSKIP("no Xvfb or xdotool that may be started here");
    if (!QFile::exists(qEnvironmentVariable("HOWLMAP_PROGRAM"))) QSKIP("the program is not built");
    const QString stopped = tried(&drag_an_input, QStringLiteral("row-drag"));
    QVERIFY2(stopped.isEmpty(), qPrintable(stopped));
}

HOWLMAP_TEST(TestRealDrag)

}  // namespace howlmap::app

#include "test_real_drag.moc"
