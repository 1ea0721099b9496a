// SPDX-License-Identifier: GPL-3.0-or-later
// Howls of known frequency and growth, in noise and music, and sounds that must not be taken for one.
#include <tbb/parallel_for.h>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <cstdio>

#include "core/audio/ring_detector.h"
#include "core/units/level.h"
#include "tests/support/registry.h"
#include "tests/support/sounds.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {

constexpr int kRecordings = 200;
constexpr double kRates[] = {8000, 16000, 22050, 44100, 48000};

std::vector<Howl> howls_in(const Sound& sound, double rate, std::size_t block = 4096) {
    RingDetector detector(rate);
    const std::span<const float> all(sound);
    for (std::size_t at = 0; at < all.size(); at += block)
        detector.push(all.subspan(at, std::min(block, all.size() - at)));
    detector.finish();
    return detector.take();
}

// Level of the held howl in the microphone: the loop run on faint noise until it is held.
double held_level(Dice& dice, const HowlingLoop& loop, double rate) {
    Sound noise = white_noise(dice, 6.0, rate);
    scale_to_rms(noise, 0.01);
    Sound howl = run_loop(loop, noise, 0.0, 1e9, 0.5, rate);
    return rms(Sound(howl.end() - static_cast<std::ptrdiff_t>(rate), howl.end()));
}

struct Recording {
    HowlingLoop loop;
    double rate = 48000, from_s = 0, to_s = 0, over_db = 0;
    Sound sound;
};

// Music, at some moment the fader goes up, the loop howls 10 to 20 dB over the music, and after a while it is pulled
// down.
Recording howl_in_music(std::uint64_t seed) {
    Dice dice(seed);
    Recording out;
    out.rate = kRates[dice.whole(0, 4)];
    const LoopSpec spec{dice.log_uniform(80.0, std::min(8000.0, 0.35 * out.rate)), dice.log_uniform(8.0, 100.0),
                        dice.uniform(0.004, 0.02), dice.uniform(10.0, 40.0)};
    out.loop = make_loop(spec, out.rate);
    out.from_s = dice.uniform(1.0, 3.0);
    out.to_s = out.from_s + 80.0 / spec.growth_db_per_s + 2.5;
    const double seconds = out.to_s + 1.0;
    Sound music = dice.whole(0, 4) == 0 ? one_instrument(dice, seconds, out.rate) : band_music(dice, seconds, out.rate);
    out.over_db = dice.uniform(10.0, 20.0);
    scale_to_rms(music, held_level(dice, out.loop, out.rate) * db_to_ratio(-out.over_db));
    out.sound = run_loop(out.loop, music, out.from_s, out.to_s, 0.5, out.rate);
    return out;
}

bool right(const Howl& howl, double hz) { return std::abs(howl.hz - hz) <= std::max(1.0, 0.001 * hz); }

}  // namespace

class RingTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void detectionInMusic() {
        std::atomic<int> found = 0;
        tbb::parallel_for(0, kRecordings, [&](int i) {
            const Recording r = howl_in_music(700'000 + static_cast<std::uint64_t>(i));
            for (const Howl& howl : howls_in(r.sound, r.rate))
                if (right(howl, r.loop.hz)) {
                    ++found;
                    return;
                }
            std::printf("  missed: recording %d, %.1f Hz, %.1f dB/s, %.1f dB over the music\n", i, r.loop.hz,
                        r.loop.growth_db_per_s, r.over_db);
        });
        std::printf("ring: detected %d of %d howls at 10 dB or more over the music (%.1f %%)\n", found.load(),
                    kRecordings, 100.0 * found / kRecordings);
        QVERIFY(found >= 0.98 * kRecordings);
    }

