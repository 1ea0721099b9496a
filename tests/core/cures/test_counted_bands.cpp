// SPDX-License-Identifier: GPL-3.0-or-later
// Graphic cuts for a margin to count on: only what rings is cut, no fader for nothing, and not at any price.
#include <cmath>
#include <filesystem>

#include "core/cures/counted_bands.h"
#include "core/cures/cures.h"
#include "core/file/read.h"
#include "tests/core/cures/free_air.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;
using namespace howlmap::cures;

namespace {
/// A loop that rings at one frequency: 12 dB more of it than of all others.
Show bumped(double hz) {
    Show show = single_loop();
    const double third = std::exp2(1.0 / 3.0);
    show.loudspeakers[0].response.table = {
        {hz / third / third, 0.0, {}}, {hz, 12.0, {}}, {hz * third * third, 0.0, {}}};
    return show;
}

/// As many conditions as there are bands, all as far over their limits.
std::vector<BandCondition> everywhere(double over_db) {
    std::vector<BandCondition> conditions;
    for (int band = 0; band < kThirdOctaves; ++band) conditions.push_back({third_octave_centre(band), over_db, {1.0}});
    return conditions;
}

BandCuts bands_of(const BandModel& model, const std::vector<BandCondition>& conditions) {
    BandCuts bands;
    for (const BandCondition& condition : conditions) model.add_bands(condition, bands);
    return bands;
}
}  // namespace

class CountedBands : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void only_what_rings_is_cut() {
        Setting s(bumped(1000.0), 3.0);
        Analyst analyst(s.show, std::nullopt, s.job);
        const double wanted = analyst.screened_db(s.show) + 3.0;
        const BandCuts cuts = smallest_counted_cuts(s.now, wanted, analyst);
        QVERIFY(!cuts.empty() && cuts.size() <= 3);
        for (const auto& [key, cut] : cuts) QVERIFY(std::abs(key.second - 17) <= 1);
        const auto reached = [&](const BandCuts& some) {
            return analyst.screened_db(s.now.after([&](Show& show) { apply_cuts(show, some); }));
        };
        QVERIFY(reached(cuts) >= wanted - 0.1);
        for (const auto& [key, cut] : cuts) {
            BandCuts less = cuts;
            less.erase(key);
            QVERIFY2(reached(less) < reached(cuts) - 0.05, qPrintable(QString::number(key.second)));
        }
    }
    void one_ring_in_closed_form() {
        // A cut of c dB takes e c off the ring, e the filter's own effect less what the send goes up: c = over / e.
        Setting s(single_loop());
        const BandModel model(s.now);
        const std::vector<BandCondition> one = {{1000.0, 4.0, {1.0}}};
        const auto smallest = model.smallest(one, {{{0, 17}, 0.0}});
        QCOMPARE(smallest.short_db, 0.0);
        const double cut = smallest.cuts.at({0, 17});
        const double per_db = model.excess_db(one, {{{0, 17}, 0.0}}) - model.excess_db(one, {{{0, 17}, -1.0}});
        QVERIFY2(std::abs(cut + 4.0 / per_db) < 0.3, qPrintable(QString::number(cut)));
        QVERIFY(std::abs(model.excess_db(one, {{{0, 17}, 0.0}}) - 4.0) < 1e-9);
    }
    void not_at_any_price() {
        // Where every frequency rings alike, cuts everywhere are a fader pulled down and a send pushed up again:
        // nothing is bought, whatever is cut.
        Setting s(single_loop());
        const BandModel model(s.now);
        const auto conditions = everywhere(6.0);
        const auto smallest = model.smallest(conditions, bands_of(model, conditions));
        QVERIFY2(smallest.short_db > 4.0, qPrintable(QString::number(smallest.short_db)));
        double squares = 0.0;
        for (const auto& [key, cut] : smallest.cuts) squares += cut * cut;
        // What is paid for the decibels that are had stays below their price.
        QVERIFY2(squares / 100.0 <= 3.5 * (6.0 - smallest.short_db) + 0.1, qPrintable(QString::number(squares)));
    }
    void plans_of_examples_keep_the_level() {
        // Each can be cured at equal loudness: by in-ears, by a notch and a microphone nearer the mouth, by a wedge
        // that stands elsewhere.
        for (const char* name : {"classroom", "duo", "fiddle-and-wedge"}) {
            const auto read =
                load_show(std::filesystem::path(HOWLMAP_SOURCE_DIR) / "examples" / (std::string(name) + ".howlmap"));
            QVERIFY2(read.has_value(), name);
            const Plan plan = *make_plan(read->show);
            QVERIFY2(plan.reaches_target && !plan.steps.empty(), name);
            for (const Cure& step : plan.steps) QVERIFY2(step.kind != CureKind::turn_down, name);
        }
    }
};
HOWLMAP_TEST(CountedBands)
#include "test_counted_bands.moc"
