// SPDX-License-Identifier: GPL-3.0-or-later
// The window under a moving hand: time from a mouse move to the end of the paint it caused, and how often the map is
// drawn anew; with the argument `map` the latter alone, with `gaps` what gaps.h says. Run with
// QT_QPA_PLATFORM=offscreen; the window system's own delay is left out. Beside it what the thread of the window itself
// works, which does not depend on who else uses the machine.
#include <QApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>
#include <QMouseEvent>
#include <QStandardPaths>
#include <QTimer>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>

#include "app/canvas/overlay/plan_layers.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/settings/memory.h"
#include "app/window/main_window.h"
#include "core/file/read.h"
#include "core/show/find.h"
#include "tests/bench/window/gaps.h"

using namespace howlmap;
using namespace howlmap::app;

namespace {

Show sixteen_inputs() {
    QFile file(QStringLiteral(":/examples/sixteen-inputs.howlmap"));
    if (!file.open(QIODevice::ReadOnly)) qFatal("no example");
    return read_show(file.readAll().toStdString())->show;
}

template <class Item>
void fill(std::vector<Item>& list, std::size_t count, const char* id) {
    const std::vector<Item> models = list;
    while (list.size() < count) {
        Item item = models[list.size() % models.size()];
        const auto n = static_cast<double>(list.size());
        item.id = id + std::to_string(list.size());
        item.position.x = -18.0 + std::fmod(n * 1.37, 36.0);
        item.position.y = 0.5 + std::fmod(n * 0.61, 22.0);
        list.push_back(item);
    }
}

/// The example with its objects set down again and again on a wide stage: 1,000 of them.
Show thousand_objects() {
    Show show = sixteen_inputs();
    show.stage.outline = {{-20, 0}, {20, 0}, {20, 24}, {-20, 24}};
    show.stage.surfaces.back->at = 25.0;
    std::erase_if(show.inputs, [](const Input& input) { return is_line(input); });
    for (Mix& mix : show.mixes)
        std::erase_if(mix.sends, [&](const Send& send) { return !find_by_id(show.inputs, send.input); });
    fill(show.loudspeakers, 30, "l");
    fill(show.inputs, 60, "i");
    fill(show.performers, 40, "p");
    fill(show.backline, 360, "b");
    fill(show.listeners, 10, "r");
    fill(show.marks, 498, "m");
    return show;
}

/// Notes when the plan was painted.
class Painted : public QObject {
  public:
    explicit Painted(QWidget* widget) { widget->installEventFilter(this); }
    bool seen = false;

  protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Paint) seen = true;
        return false;
    }
};

void send(QWidget* port, QEvent::Type type, QPoint at) {
    const bool move = type == QEvent::MouseMove;
    QMouseEvent event(type, at, port->mapToGlobal(at), move ? Qt::NoButton : Qt::LeftButton,
                      type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton, {});
    QCoreApplication::sendEvent(port, &event);
}

double thread_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

struct Times {
    std::vector<double> wall, work;  ///< milliseconds
};

/// Lets the event loop run, asleep while there is nothing to do: one that spins would take a core from what computes.
void rest(int ms) {
    QEventLoop loop;
    QTimer::singleShot(std::max(0, ms), Qt::PreciseTimer, &loop, &QEventLoop::quit);
    loop.exec();
}

/// Drags an object in a circle; from each move to the end of its paint, where it moves the object at all. Moves come
/// `a_second` times a second, later only where the one before is not painted yet.
Times drag(PlanView& plan, const QString& id, int moves, double a_second) {
    QWidget* port = plan.viewport();
    Painted painted(port);
    QTimer awake;  // so that a move which paints nothing is not waited for in vain
    awake.start(100);
    const QPointF start = plan.plan_scene().look(id).at;
    const QPoint from = plan.viewport_point({start.x(), -start.y()});
    plan.selection().set({id});
    send(port, QEvent::MouseButtonPress, from);
    Times times;
    QElapsedTimer since_start;
    since_start.start();
    for (int i = 0; i < moves; ++i) {
        const QPoint at =
            from + QPoint(static_cast<int>(60 * std::sin(i * 0.1)), static_cast<int>(40 - 40 * std::cos(i * 0.1)));
        QElapsedTimer clock;
        clock.start();
        const double before = thread_ms();
        painted.seen = false;
        const auto revision = plan.document().revision();
        send(port, QEvent::MouseMove, at + QPoint(i % 2, 4));
        if (plan.document().revision() != revision) {
            while (!painted.seen && clock.elapsed() < 1000)
                QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
            QCoreApplication::processEvents();
            times.wall.push_back(1e-6 * static_cast<double>(clock.nsecsElapsed()));
            times.work.push_back(thread_ms() - before);
        }
        rest(static_cast<int>(
            std::lround(1e3 * (i + 1) / a_second - 1e-6 * static_cast<double>(since_start.nsecsElapsed()))));
    }
    send(port, QEvent::MouseButtonRelease, from);
    return times;
}

