// SPDX-License-Identifier: GPL-3.0-or-later
// Edits of the plan, and the promise that whatever is done can be undone to the last bit.
#include <rapidcheck.h>

#include <QtTest>
#include <random>
#include <set>

#include "core/show/edits.h"
#include "core/show/find.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {

Show stage() {
    Show show;
    show.stage.risers.push_back({"riser", "Riser", {{1, 2}, {3, 2}, {3, 4}, {1, 4}}, 0.4, {}});
    for (int i = 1; i <= 3; ++i) {
        Loudspeaker l;
        l.id = "wedge-" + std::to_string(i);
        l.name = "Wedge " + std::to_string(i);
        l.position = {1.0 * i * i, 0.5 * i, 0.3};
        l.aim = {180.0 + i, 40.0, 5.0};
        show.loudspeakers.push_back(l);
    }
    Input input;
    input.id = "voice";
    input.name = "Voice";
    input.channel = 1;
    input.position = {-1, 2, 1.6};
    input.performer = "ann";
    show.inputs = {input};
    Performer ann;
    ann.id = ann.name = "ann";
    ann.position = {-1, 2.3};
    ann.mix = "mix";
    show.performers = {ann};
    Mix mix;
    mix.id = "mix";
    mix.name = "Ann";
    mix.loudspeakers = {"wedge-1", "wedge-2"};
    mix.sends = {{"voice", 97.0, {}}};
    show.mixes = {mix};
    SoundcheckEntry log;
    log.input = "voice";
    log.mix = "mix";
    show.soundcheck = {log};
    return show;
}

const Loudspeaker& wedge(const Show& show, const char* id) { return *find_by_id(show.loudspeakers, id); }

bool near(double a, double b) { return std::abs(a - b) <= 1e-9; }

/// Every reference resolves and every id is there once.
bool is_sound(const Show& show) {
    std::set<std::string> ids;
    std::size_t count = show.mixes.size();
    for (const Mix& mix : show.mixes) ids.insert(mix.id);
    for_each_placed_list(show, [&](const auto& list) {
        count += list.size();
        for (const auto& item : list) ids.insert(item.id);
    });
    if (ids.size() != count) return false;
    const auto there = [](const auto& list, const std::string& id) { return id.empty() || find_by_id(list, id); };
    for (const Mix& mix : show.mixes) {
        std::set<std::string> heard;
        for (const std::string& id : mix.loudspeakers)
            if (!find_by_id(show.loudspeakers, id)) return false;
        for (const Send& send : mix.sends)
            if (!find_by_id(show.inputs, send.input) || !heard.insert(send.input).second) return false;
    }
    for (const Input& input : show.inputs)
        if (!there(show.performers, input.performer)) return false;
    for (const Performer& p : show.performers)
        if (!there(show.mixes, p.mix)) return false;
    for (const SoundcheckEntry& entry : show.soundcheck)
        if (!there(show.inputs, entry.input) || !there(show.mixes, entry.mix)) return false;
    return is_simple(show.stage.outline);
}

/// One of all edits on some of the objects.
void random_edit(Show& show, std::mt19937_64& dice) {
    const auto number = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(dice);
    };
    const auto pick = [&](int n) { return std::uniform_int_distribution<int>(0, n - 1)(dice); };
    Ids ids;
    for (const Placed& object : placed_objects(show))
        if (pick(3) == 0) ids.push_back(object.id);
    const Vec2 point{number(-5, 5), number(-1, 7)};
    switch (pick(13)) {
        case 0:
            return move_by(show, ids, point);
        case 1:
            return turn_by(show, ids, number(-180, 180), point);
        case 2:
            return turn_each_by(show, ids, number(-180, 180));
        case 3:
            return face(show, ids, point);
        case 4:
            return mirror(show, ids, number(-1, 1));
        case 5:
            return align(show, ids, static_cast<AlignTo>(pick(6)));
        case 6:
            return spread(show, ids, static_cast<SpreadAlong>(pick(2)));
        case 7:
            return set_locked(show, ids, pick(2) == 0);
        case 8:
            return ids.size() > 3 ? remove_objects(show, {ids.front()}) : void();
        case 9:
            return ids.size() < 4 && show.inputs.size() < 20 ? static_cast<void>(duplicate(show, ids, point)) : void();
        case 10:
            return static_cast<void>(move_corner(show, "", static_cast<std::size_t>(pick(4)), point));
        case 11:
            return static_cast<void>(insert_corner(show, "", static_cast<std::size_t>(pick(4)), point));
        default:
            return static_cast<void>(remove_corner(show, "", static_cast<std::size_t>(pick(5))));
    }
}

