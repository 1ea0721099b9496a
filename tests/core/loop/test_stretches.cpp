// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/loop/blocks/stretches.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// Some of it is surveyed, and the mode of the body is too sharp for that.
Show pickup_in_a_room() {
    Show show = plain_stage(1, 2);
    Pickup pickup;
    pickup.modes.push_back(BodyMode{180.0, 20.0, 12.0, false, {}, {}});
    show.inputs[0].transducer = pickup;
    send(show, 0, 0, 95.0);
    send(show, 0, 1, 95.0);
    show.stage.room = Room{500.0, 0.8, {}};
    return show;
}
}  // namespace

class Stretching : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void every_block_lies_in_one() {
        const Show show = pickup_in_a_room();
        const BlockModel model(show, Purpose::draws);
        const IntervalBounds bounds(model.model(), model.wiring(), model.grid(), model.room());
        const Stretches stretches(model, bounds);
        std::size_t next = 0;
        int surveyed = 0, alone = 0;
        for (std::size_t i = 0; i < stretches.size(); ++i) {
            QCOMPARE(stretches[i].first, next);
            next = stretches[i].last;
            ++(stretches[i].part < 0 ? alone : surveyed);
            QVERIFY(stretches[i].part >= 0 || stretches[i].last == stretches[i].first + 1);
            QVERIFY(std::isinf(stretches[i].most));
        }
        QCOMPARE(next, model.grid().blocks.size());
        QVERIFY(surveyed > 10 && alone > 10);
        QCOMPARE(stretches.frequencies().front().low_hz, 20.0);
        QVERIFY(std::abs(stretches.frequencies().back().high_hz - 20000.0) < 1e-6);
        QVERIFY(stretches.most().empty());
    }
    void an_interval_knows_the_largest_of_its_own() {
        const Show show = pickup_in_a_room();
        const BlockModel model(show, Purpose::draws);
        const IntervalBounds bounds(model.model(), model.wiring(), model.grid(), model.room());
        Stretches stretches(model, bounds);
        std::vector<double> draw(stretches.size());
        for (std::size_t i = 0; i < draw.size(); ++i) draw[i] = 1.0 + 0.1 * static_cast<double>(i % 7);
        const PeakForecast forecast(stretches.frequencies(), {draw, draw, draw});
        stretches.heed(&forecast);
        QCOMPARE(stretches.most().size(), bounds.size());
        for (std::size_t i = 0; i < bounds.size(); ++i) {
            double largest = 0.0;
            for (const auto& stretch : stretches.of(i)) largest = std::max(largest, stretch.most);
            QVERIFY(std::isfinite(largest));
            QCOMPARE(stretches.most()[i], largest);
        }
        stretches.heed(nullptr);
        QVERIFY(stretches.most().empty() && std::isinf(stretches[0].most));
    }
    void other_shows_may_peak_where_a_neighbour_did() {
        const std::vector<double> draw{1.0, 3.0, 1.0, 1.0};
        const PeakForecast own({{100.0, 105.0}, {105.0, 110.0}, {110.0, 130.0}, {130.0, 150.0}}, {draw, draw, draw});
        const PeakForecast others = own.for_others();
        QVERIFY(own.most({100.0, 105.0}) < own.most({105.0, 110.0}));
        QCOMPARE(others.most({100.0, 105.0}), own.most({105.0, 110.0}));
        QCOMPARE(others.most({110.0, 130.0}), own.most({105.0, 110.0}));
        QCOMPARE(others.most({130.0, 150.0}), own.most({130.0, 150.0}));  // too far away
        QVERIFY(std::isinf(others.most({90.0, 101.0})));
    }
};
HOWLMAP_TEST(Stretching)
#include "test_stretches.moc"
