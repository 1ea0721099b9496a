// SPDX-License-Identifier: GPL-3.0-or-later
// Taps with known modes: what is put in must come out.
#include <cmath>
#include <complex>
#include <cstdio>

#include "core/audio/decimate.h"
#include "core/audio/esprit.h"
#include "core/audio/tap.h"
#include "core/audio/tap_onsets.h"
#include "core/units/level.h"
#include "tests/support/registry.h"
#include "tests/support/sounds.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {

struct Known {
    double hz, q, level_db;
};

// Taps of different force, all modes at random phases; noise under all.
Sound tapped(const std::vector<Known>& modes, const std::vector<double>& times, double rate, double noise_db,
             std::uint64_t seed) {
    Dice dice(seed);
    Sound out = white_noise(dice, times.back() + 1.0, rate);
    scale_to_rms(out, db_to_ratio(noise_db));
    for (const double at : times) {
        const double force = dice.uniform(0.4, 1.0);
        for (const Known& m : modes) {
            const double w = 2.0 * M_PI * m.hz, decay = w / (2.0 * m.q), damped = std::sqrt(w * w - decay * decay);
            const double phase = dice.uniform(0.0, 2.0 * M_PI), size = force * 0.3 * db_to_ratio(m.level_db);
            for (auto i = static_cast<std::size_t>(at * rate); i < out.size(); ++i) {
                const double t = static_cast<double>(i) / rate - at;
                if (t >= 0.0) out[i] += static_cast<float>(size * std::exp(-decay * t) * std::sin(damped * t + phase));
            }
        }
    }
    return out;
}

const std::vector<double> kTimes = {0.3, 0.9, 1.4, 2.1};

// Order of magnitude of the signature modes of a violin, a cello, a guitar and a double bass: C. Gough 2016, T. Rossing
// 2010 (ch. 14), O. Christensen 1980, A. Askenfelt 1982; levels made up.
const std::vector<Known> kViolin = {{275, 15, 0}, {405, 25, -12}, {470, 28, -3}, {540, 30, -1}, {1050, 35, -15}};
const std::vector<Known> kCello = {{97, 17, 0}, {155, 25, -4}, {170, 30, -12}, {203, 28, -9}, {219, 30, -6}};
const std::vector<Known> kGuitar = {{100, 12, 0}, {195, 25, -3}, {370, 35, -10}};
const std::vector<Known> kBass = {{62, 15, 0}, {98, 22, -3}, {150, 25, -10}};

}  // namespace

class TapTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void onsets() {
        const Sound sound = tapped(kViolin, kTimes, 48000, -90, 1);
        const auto taps = find_taps(sound, 48000);
        QCOMPARE(taps.size(), kTimes.size());
        for (std::size_t i = 0; i < taps.size(); ++i)
            QVERIFY(std::abs(static_cast<double>(taps[i]) / 48000 - kTimes[i]) < 0.001);
    }

    void knownModes_data() {
        QTest::addColumn<int>("body");
        QTest::addColumn<double>("rate");
        QTest::addColumn<double>("noise_db");
        const char* names[] = {"violin", "cello", "guitar", "double bass"};
        for (int body = 0; body < 4; ++body)
            for (const double noise : {-90.0, -60.0})
                QTest::addRow("%s, noise %g dB", names[body], noise) << body << 48000.0 << noise;
        QTest::addRow("violin at 8 kHz") << 0 << 8000.0 << -70.0;
        QTest::addRow("cello at 192 kHz") << 1 << 192000.0 << -70.0;
        QTest::addRow("guitar at 44.1 kHz") << 2 << 44100.0 << -70.0;
    }
    void knownModes() {
        QFETCH(int, body);
        QFETCH(double, rate);
        QFETCH(double, noise_db);
        const std::vector<Known> modes = std::vector{kViolin, kCello, kGuitar, kBass}[static_cast<std::size_t>(body)];
        const auto found = tap_modes(tapped(modes, kTimes, rate, noise_db, 7), rate);
        QVERIFY2(found.has_value(), found ? "" : found.error().c_str());
        QCOMPARE(found->taps, 4);
        for (const TapMode& m : found->modes) std::printf("  %7.2f Hz  Q %5.1f  %6.2f dB\n", m.hz, m.q, m.level_db);
        for (const Known& known : modes) {
            const auto near =
                std::min_element(found->modes.begin(), found->modes.end(), [&](const TapMode& a, const TapMode& b) {
                    return std::abs(a.hz - known.hz) < std::abs(b.hz - known.hz);
                });
            const QString what =
                QString("%1 Hz Q %2 %3 dB for %4").arg(near->hz).arg(near->q).arg(near->level_db).arg(known.hz);
            QVERIFY2(std::abs(near->hz / known.hz - 1.0) < 0.005, qPrintable(what));
            QVERIFY2(std::abs(near->q / known.q - 1.0) < 0.1, qPrintable(what));
            QVERIFY2(std::abs(near->level_db - known.level_db) < 1.5, qPrintable(what));
        }
        QVERIFY(found->modes.front().level_db == 0.0);
        QVERIFY(found->modes.size() <= modes.size() + 1);  // at most one that is not there
    }

    void gainsForAPickup() {
        // A body that answers with equal peaks has starting amplitudes in proportion to hz / q.
        const std::vector<Known> flat = {{200, 20, 0}, {400, 20, 6.02}, {400 * 1.5, 20, 9.54}};
        const auto found = tap_modes(tapped(flat, kTimes, 48000, -90, 3), 48000);
        QVERIFY(found.has_value());
        const auto modes = body_modes(*found);
        QCOMPARE(modes.size(), flat.size());
        for (std::size_t i = 0; i < modes.size(); ++i) {
            QVERIFY(std::abs(modes[i].hz / flat[i].hz - 1.0) < 0.005);
            QVERIFY(std::abs(modes[i].gain_db) < 1.0);
        }
    }

    void refusals() {
        QVERIFY(!tap_modes(silence(1.0, 48000), 48000).has_value());
        Dice dice(4);
        QVERIFY(!tap_modes(white_noise(dice, 1.0, 48000), 48000).has_value());
        std::stop_source stop;
        stop.request_stop();
        const auto cancelled = tap_modes(tapped(kGuitar, kTimes, 48000, -90, 3), 48000, {stop.get_token(), {}});
        QVERIFY(!cancelled && cancelled.error() == "cancelled");
    }

    void exactWithoutNoise() {
        std::vector<double> x(400);
        const std::complex<double> z1 = std::exp(std::complex<double>(-0.01, 0.3)),
                                   z2 = std::exp(std::complex<double>(-0.02, 0.35));
        for (std::size_t n = 0; n < x.size(); ++n)
            x[n] = 2.0 * (std::pow(z1, static_cast<double>(n)) +
                          std::complex<double>(0, 0.5) * std::pow(z2, static_cast<double>(n)))
                             .real();
        const auto found = fit_decays({x}, 0.0);
        QCOMPARE(found.size(), std::size_t{2});
        const std::size_t first = std::abs(found[0].pole - z1) < std::abs(found[1].pole - z1) ? 0 : 1;
        QVERIFY(std::abs(found[first].pole - z1) < 1e-7);
        QVERIFY(std::abs(found[1 - first].pole - z2) < 1e-7);
        QVERIFY(std::abs(std::abs(found[1 - first].amplitudes[0]) - 0.5) < 1e-6);
    }

    void decimatorPassesAndStops() {
        const Decimator decimator(8);
        for (const double f : {0.01, 0.2, 0.39})
            QVERIFY(std::abs(std::abs(decimator.gain(std::polar(1.0, 2 * M_PI * f / 8))) - 1.0) < 1e-3);
        for (const double f : {0.61, 1.0, 2.7})
            QVERIFY(std::abs(decimator.gain(std::polar(1.0, 2 * M_PI * f / 8))) < 10e-4);
    }
};

HOWLMAP_TEST(TapTest)
#include "tap_test.moc"
