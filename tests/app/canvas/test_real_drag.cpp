// SPDX-License-Identifier: GPL-3.0-or-later
// The program itself on a virtual screen, and a real pointer that drags a part from Parts onto the plan. Skipped where
// Xvfb or xdotool is not installed.
#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "core/file/read.h"
#include "core/file/write.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// A screen of its own, with the program on it.
class Screen {
  public:
    explicit Screen(const QString& show) {
        screen_.start(QStringLiteral("Xvfb"),
                      {QStringLiteral("-displayfd"), QStringLiteral("1"), QStringLiteral("-screen"),
                       QStringLiteral("0"), QStringLiteral("1280x800x24")});
        if (!screen_.waitForReadyRead(20000)) return;
        QProcessEnvironment world = QProcessEnvironment::systemEnvironment();
        world.insert(QStringLiteral("DISPLAY"), u':' + QString::fromLatin1(screen_.readLine().trimmed()));
        world.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("xcb"));
        world.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
        for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
            world.insert(QLatin1StringView(name), home_.filePath(QLatin1StringView(name)));
        world_ = world;
        program_.setProcessEnvironment(world_);
        program_.start(qEnvironmentVariable("HOWLMAP_PROGRAM"), {show});
    }
    ~Screen() {
        program_.kill();
        program_.waitForFinished();
        screen_.terminate();
        screen_.waitForFinished();
    }
    /// What xdotool says; its words are those of its manual.
    QString hand(const QString& words) {
        QProcess tool;
        tool.setProcessEnvironment(world_);
        tool.start(QStringLiteral("xdotool"), words.split(u' '));
        tool.waitForFinished(20000);
        return QString::fromUtf8(tool.readAllStandardOutput()).trimmed();
    }
    bool window_is_there() {
        window_ = hand(QStringLiteral("search --onlyvisible --name Howlmap")).section(u'\n', 0, 0);
        return !window_.isEmpty();
    }
    const QString& window() const { return window_; }

  private:
    QTemporaryDir home_;
    QProcess screen_, program_;
    QProcessEnvironment world_;
    QString window_;
};

}  // namespace

class TestRealDrag : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void a_part_is_dragged_onto_the_plan();
};

void TestRealDrag::a_part_is_dragged_onto_the_plan() {
    for (const char* tool : {"Xvfb", "xdotool"})
        if (QStandardPaths::findExecutable(QLatin1StringView(tool)).isEmpty()) QSKIP("no Xvfb or xdotool here");
    if (!QFile::exists(qEnvironmentVariable("HOWLMAP_PROGRAM"))) QSKIP("the program is not built");
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("stage.howlmap"));
    QVERIFY(save_atomically(file.toStdString(), write_show(Show{})));
    Screen screen(file);
    QTRY_VERIFY_WITH_TIMEOUT(screen.window_is_there(), 30000);
    screen.hand(QStringLiteral("windowmove --sync %1 0 0 windowfocus --sync %1").arg(screen.window()));
    QTest::qWait(2000);
    screen.hand(QStringLiteral("key alt+1 sleep 0.3 type wedge"));  // Alt+1 leads to the search field
    QTest::qWait(500);
    const auto placed = [&] {
        const auto show = load_show(file.toStdString());
        return show ? show->show.loudspeakers.size() : 0;
    };
    // The list begins below tool bar, tabs and search field; its first row is the title of the group.
    for (int y = 150; y < 330 && placed() == 0; y += 15) {
        screen.hand(QStringLiteral("mousemove 90 %1 sleep 0.1 mousedown 1 sleep 0.1 mousemove 105 %2 sleep 0.1 "
                                   "mousemove 300 300 sleep 0.1 mousemove 540 330 sleep 0.2 mousemove 545 335 sleep "
                                   "0.2 mouseup 1 sleep 0.3 key ctrl+s")
                        .arg(y)
                        .arg(y + 8));
        QTest::qWait(800);
    }
    QCOMPARE(placed(), std::size_t{1});
    const Show show = load_show(file.toStdString())->show;
    QVERIFY(!(show.loudspeakers.front().position.xy() == Vec2{}));
}

HOWLMAP_TEST(TestRealDrag)

}  // namespace howlmap::app

#include "test_real_drag.moc"
