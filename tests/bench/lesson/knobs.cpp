// SPDX-License-Identifier: GPL-3.0-or-later
// The lesson window on a projector (1920 x 1080): what its thread works for one turn of a knob, with the figures and
// the paint that follow, and for one frame of the travelling waves. Run with QT_QPA_PLATFORM=offscreen.
#include <QApplication>
#include <algorithm>
#include <cstdio>
#include <ctime>

#include "app/document/document.h"
#include "app/lesson/lesson_state.h"
#include "app/lesson/lesson_window.h"
#include "app/lesson/wave_clock.h"

using namespace howlmap;
using namespace howlmap::app;

namespace {
constexpr int kTimes = 60;

double thread_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

/// Mean and largest, milliseconds.
template <class Work>
void tell(const char* what, Work work) {
    double sum = 0.0, most = 0.0;
    for (int k = 0; k < kTimes; ++k) {
        const double before = thread_ms();
        work(k);
        QCoreApplication::processEvents();
        const double spent = thread_ms() - before;
        sum += spent, most = std::max(most, spent);
    }
    std::printf("%-24s %6.2f ms, at most %6.2f ms\n", what, sum / kTimes, most);
}
}  // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    Document document;
    LessonWindow window(document, {}, nullptr);
    window.resize(1920, 1080);
    window.show();
    QCoreApplication::processEvents();
    LessonState& state = window.state();
    for (const Knob knob : {Knob::hz, Knob::distance, Knob::aim, Knob::level, Knob::latency}) {
        const KnobRange& range = range_of(knob);
        state.set_bench(plain_bench());
        tell(range.key, [&](int k) { state.turn(knob, range.least + (range.most - range.least) * (k + 1) / kTimes); });
    }
    for (const double hz : {100.0, 1000.0, 8000.0}) {
        state.set_bench(plain_bench());
        state.turn(Knob::hz, hz);
        std::printf("%5.0f Hz: ", hz);
        tell("a frame", [&](int) { window.clock().advance(0.033); });
    }
}
