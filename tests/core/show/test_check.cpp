// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/show/check.h"

#include <algorithm>

#include "tests/support/registry.h"

using namespace howlmap;

namespace {
Show two_players() {
    Show show;
    Loudspeaker wedge;
    wedge.id = wedge.name = "wedge";
    wedge.position = {0.0, 1.0, 0.3};
    show.loudspeakers = {wedge};
    Input voice;
    voice.id = voice.name = "voice";
    voice.position = {0.0, 2.0, 1.5};
    show.inputs = {voice};
    Performer ada, ben;
    ada.id = ada.name = "Ada";
    ada.position = {0.0, 2.2};
    ada.mix = "m1";
    ben = ada;
    ben.id = ben.name = "Ben";
    ben.hears = Hears::in_ear;
    ben.mix = "m2";
    show.performers = {ada, ben};
    Mix front, ears;
    front.id = front.name = "m1";
    front.loudspeakers = {"wedge"};
    front.sends = {{"voice", 95.0, {}}};
    ears.id = ears.name = "m2";
    ears.number = 2;
    show.mixes = {front, ears};
    return show;
}

std::vector<std::string> texts(const Show& show) {
    std::vector<std::string> out;
    for (const Finding& finding : findings(show)) out.push_back(finding.text);
    return out;
}

void verify_only(const Show& show, const Finding& expected) {
    const auto found = findings(show);
    QCOMPARE(found.size(), std::size_t{1});
    QCOMPARE(found[0].text, expected.text);
    QCOMPARE(found[0].ids, expected.ids);
}
}  // namespace

class TestCheck : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void aSoundShowHasNone() { QCOMPARE(texts(two_players()), std::vector<std::string>{}); }

    void outsideTheOutline() {
        Show show = two_players();
        show.loudspeakers[0].position.y = -0.5;
        verify_only(show, {"wedge is outside the stage outline.", {"wedge"}});
        show.inputs[0].position.x = 9.0;
        show.performers[1].position.x = 9.0;
        verify_only(show, {"wedge, voice and Ben are outside the stage outline.", {"wedge", "voice", "Ben"}});
    }

    void mainsStandOffStageByDesign() {
        Show show = two_players();
        Loudspeaker main = show.loudspeakers[0];
        main.id = "main";
        main.kind = LoudspeakerKind::main;
        main.position = {6.0, -1.0, 2.5};
        show.loudspeakers.push_back(main);
        QCOMPARE(texts(show), std::vector<std::string>{});
    }

    void aLineHasNoPlace() {
        Show show = two_players();
        show.inputs[0].transducer = Line{};
        show.inputs[0].position = {99.0, 99.0, 0.0};
        QCOMPARE(texts(show), std::vector<std::string>{});
    }

    void numbersTwice() {
        Show show = two_players();
        show.mixes[1].number = 1;
        verify_only(show, {"m1 and m2 have a mix number that another mix has too.", {"m1", "m2"}});
        show.mixes[1].number = 2;
        Input again = show.inputs[0];
        again.id = again.name = "fiddle";
        show.inputs.push_back(again);
        show.mixes[0].sends.push_back({"fiddle", 90.0, {}});
        verify_only(show, {"voice and fiddle have a channel number that another input has too.", {"voice", "fiddle"}});
    }

    void whoHearsWhat() {
        Show show = two_players();
        show.performers[1].mix.clear();
        const std::vector<std::string> expected{
            "m2 is a mix with neither a loudspeaker nor anyone on in-ears: nobody hears it.",
            "Ben has no mix to hear."};
        QCOMPARE(texts(show), expected);
        show.performers[1].hears = Hears::acoustic;
        verify_only(show, {expected[0], {"m2"}});
    }

    void inputsAndLoudspeakersLeftOut() {
        Show show = two_players();
        show.mixes[0].sends.clear();
        verify_only(show, {"voice is in no mix.", {"voice"}});
        show = two_players();
        Loudspeaker spare = show.loudspeakers[0];
        spare.id = "spare";
        spare.name.clear();
        show.loudspeakers.push_back(spare);
        verify_only(show, {"spare belongs to no mix and plays nothing.", {"spare"}});
    }

    void longListsAreCutShort() {
        Show show = two_players();
        for (int i = 2; i <= 7; ++i) {
            Input input = show.inputs[0];
            input.id = input.name = "in " + std::to_string(i);
            input.channel = i;
            show.inputs.push_back(input);
        }
        const auto found = findings(show);
        QCOMPARE(found.size(), std::size_t{1});
        QCOMPARE(found[0].text, std::string("in 2, in 3, in 4 and 3 more are in no mix."));
        QCOMPARE(found[0].ids.size(), std::size_t{6});
    }
};

HOWLMAP_TEST(TestCheck)
#include "test_check.moc"