int sequences() { return qEnvironmentVariableIsSet("HOWLMAP_LONG_TESTS") ? 10000 : 500; }

}  // namespace

class TestEdits : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void moving_keeps_offsets_up_to_the_limit();
    void locked_objects_stay();
    void turning_a_group_turns_places_and_yaws();
    void facing_looks_at_the_point();
    void mirroring_twice_changes_nothing();
    void aligning_brings_all_to_one_line();
    void spreading_makes_gaps_equal();
    void duplicates_have_fresh_ids_and_their_own_references();
    void a_duplicate_alone_joins_the_same_mixes();
    void extracting_leaves_nothing_dangling();
    void inserting_into_another_show_brings_the_mix();
    void removing_takes_references_along();
    void outlines_stay_simple();
    void walls_move_where_there_are_any();
    void names_and_channels_go_on_counting();
    void any_sequence_can_be_undone_and_redone();
};

void TestEdits::moving_keeps_offsets_up_to_the_limit() {
    Show show = stage();
    move_by(show, {"wedge-1", "wedge-2", "riser"}, {5000.0, -0.25});
    QCOMPARE(wedge(show, "wedge-2").position.x, 1000.0);
    QVERIFY(near(wedge(show, "wedge-2").position.x - wedge(show, "wedge-1").position.x, 3.0));
    QVERIFY(near(show.stage.risers[0].outline[1].x, 999.0));
    QVERIFY(near(wedge(show, "wedge-1").position.y, 0.25));
    QCOMPARE(wedge(show, "wedge-3").position.x, 9.0);
}

void TestEdits::locked_objects_stay() {
    Show show = stage();
    set_locked(show, {"wedge-1"}, true);
    QVERIFY(is_locked(wedge(show, "wedge-1").extras));
    const Loudspeaker before = wedge(show, "wedge-1");
    move_by(show, {"wedge-1", "wedge-2"}, {1, 1});
    mirror(show, {"wedge-1"});
    turn_each_by(show, {"wedge-1"}, 10);
    remove_objects(show, {"wedge-1"});
    QVERIFY(wedge(show, "wedge-1") == before);
    QCOMPARE(wedge(show, "wedge-2").position.x, 5.0);
    set_locked(show, {"wedge-1"}, false);
    QVERIFY(wedge(show, "wedge-1").extras.empty());
}

void TestEdits::turning_a_group_turns_places_and_yaws() {
    Show show = stage();
    turn_by(show, {"wedge-1", "riser"}, 90.0, {0, 0});
    QVERIFY(near(wedge(show, "wedge-1").position.x, -0.5) && near(wedge(show, "wedge-1").position.y, 1.0));
    QVERIFY(near(wedge(show, "wedge-1").aim.yaw_deg, 271.0));
    QVERIFY(near(show.stage.risers[0].outline[0].x, -2.0) && near(show.stage.risers[0].outline[0].y, 1.0));
}

void TestEdits::facing_looks_at_the_point() {
    Show show = stage();
    face(show, {"wedge-1", "voice"}, {5, 0.5});
    QVERIFY(near(wedge(show, "wedge-1").aim.yaw_deg, 90.0));
    QVERIFY(near(wedge(show, "wedge-1").aim.pitch_deg, 40.0));
}

