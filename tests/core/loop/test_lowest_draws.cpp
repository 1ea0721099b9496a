// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/loop/tolerance.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
Show two_loops_in_a_room() {
    Show show = plain_stage(2, 2);
    send(show, 0, 0, 95.0);
    send(show, 1, 1, 92.0);
    show.stage.room = Room{500.0, 0.4, {}};
    show.tolerance.draws = 400;
    return show;
}
}  // namespace

class LowestDraws : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void hints_change_the_time_and_not_the_margin() {
        const Show show = two_loops_in_a_room();
        const auto all = tolerance_figures(show)->margin_p05_db;
        const auto plain = margin_to_count_on(show, *all + 1.0);
        QVERIFY(all && plain && plain->margin_db);
        QVERIFY(std::abs(*plain->margin_db - *all) < 0.01);
        DrawHints hints{learned_forecast(show), lowest_margins(show, 64, *all + 2.0), *all + 2.0, {}};
        for (std::size_t d = 3; d < 450; d += 7)
            hints.lowest.push_back(d);  // no better than any, and some that are not
        for (const double likely_db : {*all - 3.0, *all + 0.3, *all + 6.0})
            QCOMPARE(*margin_to_count_on(show, likely_db, {}, hints)->margin_db, *plain->margin_db);
    }
    void the_lowest_tenth_is_told_in_order() {
        const Show show = two_loops_in_a_room();
        const auto margins = drawn_margins(show, 400);
        const auto count_on = margin_to_count_on(show, 60.0);
        QVERIFY(count_on && count_on->lowest.size() >= 21 && count_on->lowest.size() <= 44);
        const auto lowest = std::ranges::min_element(
            margins, {}, [](const auto& margin) { return margin ? margin->margin_db : 1000.0; });
        QCOMPARE(static_cast<std::ptrdiff_t>(count_on->lowest.front()), lowest - margins.begin());
        QVERIFY(std::ranges::is_sorted(count_on->lowest, {}, [&](std::size_t d) { return margins[d]->margin_db; }));
    }
    void draws_that_are_known_are_not_looked_into_again() {
        const Show show = two_loops_in_a_room();
        DrawHints hints;
        hints.known.assign(40, DrawnMargin{-77.0, 1000.0});
        QCOMPARE(*margin_to_count_on(show, 10.0, {}, hints)->margin_db, -77.0);
    }
};
HOWLMAP_TEST(LowestDraws)
#include "test_lowest_draws.moc"
