// SPDX-License-Identifier: GPL-3.0-or-later
// What the program sets up for an object that was just placed.
#include "core/show/first_guess.h"

#include <QtTest>

#include "core/show/find.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {

Performer player(const std::string& id, Vec2 at, const std::string& mix = {}) {
    Performer p;
    p.id = id;
    p.name = id;
    p.position = at;
    p.mix = mix;
    return p;
}

Loudspeaker speaker(const std::string& id, Vec2 at, LoudspeakerKind kind = LoudspeakerKind::wedge) {
    Loudspeaker l;
    l.id = id;
    l.kind = kind;
    l.position = {at.x, at.y, 0.3};
    l.aim = {0.0, 40.0, 0.0};
    return l;
}

/// Two players three metres apart.
Show duo() {
    Show show;
    show.performers = {player("left", {1.5, 2.0}), player("right", {-1.5, 2.0})};
    return show;
}

}  // namespace

class TestFirstGuess : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void a_wedge_faces_the_nearest_and_opens_her_mix() {
        Show show = duo();
        show.loudspeakers = {speaker("w", {-1.5, 0.5})};
        guess_for_placed(show, {"w"});
        QVERIFY(std::abs(std::abs(show.loudspeakers[0].aim.yaw_deg) - 180.0) < 1e-9);  // upstage
        QCOMPARE(show.loudspeakers[0].aim.pitch_deg, 40.0);
        QCOMPARE(show.mixes.size(), std::size_t{1});
        QCOMPARE(show.mixes[0].name, std::string("right"));
        QCOMPARE(find_by_id(show.performers, "right")->mix, show.mixes[0].id);
        QVERIFY(find_by_id(show.performers, "left")->mix.empty());
    }
    void a_second_wedge_joins_the_same_mix() {
        Show show = duo();
        show.loudspeakers = {speaker("w", {-1.5, 0.5}), speaker("x", {-2.0, 0.6})};
        guess_for_placed(show, {"w", "x"});
        QCOMPARE(show.mixes.size(), std::size_t{1});
        QCOMPARE(show.mixes[0].loudspeakers, (std::vector<std::string>{"w", "x"}));
        guess_for_placed(show, {"x"});  // no second time
        QCOMPARE(show.mixes[0].loudspeakers.size(), std::size_t{2});
    }
    void house_loudspeakers_keep_their_aim_and_join_nothing() {
        Show show = duo();
        show.loudspeakers = {speaker("m", {3.0, 0.0}, LoudspeakerKind::main)};
        guess_for_placed(show, {"m"});
        QCOMPARE(show.loudspeakers[0].aim.yaw_deg, 0.0);
        QVERIFY(show.mixes.empty());
    }
    void who_hears_in_her_ears_gets_no_wedge() {
        Show show = duo();
        show.performers[1].hears = Hears::in_ear;
        show.loudspeakers = {speaker("w", {-1.5, 0.5})};
        guess_for_placed(show, {"w"});
        QVERIFY(show.mixes.empty());
    }
    void a_microphone_belongs_to_the_nearest_and_faces_her() {
        Show show = duo();
        Input input;
        input.id = "i";
        input.position = {1.5, 1.5, 1.6};
        show.inputs = {input};
        guess_for_placed(show, {"i"});
        QCOMPARE(show.inputs[0].performer, std::string("left"));
        QVERIFY(std::abs(std::abs(show.inputs[0].aim.yaw_deg) - 180.0) < 1e-9);
    }
    void who_is_named_stays() {
        Show show = duo();
        Input input;
        input.id = "i";
        input.position = {1.5, 1.5, 1.6};
        input.performer = "right";
        show.inputs = {input};
        guess_for_placed(show, {"i"});
        QCOMPARE(show.inputs[0].performer, std::string("right"));
    }
    void a_player_takes_a_free_mix_nearby_only() {
        Show show = duo();
        show.performers.clear();
        show.loudspeakers = {speaker("w", {0.0, 1.0})};
        Mix mix;
        mix.id = "m";
        mix.loudspeakers = {"w"};
        show.mixes = {mix};
        show.performers = {player("near", {0.0, 2.0}), player("far", {6.0, 6.0})};
        guess_for_placed(show, {"near", "far"});
        QCOMPARE(show.performers[0].mix, std::string("m"));
        QVERIFY(show.performers[1].mix.empty());
    }
    void an_empty_stage_gives_no_guess() {
        Show show;
        show.loudspeakers = {speaker("w", {0.0, 1.0})};
        const Show before = show;
        guess_for_placed(show, {"w", "nobody"});
        QVERIFY(show == before);
        QVERIFY(nearest_performer(show, {}) == nullptr);
    }
};

HOWLMAP_TEST(TestFirstGuess)
#include "test_first_guess.moc"
