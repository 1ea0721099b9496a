// SPDX-License-Identifier: GPL-3.0-or-later
// Drives the window: at random for an hour (soak), or by a script that a test kills (edit).
//   howlmap_drive soak SECONDS [SEED]        prints events, memory and open files every ten seconds
//   howlmap_drive edit SHOW APPLICATION      retitles the show "step N" twenty times a second until it is killed
#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QMouseEvent>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <cstdio>
#include <random>

#include "app/settings/memory.h"
#include "app/settings/preferences.h"
#include "app/window/action_table.h"
#include "app/window/file_actions.h"
#include "app/window/main_window.h"
#include "tests/support/own_home.h"

namespace howlmap::app {
namespace {

constexpr auto kExample = ":/examples/folk-band-six.howlmap";

long resident_kib() {
    QFile file(QStringLiteral("/proc/self/statm"));
    return file.open(QIODevice::ReadOnly) ? file.readAll().split(' ').value(1).toLong() * 4 : 0;
}

qsizetype open_files() {
    return QDir(QStringLiteral("/proc/self/fd")).entryList(QDir::System | QDir::AllEntries).size();
}

/// A hand without a head: clicks, drags, keys and actions, each a little at random.
class Monkey {
  public:
    Monkey(MainWindow& window, unsigned seed) : window_(window), random_(seed) {
        window_.files().names = {
            [](QWidget*, const QString&) { return QString(); },
            [this](QWidget*, const QString&) { return folder_.filePath(QStringLiteral("s.howlmap")); }};
        // Whatever asks is answered by Esc, from inside its own loop.
        QObject::connect(&answers_, &QTimer::timeout, [] {
            if (auto* popup = QApplication::activePopupWidget()) popup->close();
            if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) dialog->reject();
        });
        answers_.start(100);
    }

    void act() {
        ++events;
        if (!window_.isVisible()) window_.show();
        if (events % 2000 == 1 || window_.document().show().inputs.empty()) return start_over();
        const int choice = whole(0, 99);
        if (choice < 15) return trigger();
        if (choice < 40) return press_keys();
        const auto widgets = visible_widgets();
        if (widgets.empty()) return;
        QWidget* widget = widgets[static_cast<std::size_t>(whole(0, static_cast<int>(widgets.size()) - 1))];
        choice < 75 ? click(widget) : drag(widget);
    }

    long events = 0;