void TestEdits::mirroring_twice_changes_nothing() {
    Show show = stage();
    const Show before = show;
    mirror(show, {"wedge-1", "voice", "ann", "riser"});
    QVERIFY(near(wedge(show, "wedge-1").position.x, -1.0));
    QVERIFY(near(wedge(show, "wedge-1").aim.yaw_deg, 179.0));
    QCOMPARE(wedge(show, "wedge-1").aim.roll_deg, -5.0);
    QVERIFY(covers(show.stage.risers[0].outline, {-2, 3}));
    mirror(show, {"wedge-1", "voice", "ann", "riser"});
    QVERIFY(show == before);
}

void TestEdits::aligning_brings_all_to_one_line() {
    Show show = stage();
    align(show, {"wedge-1", "wedge-2", "wedge-3"}, AlignTo::left);
    for (const Loudspeaker& l : show.loudspeakers) QVERIFY(near(l.position.x, 1.0));
    align(show, {"wedge-1", "riser"}, AlignTo::back);
    QVERIFY(near(wedge(show, "wedge-1").position.y, 4.0));
    align(show, {"wedge-2", "wedge-3"}, AlignTo::middle);
    QVERIFY(near(wedge(show, "wedge-2").position.y, 1.25) && near(wedge(show, "wedge-3").position.y, 1.25));
    const Show before = show;
    align(show, {"wedge-1"}, AlignTo::front);
    QVERIFY(show == before);
}

void TestEdits::spreading_makes_gaps_equal() {
    Show show = stage();
    spread(show, {"wedge-3", "wedge-1", "wedge-2"}, SpreadAlong::across);
    QVERIFY(near(wedge(show, "wedge-2").position.x, 5.0));
    QVERIFY(near(wedge(show, "wedge-2").position.y, 1.0));
    QCOMPARE(wedge(show, "wedge-1").position.x, 1.0);
    QCOMPARE(wedge(show, "wedge-3").position.x, 9.0);
}

void TestEdits::duplicates_have_fresh_ids_and_their_own_references() {
    Show show = stage();
    const Ids added = duplicate(show, {"voice", "ann"}, {0.5, 0.0});
    QCOMPARE(added, (Ids{"ann-2", "voice-2"}));
    const Input& twin = *find_by_id(show.inputs, "voice-2");
    QCOMPARE(twin.performer, std::string("ann-2"));
    QCOMPARE(twin.channel, 2);
    QCOMPARE(twin.name, std::string("Voice 2"));
    QVERIFY(near(twin.position.x, -0.5));
    QCOMPARE(find_by_id(show.performers, "ann-2")->mix, std::string("mix"));
    QCOMPARE(find_send(show.mixes[0], "voice-2")->level_db, 97.0);
    QVERIFY(is_sound(show));
}

void TestEdits::a_duplicate_alone_joins_the_same_mixes() {
    Show show = stage();
    duplicate(show, {"wedge-1"}, {0.5, 0.0});
    QCOMPARE(show.mixes.size(), std::size_t{1});
    QCOMPARE(show.mixes[0].loudspeakers, (std::vector<std::string>{"wedge-1", "wedge-2", "wedge-4"}));
    QCOMPARE(show.mixes[0].sends.size(), std::size_t{1});
    duplicate(show, {"voice"}, {0.5, 0.0});
    QCOMPARE(find_by_id(show.inputs, "voice-2")->performer, std::string("ann"));
}

void TestEdits::extracting_leaves_nothing_dangling() {
    const Show show = stage();
    const Show part = extract(show, {"voice", "wedge-2"});
    QVERIFY(is_sound(part));
    QVERIFY(part.inputs[0].performer.empty());
    QCOMPARE(part.mixes.size(), std::size_t{1});
    QCOMPARE(part.mixes[0].loudspeakers, (std::vector<std::string>{"wedge-2"}));
    QVERIFY(extract(show, {"wedge-3"}).mixes.empty());
}

