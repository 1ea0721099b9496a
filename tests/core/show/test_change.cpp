// SPDX-License-Identifier: GPL-3.0-or-later
#include <rapidcheck.h>

#include <algorithm>

#include "core/show/change.h"
#include "core/show/find.h"
#include "tests/support/random.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// The same objects in part, others altered, renamed, added, removed and moved about.
Show reworked(Show show, std::uint64_t seed) {
    Random random(seed);
    const Show other = random_show(seed);
    const auto rework = [&](auto& list, const auto& from) {
        for (auto& item : list)
            if (random.chance(0.3)) item.extras.emplace_back("x_touched", "1");
        if (!list.empty() && random.chance(0.3)) list.front().id += "-renamed";
        for (const auto& item : from)
            if (random.chance(0.3) && !find_by_id(list, item.id + "-new")) {
                list.push_back(item);
                list.back().id += "-new";
            }
        if (!list.empty() && random.chance(0.3))
            list.erase(list.begin() + random.whole(0, static_cast<int>(list.size()) - 1));
        if (random.chance(0.3)) std::reverse(list.begin(), list.end());
    };
    rework(show.loudspeakers, other.loudspeakers);
    rework(show.inputs, other.inputs);
    rework(show.performers, other.performers);
    rework(show.mixes, other.mixes);
    rework(show.backline, other.backline);
    rework(show.listeners, other.listeners);
    rework(show.marks, other.marks);
    rework(show.stage.risers, other.stage.risers);
    if (random.chance(0.3)) show.title += " again";
    if (random.chance(0.3)) show.air = other.air;
    if (random.chance(0.3)) show.system = other.system;
    if (random.chance(0.3)) show.tolerance = other.tolerance;
    if (random.chance(0.3)) show.stage.outline = other.stage.outline;
    if (random.chance(0.3)) show.stage.room = other.stage.room;
    if (random.chance(0.3)) show.soundcheck = other.soundcheck;
    return show;
}

Show after(Show show, const Change& change) {
    apply(show, change);
    return show;
}
}  // namespace

class TestChange : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void applyingADifferenceGivesTheOtherShow() {
        QVERIFY(rc::check([](std::uint64_t seed) {
            const Show before = *random_shows(), then = reworked(before, seed);
            RC_ASSERT(after(before, difference(before, then, "rework")) == then);
        }));
    }

    void anUnrelatedShowIsReachedToo() {
        QVERIFY(rc::check([] {
            const Show before = *random_shows(), then = *random_shows();
            RC_ASSERT(after(before, difference(before, then, "replace")) == then);
        }));
    }

    void theInverseRestores() {
        QVERIFY(rc::check([](std::uint64_t seed) {
            const Show before = *random_shows(), then = reworked(before, seed);
            const Change change = difference(before, then, "rework");
            RC_ASSERT(after(then, inverted(change)) == before);
            RC_ASSERT(inverted(inverted(change)) == change);
        }));
    }

    void mergingComposes() {
        QVERIFY(rc::check([](std::uint64_t seed) {
            const Show first = *random_shows(), second = reworked(first, seed), third = reworked(second, seed + 1);
            const Change change = merged(difference(first, second, "a"), difference(second, third, "b"));
            RC_ASSERT(after(first, change) == third);
            RC_ASSERT(after(third, inverted(change)) == first);
        }));
    }

    void thereAndBackIsNothing() {
        QVERIFY(rc::check([](std::uint64_t seed) {
            const Show before = *random_shows();
            const Change change = difference(before, reworked(before, seed), "rework");
            RC_ASSERT(merged(change, inverted(change)).empty());
        }));
    }

    void sameShowsDifferInNothing() {
        const Show show = random_show(1);
        const Change change = difference(show, show, "nothing");
        QVERIFY(change.empty());
        QVERIFY(touched_ids(change).empty());
    }

    void touchedAreThoseThatDiffer() {
        const Show before = random_show(2, stage_like());
        Show then = before;
        then.loudspeakers.front().position.x += 0.1;
        then.performers.front().name = "someone else";
        then.marks.push_back({"new mark", "power", {}, 0.0, "16 A", {}});
        const auto touched = touched_ids(difference(before, then, "three"));
        const std::set<std::string> expected{before.loudspeakers.front().id, before.performers.front().id, "new mark"};
        QCOMPARE(touched, expected);
    }

    void aNewOrderAloneIsAChange() {
        Show before = random_show(3);
        before.marks = {{"a", "note", {}, 0.0, "", {}}, {"b", "note", {}, 0.0, "", {}}};
        Show then = before;
        std::swap(then.marks[0], then.marks[1]);
        const Change change = difference(before, then, "order");
        QVERIFY(!change.empty());
        QVERIFY(change.marks.items.empty());
        QVERIFY(after(before, change) == then);
    }

    void onlyWhatChangedIsHeld() {
        const Show before = random_show(4);
        Show then = before;
        then.loudspeakers.front().trim_db += 1.0;
        const Change change = difference(before, then, "trim");
        QCOMPARE(change.loudspeakers.items.size(), std::size_t{1});
        QVERIFY(change.inputs.empty() && change.head.empty() && change.stage.empty());
    }

    void aChangeOfAnotherShowStopsLoudly() {
        Show before = random_show(5), then = before;
        then.loudspeakers.front().trim_db += 1.0;
        const Change change = difference(before, then, "trim");
        Show stranger;
        QVERIFY_EXCEPTION_THROWN(apply(stranger, change), std::logic_error);
    }
};

HOWLMAP_TEST(TestChange)
#include "test_change.moc"
