// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <set>

#include "core/audio/suspects.h"
#include "core/loop/stability.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {

// Two singers, two wedges, each in her own.
Show two_singers() {
    Show show;
    for (const double side : {-1.5, 1.5}) {
        const std::string which = side < 0 ? "right" : "left";
        Loudspeaker l;
        l.id = "wedge-" + which, l.position = {side, 0.4, 0.2}, l.aim = {180.0, 40.0, 0.0}, l.directivity = Coverage{};
        l.response.low_hz = 80.0;
        show.loudspeakers.push_back(l);
        Input i;
        i.id = "voice-" + which, i.position = {side + 0.1, 1.5, 1.5}, i.aim = {0.0, 0.0, 0.0};
        show.inputs.push_back(i);
        Mix m;
        Send s;
        m.id = "mix-" + which, m.loudspeakers = {l.id}, s.input = i.id, s.level_db = 97, m.sends = {s};
        show.mixes.push_back(m);
    }
    return show;
}

}  // namespace

class SuspectsTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void aRingOfTheDrawingIsFoundFirst() {
        const Show show = two_singers();
        const Stability stability = stability_of(show, true);
        QVERIFY(!stability.rings.empty());
        for (std::size_t i = 0; i < std::min<std::size_t>(3, stability.rings.size()); ++i) {
            const Ring& ring = stability.rings[i];
            const auto suspects = loops_for_frequency(show, ring.hz);
            QVERIFY(!suspects.empty());
            const auto own = std::find_if(suspects.begin(), suspects.end(),
                                          [&](const LoopSuspect& s) { return std::abs(s.hz - ring.hz) < 0.1; });
            QVERIFY(own != suspects.end());
            QVERIFY(std::abs(own->margin_db - ring.margin_db) < 0.01);
            // Nothing that comes before it has a worse margin than its own and the six decibels of moving.
            QVERIFY(suspects.front().margin_db <= ring.margin_db + 6.0);
        }
    }

    // Eight microphones before one loudspeaker: none carries a fifth, yet the ring is theirs.
    void aRingThatManyShare() {
        Show show = two_singers();
        show.loudspeakers.resize(1), show.inputs.resize(1), show.mixes.resize(1);
        for (int k = 1; k < 8; ++k) {
            Input i = show.inputs[0];
            i.id += std::to_string(k), i.channel = k + 1;
            Send s = show.mixes[0].sends[0];
            s.input = i.id;
            show.inputs.push_back(i);
            show.mixes[0].sends.push_back(s);
        }
        const Stability stability = stability_of(show, true);
        const Ring& ring = stability.rings.front();
        QVERIFY(ring.shares.front().share < 0.2);
        const auto suspects = loops_for_frequency(show, ring.hz);
        QCOMPARE(suspects.size(), std::size_t{8});
        QVERIFY(std::abs(suspects.front().hz - ring.hz) < 0.1);
    }

    void eachPairOnce() {
        const auto suspects = loops_for_frequency(two_singers(), 700.0);
        std::set<std::pair<std::string, std::string>> pairs;
        for (const LoopSuspect& s : suspects) QVERIFY(pairs.insert({s.input, s.loudspeaker}).second);
        QVERIFY(suspects.size() <= 10);
    }

    void toleranceDecides() {
        // A bare loop of 1.5 m: rings every 228.8 Hz. Half way between two of them nothing comes near with tight
        // tolerances.
        Show show;
        show.stage.surfaces.floor.absorption = 1.0;
        Loudspeaker l;
        l.id = "w", l.position = {0, 0, 1.2};
        Input i;
        i.id = "m", i.position = {0, 1.5, 1.2};
        Microphone microphone;
        microphone.pattern = PatternName::omni;
        i.transducer = microphone;
        Mix m;
        Send s;
        m.id = "x", m.loudspeakers = {"w"}, s.input = "m", s.level_db = 90, m.sends = {s};
        show.loudspeakers = {l}, show.inputs = {i}, show.mixes = {m};
        show.tolerance.position_m = 0.001, show.tolerance.temperature_c = 0.1, show.tolerance.phase_deg = 10;
        QVERIFY(loops_for_frequency(show, 2.5 * 228.8).empty());
        QCOMPARE(loops_for_frequency(show, 3.0 * 228.8 + 1.0).size(), std::size_t{1});
        show.tolerance.position_m = 0.3;
        QCOMPARE(loops_for_frequency(show, 2.5 * 228.8).size(), std::size_t{1});
    }

    void nothing() {
        QVERIFY(loops_for_frequency(Show{}, 440.0).empty());
        QVERIFY(loops_for_frequency(two_singers(), 5.0).empty());
        QVERIFY(loops_for_frequency(two_singers(), 30000.0).empty());
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(loops_for_frequency(two_singers(), 440.0, {stop.get_token(), {}}).empty());
    }
};

HOWLMAP_TEST(SuspectsTest)
#include "suspects_test.moc"