void TestEdits::inserting_into_another_show_brings_the_mix() {
    Show other;
    other.mixes.resize(1);
    other.mixes[0].id = "mix";
    other.mixes[0].name = "Drums";
    other.mixes[0].number = 1;
    insert(other, extract(stage(), {"voice", "wedge-1", "ann"}), {});
    QCOMPARE(other.mixes.size(), std::size_t{2});
    QCOMPARE(other.mixes[1].id, std::string("mix-2"));
    QCOMPARE(other.mixes[1].number, 2);
    QCOMPARE(other.performers[0].mix, std::string("mix-2"));
    QVERIFY(other.mixes[0].sends.empty());
    QVERIFY(is_sound(other));
}

void TestEdits::removing_takes_references_along() {
    Show show = stage();
    remove_objects(show, {"voice", "wedge-1", "ann"});
    QVERIFY(show.inputs.empty() && show.performers.empty());
    QVERIFY(show.mixes[0].sends.empty());
    QVERIFY(show.soundcheck[0].input.empty());
    QVERIFY(is_sound(show));
}

void TestEdits::outlines_stay_simple() {
    Show show = stage();
    QVERIFY(move_corner(show, "riser", 2, {4, 5}));
    QVERIFY(!move_corner(show, "riser", 2, {0, 3}));  // would cross
    QCOMPARE(show.stage.risers[0].outline[2].x, 4.0);
    QVERIFY(insert_corner(show, "", 0, {0, -0.5}));
    QCOMPARE(show.stage.outline.size(), std::size_t{5});
    QVERIFY(remove_corner(show, "", 1));
    QVERIFY(!move_corner(show, "nobody", 0, {0, 0}));
    QVERIFY(!move_corner(show, "riser", 9, {0, 0}));
    show.stage.outline = {{0, 0}, {1, 0}, {0, 1}};
    QVERIFY(!remove_corner(show, "", 0));
}

void TestEdits::walls_move_where_there_are_any() {
    Show show = stage();
    QVERIFY(!move_plane(show, PlaneSide::back, 7.0));
    show.stage.surfaces.left = Surface{5.0, 0.2, {}};
    QVERIFY(move_plane(show, PlaneSide::left, 5.5));
    QVERIFY(!move_plane(show, PlaneSide::left, 5.5));
    QCOMPARE(plane_of(show.stage, PlaneSide::left)->at, 5.5);
}

void TestEdits::names_and_channels_go_on_counting() {
    const Show show = stage();
    QCOMPARE(fresh_id(show, "wedge-1"), std::string("wedge-4"));
    QCOMPARE(fresh_id(show, "fill"), std::string("fill"));
    QCOMPARE(fresh_id(show, "mix"), std::string("mix-2"));
    QCOMPARE(fresh_name(show, "Wedge 1"), std::string("Wedge 4"));
    QCOMPARE(free_channel(show), 2);
}

void TestEdits::any_sequence_can_be_undone_and_redone() {
    for (int i = 0; i < sequences(); ++i) {
        std::mt19937_64 dice(static_cast<std::uint64_t>(i) + 1);
        const Show first = test::random_show(static_cast<std::uint64_t>(i) + 1, test::stage_like());
        Show show = first;
        std::vector<Change> steps;
        for (int k = 0; k < 50; ++k) {
            Show after = show;
            random_edit(after, dice);
            QVERIFY2(is_sound(after), qPrintable(QStringLiteral("seed %1, step %2").arg(i + 1).arg(k)));
            steps.push_back(difference(show, after, "step"));
            apply(show, steps.back());
            QVERIFY(show == after);
        }
        const Show last = show;
        for (auto step = steps.rbegin(); step != steps.rend(); ++step) apply(show, inverted(*step));
        QVERIFY2(show == first, qPrintable(QStringLiteral("seed %1").arg(i + 1)));
        for (const Change& step : steps) apply(show, step);
        QVERIFY2(show == last, qPrintable(QStringLiteral("seed %1").arg(i + 1)));
    }
}

HOWLMAP_TEST(TestEdits)

#include "test_edits.moc"