  private:
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    QPoint somewhere(const QWidget* widget) {
        return {whole(0, std::max(0, widget->width() - 1)), whole(0, std::max(0, widget->height() - 1))};
    }
    void start_over() {
        window_.document().set_clean();
        window_.files().open_example(QString::fromLatin1(kExample));
        window_.document().edit(QStringLiteral("Fewer draws"), [](Show& show) { show.tolerance.draws = 20; });
    }
    std::vector<QWidget*> visible_widgets() const {
        std::vector<QWidget*> found;
        for (QWidget* widget : window_.findChildren<QWidget*>())
            if (widget->isVisible() && widget->isEnabled() && widget->width() > 0) found.push_back(widget);
        return found;
    }
    void trigger() {
        const auto actions = window_.actions();
        if (actions.isEmpty()) return;
        QAction* action = actions[whole(0, static_cast<int>(actions.size()) - 1)];
        if (action->objectName() != QStringLiteral("file.quit")) action->trigger();
    }
    void press_keys() {
        static const std::vector<Qt::Key> keys{Qt::Key_Tab,    Qt::Key_Left,   Qt::Key_Right,  Qt::Key_Up,
                                               Qt::Key_Down,   Qt::Key_Space,  Qt::Key_Return, Qt::Key_Escape,
                                               Qt::Key_Delete, Qt::Key_1,      Qt::Key_Minus,  Qt::Key_A,
                                               Qt::Key_Period, Qt::Key_PageUp, Qt::Key_F2};
        QWidget* target = window_.focusWidget() ? window_.focusWidget() : &window_;
        const Qt::KeyboardModifiers with = whole(0, 4) == 0 ? Qt::ShiftModifier : Qt::NoModifier;
        QTest::keyClick(target, keys[static_cast<std::size_t>(whole(0, static_cast<int>(keys.size()) - 1))], with);
    }
    void click(QWidget* widget) {
        const QPointer<QWidget> still = widget;
        const QPoint at = somewhere(widget);
        QTest::mousePress(widget, Qt::LeftButton, {}, at);
        if (still) QTest::mouseRelease(still, Qt::LeftButton, {}, at);
        if (still && whole(0, 5) == 0) QTest::mouseDClick(still, Qt::LeftButton, {}, at);
    }
    /// By events alone: a drag between widgets has a loop of its own that no test can leave.
    void drag(QWidget* widget) {
        const QPointer<QWidget> still = widget;
        const auto send = [&](QEvent::Type type, QPoint at, Qt::MouseButton button, Qt::MouseButtons held) {
            if (!still) return;
            QMouseEvent event(type, at, still->mapToGlobal(at), button, held, Qt::NoModifier);
            QApplication::sendEvent(still, &event);
        };
        if (!widget->parentWidget() || !widget->parentWidget()->inherits("QGraphicsView")) return click(widget);
        const QPoint from = somewhere(widget), to = somewhere(widget);
        send(QEvent::MouseButtonPress, from, Qt::LeftButton, Qt::LeftButton);
        for (int i = 1; i <= 5; ++i) send(QEvent::MouseMove, from + (to - from) * i / 5, Qt::NoButton, Qt::LeftButton);
        send(QEvent::MouseButtonRelease, to, Qt::LeftButton, Qt::NoButton);
    }

    MainWindow& window_;
    std::mt19937 random_;
    QTimer answers_;
    QTemporaryDir folder_;
};

int soak(int seconds, unsigned seed) {
    std::printf("seed %u\n", seed);
    MainWindow window;
    window.resize(1280, 800);
    window.show();
    Monkey monkey(window, seed);
    QElapsedTimer clock, since;
    clock.start();
    since.start();
    const auto report = [&] {
        std::printf("%lld s: %ld events, %ld KiB, %lld open files\n", clock.elapsed() / 1000, monkey.events,
                    resident_kib(), static_cast<long long>(open_files()));
        std::fflush(stdout);
    };
    while (clock.elapsed() < 1000LL * seconds) {
        monkey.act();
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        if (since.elapsed() > 10000) report(), since.restart();
    }
    report();
    window.document().set_clean();
    return 0;
}

int edit_until_killed(const QString& file) {
    Preferences preferences;
    preferences.autosave_rest_s = 1;
    preferences.save();
    MainWindow window;
    window.show();
    window.start({file});
    int step = 0;
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, [&] {
        // Half a second of work, then hands at rest, over and over.
        if (step % 12 == 11 && timer.interval() == 50) return timer.start(1300);
        window.document().edit(QStringLiteral("Step"),
                               [&](Show& show) { show.title = "step " + std::to_string(step + 1); });
        std::printf("%d\n", ++step);
        std::fflush(stdout);
        timer.start(50);
    });
    timer.start(50);
    return QApplication::exec();
}

}  // namespace
}  // namespace howlmap::app

int main(int argc, char** argv) {
    howlmap::app::give_memory_back();
    QApplication application(argc, argv);
    const QStringList words = QCoreApplication::arguments();
    if (words.value(1) == QStringLiteral("edit") && words.size() == 4) {
        QCoreApplication::setApplicationName(words[3]);
        return howlmap::app::edit_until_killed(words[2]);
    }
    const howlmap::test::OwnHome home;  // who edits until killed lives where the killer does
    if (words.value(1) == QStringLiteral("soak") && words.size() >= 3)
        return howlmap::app::soak(words[2].toInt(), words.size() > 3 ? words[3].toUInt() : std::random_device()());
    std::fprintf(stderr, "howlmap_drive soak SECONDS [SEED] | edit SHOW APPLICATION\n");
    return 2;
}
