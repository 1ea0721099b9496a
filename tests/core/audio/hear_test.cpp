// SPDX-License-Identifier: GPL-3.0-or-later
// What is heard must be what is computed: two roads, one in frequency, one in time.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/audio/loop_sound.h"
#include "core/audio/ring_detector.h"
#include "core/loop/eigenvalues.h"
#include "core/loop/stability.h"
#include "core/units/level.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {

Loudspeaker wedge(const char* id, Vec3 at, double yaw) {
    Loudspeaker l;
    l.id = l.name = id, l.position = at, l.aim = {yaw, 35.0, 0.0};
    l.directivity = Coverage{.horizontal_deg = 60.0,
                             .vertical_deg = 40.0,
                             .width_m = 0.45,
                             .height_m = 0.35,
                             .floor_db = 24.0,
                             .extras = {}};
    l.response.low_hz = 70.0, l.response.high_hz = 16000.0;
    return l;
}

Input microphone(const char* id, Vec3 at, PatternName pattern) {
    Input i;
    i.id = i.name = id, i.position = at, i.aim = {0.0, 0.0, 0.0};
    Microphone m;
    m.pattern = pattern;
    i.transducer = m;
    return i;
}

Mix mix(const char* id, std::vector<std::string> loudspeakers, std::vector<Send> sends) {
    Mix m;
    m.id = m.name = id, m.loudspeakers = std::move(loudspeakers), m.sends = std::move(sends);
    return m;
}

Send send(const char* input, double level) {
    Send s;
    s.input = input, s.level_db = level;
    return s;
}

// One open microphone before one wedge in free air.
Show bare() {
    Show show;
    show.stage.surfaces.floor.absorption = 1.0;
    Loudspeaker l = wedge("w", {0, 0, 1.2}, 180);
    l.aim.pitch_deg = 0, l.directivity = Omni{}, l.response = {};
    show.loudspeakers = {l};
    show.inputs = {microphone("m", {0, 1.5, 1.2}, PatternName::omni)};
    show.mixes = {mix("x", {"w"}, {send("m", 92)})};
    return show;
}

// A singer at her wedge with floor and back wall, a cut, a high-pass and a desk's latency.
Show singer() {
    Show show;
    show.stage.surfaces.floor.absorption = 0.1;
    show.stage.surfaces.back = Surface{.at = 3.0, .absorption = 0.3, .extras = {}};
    show.system.latency_ms = 2.5;
    show.loudspeakers = {wedge("w", {0.2, 0.3, 0.2}, 170)};
    show.inputs = {microphone("m", {0, 1.6, 1.55}, PatternName::cardioid)};
    show.inputs[0].aim = {180.0, -20.0, 0.0};
    show.inputs[0].high_pass = HighPass{.hz = 100, .order = 2, .extras = {}};
    show.mixes = {mix("x", {"w"}, {send("m", 98)})};
    show.mixes[0].notches = {PeakFilter{.hz = 2500, .q = 8, .gain_db = -6, .extras = {}}};
    return show;
}

// Three inputs, one of them a fiddle's pickup, and two wedges that all hear each other.
Show trio() {
    Show show = singer();
    show.loudspeakers.push_back(wedge("v", {1.8, 0.2, 0.2}, 190));
    show.inputs.push_back(microphone("n", {1.5, 1.5, 1.5}, PatternName::supercardioid));
    show.inputs[1].aim = {170.0, -10.0, 0.0};
    Input fiddle;
    fiddle.id = fiddle.name = "f", fiddle.position = {0.9, 1.4, 1.4}, fiddle.spectrum = SpectrumName::strings;
    Pickup pickup;
    pickup.modes = {BodyMode{.hz = 275, .q = 15, .gain_db = 0, .air = true, .name = "", .extras = {}},
                    BodyMode{.hz = 470, .q = 28, .gain_db = -2, .air = false, .name = "", .extras = {}},
                    BodyMode{.hz = 540, .q = 30, .gain_db = 1, .air = false, .name = "", .extras = {}}};
    fiddle.transducer = pickup;
    show.inputs.push_back(fiddle);
    show.mixes = {mix("x", {"w"}, {send("m", 97), send("f", 96)}),
                  mix("y", {"v"}, {send("n", 95), send("f", 94), send("m", 85)})};
    return show;
}

// A microphone so near to its loudspeaker that the path cannot hold the symmetrical filters of directivity and
// reflection.
Show near_by() {
    Show show;
    show.stage.surfaces.floor.absorption = 0.2;
    show.loudspeakers = {wedge("w", {0, 0, 0.25}, 200)};
    show.inputs = {microphone("m", {0.25, 0.3, 0.45}, PatternName::cardioid)};
    show.inputs[0].aim = {120.0, 0.0, 0.0};
    show.mixes = {mix("x", {"w"}, {send("m", 84)})};
    return show;
}

