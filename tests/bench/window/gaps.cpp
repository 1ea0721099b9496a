// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/window/gaps.h"

#include <QElapsedTimer>
#include <QEventLoop>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <functional>

#include "app/document/cure_service.h"
#include "app/window/file_actions.h"
#include "app/window/main_window.h"

using namespace howlmap;
using namespace howlmap::app;

namespace {
double ms(const QElapsedTimer& clock) { return 1e-6 * static_cast<double>(clock.nsecsElapsed()); }

/// A timer that wants to beat every five milliseconds of the window's thread, and the longest it had to wait.
class Heartbeat {
  public:
    Heartbeat() {
        timer_.setTimerType(Qt::PreciseTimer);
        QObject::connect(&timer_, &QTimer::timeout, [this] { beat(); });
        since_.start();
        timer_.start(5);
    }
    double longest_ms() {
        beat();
        return longest_ms_;
    }

  private:
    void beat() {
        longest_ms_ = std::max(longest_ms_, ms(since_));
        since_.restart();
    }
    QTimer timer_;
    QElapsedTimer since_;
    double longest_ms_ = 0.0;
};

void run_until(const std::function<bool()>& over, int most_ms) {
    QEventLoop loop;
    QTimer look;
    QElapsedTimer clock;
    clock.start();
    QObject::connect(&look, &QTimer::timeout, [&] {
        if (over() || clock.elapsed() > most_ms) loop.quit();
    });
    look.start(1);
    loop.exec();
}

void print_gap(const char* what, double took_ms, double gap_ms) {
    std::printf("%-34s took %8.1f ms; longest time without an answer %6.1f ms\n", what, took_ms, gap_ms);
    std::fflush(stdout);
}

void during(const char* what, const std::function<void()>& begin, const std::function<bool()>& over) {
    Heartbeat heart;
    QElapsedTimer clock;
    clock.start();
    begin();
    run_until(over, 60000);
    print_gap(what, ms(clock), heart.longest_ms());
}

void touch(Document& document, double db) {
    document.edit(QStringLiteral("Louder"), [db](Show& show) { show.mixes.front().sends.front().level_db += db; });
}
}  // namespace

void gaps(MainWindow& window) {
    const auto open = [&] { window.files().open_example(QStringLiteral(":/examples/sixteen-inputs.howlmap")); };
    const auto counted = [&] { return window.analysis().counted() && !window.analysis().busy(); };
    during("open 16 inputs, draws", open, counted);
    during(
        "a louder send, draws", [&] { touch(window.document(), -0.5); }, counted);

    CureService cures(window.document(), window.analysis());
    during(
        "cures and plan", [&] { cures.set_wanted(true); }, [&] { return cures.report() != nullptr; });
    touch(window.document(), 0.5);
    run_until([&] { return counted() && cures.busy(); }, 60000);
    run_until([&] { return !cures.cures().empty(); }, 60000);
    during(
        "an edit amid the search", [&] { touch(window.document(), -0.5); }, [&] { return !cures.busy(); });
    cures.set_wanted(false);
    window.document().set_clean();
}