    void falseAlarmsInMusic() {
        std::atomic<int> alarms = 0;
        tbb::parallel_for(0, kRecordings, [&](int i) {
            Dice dice(800'000 + static_cast<std::uint64_t>(i));
            const double rate = kRates[dice.whole(0, 4)];
            const Sound sound = i % 3 == 0 ? band_music(dice, 10.0, rate) : one_instrument(dice, 10.0, rate);
            const auto howls = howls_in(sound, rate);
            if (howls.empty()) return;
            ++alarms;
            std::printf("  false alarm: recording %d at %.1f Hz\n", i, howls.front().hz);
        });
        std::printf("ring: false alarms in %d of %d recordings without a howl (%.1f %%)\n", alarms.load(), kRecordings,
                    100.0 * alarms / kRecordings);
        QVERIFY(alarms <= 0.01 * kRecordings);
    }

    void frequencyAndGrowthInNoise_data() {
        QTest::addColumn<double>("hz");
        QTest::addColumn<double>("growth");
        QTest::addColumn<double>("rate");
        for (const double hz : {63.0, 147.0, 440.0, 1250.0, 3150.0})
            for (const double growth : {4.0, 15.0, 60.0})
                QTest::addRow("%g Hz %g dB/s", hz, growth) << hz << growth << (hz < 100 ? 8000.0 : 48000.0);
        QTest::addRow("192 kHz") << 2000.0 << 30.0 << 192000.0;
        QTest::addRow("8 kHz") << 900.0 << 30.0 << 8000.0;
    }
    void frequencyAndGrowthInNoise() {
        QFETCH(double, hz);
        QFETCH(double, growth);
        QFETCH(double, rate);
        Dice dice(11);
        const HowlingLoop loop = make_loop({hz, growth, 0.012, 8.0}, rate);
        const double seconds = 1.0 + 70.0 / growth + 1.0;
        Sound noise = pink_noise(dice, seconds, rate);
        scale_to_rms(noise, 1e-4);
        const auto howls = howls_in(run_loop(loop, noise, 0.5, 1e9, 0.5, rate), rate);
        QVERIFY(!howls.empty());
        const auto loudest = *std::max_element(
            howls.begin(), howls.end(), [](const Howl& a, const Howl& b) { return a.level_dbfs < b.level_dbfs; });
        QVERIFY2(right(loudest, loop.hz), qPrintable(QString("%1 for %2").arg(loudest.hz).arg(loop.hz)));
        QVERIFY2(std::abs(loudest.growth_db_per_s / growth - 1.0) < 0.1,
                 qPrintable(QString("%1 for %2 dB/s").arg(loudest.growth_db_per_s).arg(growth)));
    }

    void beginAndEnd() {
        const double rate = 48000;
        Sound sound = silence(8.0, rate);
        // From -70 dB at 2 s to -10 dB at 4 s, held until 6 s, then 60 dB/s down.
        for (std::size_t i = 0; i < sound.size(); ++i) {
            const double t = static_cast<double>(i) / rate;
            const double db = t < 2 ? -200 : t < 4 ? -70 + 30 * (t - 2) : t < 6 ? -10 : -10 - 60 * (t - 6);
            sound[i] = static_cast<float>(db_to_ratio(db) * std::sin(2 * M_PI * 700.0 * t));
        }
        const auto howls = howls_in(sound, rate);
        QCOMPARE(howls.size(), std::size_t{1});
        QVERIFY(std::abs(howls[0].hz - 700.0) < 0.05);
        QVERIFY(std::abs(howls[0].from_s - 2.0) < 0.2);
        QVERIFY(std::abs(howls[0].to_s - 6.33) < 0.2);
        QVERIFY(std::abs(howls[0].growth_db_per_s - 30.0) < 0.5);
        QVERIFY(std::abs(howls[0].level_dbfs + 10.0) < 0.2);
    }

    void severalAtOnce() {
        const double rate = 44100;
        Dice dice(3);
        Sound sound = pink_noise(dice, 8.0, rate);
        scale_to_rms(sound, 0.002);
        const double hz[] = {212.0, 655.0, 2903.0}, growth[] = {12.0, 15.0, 20.0}, top[] = {-6.0, -14.0, -18.0};
        for (std::size_t i = 0; i < sound.size(); ++i) {
            const double t = static_cast<double>(i) / rate;
            for (int k = 0; k < 3; ++k)
                sound[i] += static_cast<float>(db_to_ratio(std::min(top[k], -80.0 + growth[k] * t)) *
                                               std::sin(2 * M_PI * hz[k] * t));
        }
        const auto howls = howls_in(sound, rate);
        for (int k = 0; k < 3; ++k) {
            const bool found = std::any_of(howls.begin(), howls.end(), [&](const Howl& h) { return right(h, hz[k]); });
            QVERIFY2(found, qPrintable(QString::number(hz[k])));
        }
        QCOMPARE(howls.size(), std::size_t{3});
    }

    void blocksDoNotMatter() {
        const Recording r = howl_in_music(5);
        const auto whole = howls_in(r.sound, r.rate, r.sound.size()), pieces = howls_in(r.sound, r.rate, 333);
        QCOMPARE(whole.size(), pieces.size());
        for (std::size_t i = 0; i < whole.size(); ++i) QCOMPARE(whole[i].hz, pieces[i].hz);
    }

    void liveDisplay() {
        const double rate = 48000;
        Sound sound = silence(3.0, rate);
        for (std::size_t i = 0; i < sound.size(); ++i) {
            const double t = static_cast<double>(i) / rate;
            sound[i] =
                static_cast<float>(db_to_ratio(std::min(-10.0, -80.0 + 40.0 * t)) * std::sin(2 * M_PI * 330.0 * t));
        }
        RingDetector detector(rate);
        detector.push(sound);
        QVERIFY(detector.take().empty());
        QCOMPARE(detector.sounding().size(), std::size_t{1});
        QVERIFY(std::abs(detector.sounding()[0].hz - 330.0) < 0.1);
    }

    void silenceAndNoise() {
        Dice dice(9);
        QVERIFY(howls_in(silence(3.0, 48000), 48000).empty());
        QVERIFY(howls_in(white_noise(dice, 10.0, 48000), 48000).empty());
        QVERIFY(howls_in(Sound(10, 0.5f), 48000).empty());
        QVERIFY(howls_in(Sound(200000, 0.5f), 48000).empty());
    }
};

HOWLMAP_TEST(RingTest)
#include "ring_test.moc"