Show body_alone() {
    Show show = trio();
    show.inputs = {show.inputs[2]};
    show.loudspeakers = {show.loudspeakers[0]};
    show.mixes = {mix("x", {"w"}, {send("f", 100)})};
    return show;
}

Show show_named(const QString& name) {
    if (name == QLatin1StringView("bare")) return bare();
    if (name == QLatin1StringView("singer")) return singer();
    if (name == QLatin1StringView("trio")) return trio();
    if (name == QLatin1StringView("near by")) return near_by();
    return body_alone();
}

Show raised(Show show, double db) {
    for (Mix& m : show.mixes)
        for (Send& s : m.sends) s.level_db += db;
    return show;
}

// Where the ring's pole lies when it grows: to first order in the distance from the margin, delta s = ln|lambda| (T - j
// M) / (T^2 + M^2).
struct Pole {
    double hz, growth_db_per_s;
};
Pole pole_of(const Show& show, const Ring& ring) {
    const LoopModel model(show);
    const auto nearest = [&](double hz, Complex to) {
        const auto all = eigenvalues_of(model.small_matrix(model.factors(hz)));
        return *std::min_element(all.begin(), all.end(),
                                 [&](Complex a, Complex b) { return std::abs(a - to) < std::abs(b - to); });
    };
    const Complex here = nearest(ring.hz, db_to_ratio(-ring.margin_db));
    const double step = 0.01;
    const Complex slope = (nearest(ring.hz + step, here) - nearest(ring.hz - step, here)) / (4.0 * M_PI * step) / here;
    const double t = -slope.imag(), m = slope.real(), far = std::log(std::abs(here)) / (t * t + m * m);
    return {ring.hz - far * m / (2.0 * M_PI), 20.0 / std::log(10.0) * far * t};
}

double level_between(const std::vector<float>& sound, double rate, double from, double to) {
    double sum = 0.0;
    const auto a = static_cast<std::size_t>(from * rate), b = static_cast<std::size_t>(to * rate);
    for (std::size_t i = a; i < b; ++i) sum += static_cast<double>(sound[i]) * sound[i];
    return energy_to_db(sum / static_cast<double>(b - a) + 1e-20);
}

}  // namespace

class HearTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void agreesWithTheAnalysis_data() {
        QTest::addColumn<QString>("name");
        QTest::addColumn<double>("beyond");
        for (const char* name : {"bare", "singer", "trio", "near by", "body alone"})
            for (const double beyond : {-0.5, 0.2, 0.6})
                QTest::addRow("%s %+.1f dB", name, beyond) << QString::fromLatin1(name) << beyond;
    }
    // beyond: dB past the margin.
    void agreesWithTheAnalysis() {
        QFETCH(QString, name);
        QFETCH(double, beyond);
        const Show show = show_named(name);
        const auto margin = stability_of(show, false).margin_db;
        QVERIFY(margin.has_value());
        const double raise = *margin + beyond;
        const Show up = raised(show, raise);
        const Stability predicted = stability_of(up, true);
        QVERIFY(!predicted.rings.empty());
        // Of rings that stand close together the one that grows fastest wins, which need not be the strongest.
        const Ring& ring =
            *std::max_element(predicted.rings.begin(), predicted.rings.end(),
                              [](const Ring& a, const Ring& b) { return a.build_up_db_per_s < b.build_up_db_per_s; });
        HearOptions options;
        options.raise_db = raise;
        const auto sound = LoopSound::prepare(show, options);
        QVERIFY(sound.has_value());
        const auto probe = sound->measure();
        QVERIFY(probe.has_value());
        const Pole pole = pole_of(up, ring);
        std::printf("  %-10s %+.1f dB: computed %9.3f Hz (%9.3f growing) %+8.2f dB/s, heard %9.3f Hz %+8.2f dB/s\n",
                    name.toLatin1().data(), beyond, ring.hz, pole.hz, ring.build_up_db_per_s, probe->dominant_hz,
                    probe->growth_db_per_s);
        QVERIFY(std::abs(probe->dominant_hz / pole.hz - 1.0) < 0.001);
        QVERIFY(std::abs(probe->growth_db_per_s / pole.growth_db_per_s - 1.0) < 0.05);
        QVERIFY(std::abs(ring.build_up_db_per_s / pole.growth_db_per_s - 1.0) < 0.001);
    }

    /// Sound comes by once a round; a long delay must not be taken for a growth.
    void longDelaysGrowAndDieByTheRound() {
        Show show = show_named(QStringLiteral("bare"));
        show.system.latency_ms = 300.0;
        const double margin = *stability_of(show, false).margin_db;
        auto sound = LoopSound::prepare(show, {});
        QVERIFY(sound.has_value());
        for (const double beyond : {1.0, -1.0, -3.0, -6.0}) {
            sound->set_raise_db(margin + beyond);
            const auto probe = sound->measure();
            QVERIFY(probe.has_value());
            const double by_the_round = beyond / 0.302, heard = probe->growth_db_per_s;
            QVERIFY2(std::abs(heard - by_the_round) < 0.15 * std::abs(by_the_round) + 1.0,
                     qPrintable(QStringLiteral("%1 dB: %2, expected %3").arg(beyond).arg(heard).arg(by_the_round)));
        }
    }

    void growsBendsAndStaysBelowHalf() {
        const Show show = singer();
        const double margin = *stability_of(show, false).margin_db;
        HearOptions options;
        options.raise_db = margin + 0.5;
        auto sound = LoopSound::prepare(show, options);
        QVERIFY(sound.has_value());
        std::vector<float> out(static_cast<std::size_t>(15.0 * sound->rate_hz()));
        sound->play(out);
        QVERIFY(std::all_of(out.begin(), out.end(), [](float x) { return std::abs(x) < 0.5f; }));
        QVERIFY(level_between(out, 48000, 0.0, 0.05) < -60.0);  // fade-in
        const double held = level_between(out, 48000, 14.0, 15.0);
        QVERIFY(held > -20.0);                                                  // it howls
        QVERIFY(std::abs(held - level_between(out, 48000, 13.0, 14.0)) < 1.0);  // and is held
        RingDetector detector(48000);
        detector.push(out);
        detector.finish();
        const auto probe = sound->measure();
        const auto howls = detector.take();
        QVERIFY(std::any_of(howls.begin(), howls.end(), [&](const Howl& h) {
            return std::abs(h.hz - probe->dominant_hz) < std::max(1.0, 0.001 * h.hz);
        }));
    }

    void diesAwayAboveTheMargin() {
        const Show show = singer();
        const double margin = *stability_of(show, false).margin_db;
        HearOptions options;
        options.raise_db = margin - 3.0;
        auto sound = LoopSound::prepare(show, options);
        std::vector<float> out(static_cast<std::size_t>(14.0 * 48000));
        sound->play(out);
        const double playing = level_between(out, 48000, 2.0, 6.0), after = level_between(out, 48000, 13.0, 14.0);
        QVERIFY(playing > -45.0);
        QVERIFY2(after < playing - 30.0, qPrintable(QString("%1 %2").arg(playing).arg(after)));
    }

    void turningUpWhileItPlays() {
        const Show show = bare();
        const double margin = *stability_of(show, false).margin_db;
        HearOptions options;
        options.raise_db = margin - 6.0, options.seconds = 1.0;
        auto sound = LoopSound::prepare(show, options);
        std::vector<float> quiet(4 * 48000), loud(2 * 48000), again(3 * 48000);
        sound->play(quiet);
        sound->set_raise_db(margin + 2.0);
        sound->play(loud);
        sound->set_raise_db(margin - 12.0);
        sound->play(again);
        const double before = level_between(quiet, 48000, 3, 4), howl = level_between(loud, 48000, 1, 2),
                     pulled = level_between(again, 48000, 2, 3);
        QVERIFY2(howl > before + 30.0 && pulled < howl - 30.0,
                 qPrintable(QString("%1 %2 %3").arg(before).arg(howl).arg(pulled)));
    }

    void ownSourceAndOwnInput() {
        HearOptions options;
        options.input = "n", options.source.assign(48000, 0.0f);
        for (std::size_t i = 0; i < 48000; ++i)
            options.source[i] = static_cast<float>(0.01 * std::sin(2 * M_PI * 440.0 * static_cast<double>(i) / 48000));
        options.raise_db = -30;
        auto sound = LoopSound::prepare(trio(), options);
        QVERIFY(sound.has_value());
        QCOMPARE(QString::fromStdString(sound->input()), QStringLiteral("n"));
        QCOMPARE(sound->seconds(), 4.0);
        std::vector<float> out(48000);
        sound->play(out);
        QVERIFY(level_between(out, 48000, 0.6, 0.9) > -90.0);
    }

    void nothingToHear() {
        QVERIFY(!LoopSound::prepare(Show{}, {}).has_value());
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(!LoopSound::prepare(trio(), {}, {stop.get_token(), {}}).has_value());
    }
};

HOWLMAP_TEST(HearTest)
#include "hear_test.moc"