double at(std::vector<double> times, double part) {
    std::sort(times.begin(), times.end());
    return times[static_cast<std::size_t>(part * (static_cast<double>(times.size()) - 1))];
}

void print(const char* what, const Times& times) {
    std::printf(
        "%-34s move to paint: median %6.2f ms   95 %% %6.2f ms   worst %6.2f ms;   own work: median %6.2f ms   95 %% "
        "%6.2f ms\n",
        what, at(times.wall, 0.5), at(times.wall, 0.95), at(times.wall, 1.0), at(times.work, 0.5),
        at(times.work, 0.95));
    std::fflush(stdout);
}

/// Waits until the results of opening a show are there.
void settle(MainWindow& window, int most_ms) {
    QElapsedTimer clock;
    clock.start();
    while (clock.elapsed() < most_ms && !window.analysis().result())
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    for (int i = 0; i < 20; ++i) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
}

void thousand(MainWindow& window) {
    window.document().replace(thousand_objects(), {}, false);
    settle(window, 20000);
    print("1,000 objects, a mark", drag(window.plan(), QStringLiteral("m200"), 60, 50));
    print("1,000 objects, a microphone", drag(window.plan(), QStringLiteral("i40"), 60, 50));
    print("1,000 objects, a wedge", drag(window.plan(), QStringLiteral("wedge-1"), 60, 50));
}

void map_under_the_hand(MainWindow& window) {
    constexpr int kMoves = 240;
    window.document().replace(sixteen_inputs(), {}, false);
    settle(window, 20000);
    print("16 inputs, a wedge", drag(window.plan(), QStringLiteral("wedge-1"), kMoves, 60));
    OverlayChoice choice;
    choice.kind = OverlayKind::feedback;
    choice.subject = QStringLiteral("voice-1");
    window.plan().set_overlay(choice);
    rest(3000);  // the first map makes all tables
    int pictures = 0, margins = 0, verdicts = 0;
    const auto count = QObject::connect(&window.plan().layers(), &PlanLayers::map_changed, [&] { ++pictures; });
    const auto told = QObject::connect(&window.analysis(), &AnalysisService::updated, [&] { ++verdicts; });
    const auto moved = QObject::connect(&window.analysis(), &AnalysisService::margin_moved, [&] { ++margins; });
    QElapsedTimer clock;
    clock.start();
    const Times times = drag(window.plan(), QStringLiteral("wedge-1"), kMoves, 60);
    const double seconds = 1e-3 * static_cast<double>(clock.elapsed());
    QObject::disconnect(count);
    QObject::disconnect(told);
    QObject::disconnect(moved);
    print("16 inputs, a wedge, feedback map", times);
    const double steps = static_cast<double>(times.wall.size());  // snapping swallows some moves
    std::printf(
        "%-34s %.1f a second, margins as drawn %.1f, all rings %.1f, at %.1f steps of it (%.1f moves) a second\n",
        "maps while it moves", pictures / seconds, margins / seconds, verdicts / seconds, steps / seconds,
        kMoves / seconds);
}
}  // namespace

int main(int argc, char** argv) {
    give_memory_back();
    qputenv("QT_QPA_UPDATE_IDLE_TIME", "0");
    QApplication app(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    MainWindow window;
    window.resize(1600, 1000);
    window.show();
    const QByteArray what = argc < 2 ? "" : argv[1];
    if (what.isEmpty()) thousand(window);
    if (what != "gaps") map_under_the_hand(window);
    if (what != "map") gaps(window);
    window.document().set_clean();
    return 0;
}
