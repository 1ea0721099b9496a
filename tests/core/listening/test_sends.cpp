// SPDX-License-Identifier: GPL-3.0-or-later
// Sends solved for wished levels, the spiral and the quietest stage; every answer is confirmed by the full figures.
#include "core/listening/headroom.h"
#include "core/listening/listening.h"
#include "core/listening/quiet_stage.h"
#include "core/listening/send_solver.h"
#include "core/units/level.h"
#include "tests/core/listening/small_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// Energy ratio of the neighbour's wedge to the own one at either ear of two_players(), air left out.
const double kSpill = 4.0 / 20.0;

Show with_backline(Show show, double dba) {
    Backline amp;
    amp.id = amp.name = "amp";
    amp.position = {2.0, 3.0, 1.6};
    amp.level_1m_dba = dba;
    amp.spectrum = std::map<int, double>{{17, 0.0}};
    show.backline = {amp};
    return show;
}
}  // namespace

class Sends : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void wished_level_for_one() {
        const auto solution = solve_sends(one_player(), {{"ann", WishKind::own_level, 97.0}});
        QVERIFY(solution.all_met());
        QVERIFY(std::abs(*performer_figures(solution.after)[0].own_dba - 97.0) < 0.1);
        QCOMPARE(solution.changes.size(), std::size_t{1});
    }
    void wished_margins_for_all() {
        const Show show = with_backline(two_players(), 90.0);
        const auto solution =
            solve_sends(show, {{"ann", WishKind::hear_margin, 3.0}, {"bea", WishKind::hear_margin, 1.0}});
        QVERIFY(solution.all_met());
        const auto figures = performer_figures(solution.after);
        QVERIFY(std::abs(*figures[0].hear_margin_db - 3.0) < 0.1);
        QVERIFY(std::abs(*figures[1].hear_margin_db - 1.0) < 0.1);
    }
    void what_neighbours_make_impossible() {
        // Both want more than 1 / spill = 7 dB over the other: no levels can do that.
        const auto solution = solve_sends(with_backline(two_players(), 80.0),
                                          {{"ann", WishKind::hear_margin, 9.0}, {"bea", WishKind::hear_margin, 9.0}});
        QVERIFY(!solution.all_met());
        QVERIFY(solution.outcomes[0].limit == Limit::neighbour);
        QVERIFY(!solution.outcomes[0].reason.empty());
    }
    void loudspeaker_limits() {
        Show show = one_player();
        show.loudspeakers[0].max_spl_db = 102.0;
        const auto solution = solve_sends(show, {{"ann", WishKind::own_level, 100.0}});
        QVERIFY(!solution.all_met());
        QVERIFY(solution.outcomes[0].limit == Limit::loudspeaker);
        QVERIFY(std::abs(*loudspeaker_loads(solution.after)[0].level_db - 102.0) < 0.05);
    }
    void loops_limit() {
        // A stand-in for the loop analysis: 8 dB left at 100 dB of send.
        SolveOptions options;
        options.margin = [](const Show& show) {
            return std::optional<double>(108.0 - show.mixes[0].sends[0].level_db);
        };
        const auto solution = solve_sends(one_player(), {{"ann", WishKind::own_level, 99.0}}, options);
        QVERIFY(solution.outcomes[0].limit == Limit::margin);
        QVERIFY(std::abs(*solution.margin_after_db - 6.0) < 0.01);
    }
    void nothing_of_her_own() {
        Show show = one_player();
        show.mixes[0].sends.clear();
        const auto solution =
            solve_sends(show, {{"ann", WishKind::own_level, 90.0}, {"nobody", WishKind::own_level, 90.0}});
        QVERIFY(solution.outcomes[0].limit == Limit::no_own_send);
        QVERIFY(solution.outcomes[1].limit == Limit::no_own_send);
    }
    void louder_backline_spirals() {
        // g = 1 + k g for both by symmetry: with n the noise and s the spill, own = t (n + s own), so own grows like n:
        // 3 dB for 3 dB.
        const Show show = with_backline(two_players(), 95.0);
        const auto costs = cost_of_louder(show);
        QCOMPARE(costs.size(), std::size_t{3});
        QCOMPARE(costs[0].source, std::string("amp"));
        QVERIFY(costs[0].settles);
        for (const auto& cost : costs[0].performers) {
            QVERIFY(std::abs(cost.turned_up_db - 3.0) < 0.01);
            QVERIFY(*cost.hear_margin_change_db < 0.0 && *cost.hear_margin_change_db > -3.0);
        }
        // A louder wedge of Ann helps Ann and costs Bea.
        QVERIFY(std::abs(*costs[1].performers[0].hear_margin_change_db - 3.0) < 0.01);
        QVERIFY(*costs[1].performers[1].hear_margin_change_db < 0.0);
    }
    void two_wedges_chase_each_other() {
        // Without any fixed sound each one's answer is the other's reason: what one gains the other takes back for
        // ever.
        const auto costs = cost_of_louder(two_players());
        QVERIFY(std::abs(costs[0].performers[1].turned_up_db - 3.0) < 0.05);
    }
    void quietest_stage_in_closed_form() {
        // own = t (n + s own): own = t n / (1 - t s) with n the backline at the ear; s = 1/5, t = 1, n = 90 dBA - 6 dB.
        const Show show = with_backline(two_players(), 90.0);
        const auto quiet = quietest_stage(show, {0.0, 6.0, {}});
        QVERIFY(quiet.possible);
        const double noise = db_to_energy(90.0) / 4.0;
        const double expected = energy_to_db(noise / (1.0 - kSpill));
        for (const auto& figure : quiet.ears_after) {
            QVERIFY(std::abs(*figure.hear_margin_db) < 0.1);
            QVERIFY(std::abs(*figure.own_dba - expected) < 0.1);
        }
    }
    void quietest_stage_is_lowest() {
        const Show show = with_backline(two_players(), 90.0);
        const auto quiet = quietest_stage(show, {2.0, 6.0, {}});
        // Any own send a little lower and somebody no longer hears herself.
        for (std::size_t m = 0; m < 2; ++m) {
            Show lower = quiet.after;
            lower.mixes[m].sends[0].level_db -= 0.2;
            QVERIFY(*performer_figures(lower)[m].hear_margin_db < 2.0 - 0.05);
        }
    }
    void no_quiet_stage() {
        const auto quiet = quietest_stage(with_backline(two_players(), 90.0), {8.0, 6.0, {}});
        QVERIFY(!quiet.possible);
        QCOMPARE(quiet.limited_by.size(), std::size_t{2});
        QVERIFY(quiet.changes.empty());
    }
};
HOWLMAP_TEST(Sends)
#include "test_sends.moc"
