// SPDX-License-Identifier: GPL-3.0-or-later
// Drives the window: at random for an hour (soak), or by a script that a test kills (edit).
//   howlmap_drive soak SECONDS [SEED]        prints events, memory and open files every ten seconds; fails if it grows
//   howlmap_drive edit SHOW APPLICATION      retitles the show "step N" twenty times a second until it is killed
#include <QApplication>
#include <QElapsedTimer>
#include <QPixmapCache>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <random>
#include <utility>
#include <vector>

#include "app/canvas/plan_view.h"
#include "app/settings/memory.h"
#include "app/settings/preferences.h"
#include "app/window/main_window.h"
#include "tests/soak/monkey.h"
#include "tests/support/own_home.h"
#include "tests/support/process_figures.h"

namespace howlmap::app {
namespace {

constexpr int kReportMs = 10'000, kDrivenMs = 30'000, kMostRestMs = 60'000;
constexpr std::size_t kFewestRests = 30;
constexpr double kMostGrowth = 1.1;

/// Lets the monkey act, and now and then rest: then the example is opened as the first time, and when its figures are
/// there and the window has handed back what is free, the process should be as large as at the rest before.
class Soak {
  public:
    Soak(int seconds, unsigned seed)
        : seconds_(seconds), monkey_(window_, folder_.filePath(QStringLiteral("s.howlmap")), seed) {
        window_.resize(1280, 800);
        window_.show();
        clock_.start();
        report_.start();
        driven_.start();
        QObject::connect(&window_.memory(), &MemoryKeeper::handed_back, [this] { handed_back_ = true; });
        QObject::connect(&hand_, &QTimer::timeout, [this] { step(); });
        hand_.start(0);
        QApplication::setQuitOnLastWindowClosed(false);
    }
    ~Soak() { window_.document().set_clean(); }

    /// Whether it was as large in the last third of its rests as in the second. By the least of each: which panels,
    /// lessons and helps lie open makes a difference, and the monkey opens and closes them.
    bool stayed_as_it_was() const {
        std::printf("least memory at rest, second third to last:\n");
        const bool live = stayed("live", live_), resident = stayed("resident", resident_);
        return live && resident;
    }

  private:
    void step() {
        if (std::exchange(acting_, true)) return;  // inside the loop of a dialog that an action opened
        driven_.hasExpired(kDrivenMs) ? rest() : monkey_.act();
        if (report_.hasExpired(kReportMs)) report("");
        acting_ = false;
        if (!clock_.hasExpired(1000LL * seconds_)) return;
        hand_.stop();
        report("");
        QCoreApplication::exit(0);  // not quit(), which asks the windows
    }
    void rest() {
        monkey_.start_over();
        window_.plan().set_overlay({});  // what a map keeps depends on which one was on
        QPixmapCache::clear();           // it fills up to its limit
        handed_back_ = false;
        const bool calm = QTest::qWaitFor([&] { return handed_back_; }, kMostRestMs);
        live_.push_back(test::live_kib());
        resident_.push_back(test::resident_kib());
        report(calm ? ", at rest" : ", still computing");
        driven_.restart();
    }
    void report(const char* how) {
        std::printf("%lld s: %ld events, %ld KiB live, %ld KiB resident, %ld open files%s\n", clock_.elapsed() / 1000,
                    monkey_.events(), test::live_kib(), test::resident_kib(), test::open_files(), how);
        std::fflush(stdout);
        report_.restart();
    }
    static bool stayed(const char* what, const std::vector<long>& kib) {
        if (kib.size() < kFewestRests) return true;
        const auto third = static_cast<std::ptrdiff_t>(kib.size() / 3);
        const long before = *std::min_element(kib.end() - 2 * third, kib.end() - third);
        const long after = *std::min_element(kib.end() - third, kib.end());
        std::printf("  %s %ld to %ld KiB\n", what, before, after);
        return static_cast<double>(after) <= kMostGrowth * static_cast<double>(before);
    }
    int seconds_;
    QTemporaryDir folder_;
    MainWindow window_;
    Monkey monkey_;
    QTimer hand_;
    QElapsedTimer clock_, report_, driven_;
    std::vector<long> live_, resident_;
    bool acting_ = false, handed_back_ = false;
};

int soak(int seconds, unsigned seed) {
    std::printf("seed %u\n", seed);
    const Soak soak(seconds, seed);
    const int status = QApplication::exec();
    return soak.stayed_as_it_was() ? status : 1;
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
