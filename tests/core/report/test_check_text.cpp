// SPDX-License-Identifier: GPL-3.0-or-later
// What the check says in words about ears, house and loudspeakers, against the figures it comes from.
#include <fmt/format.h>

#include "core/analysis/analysis.h"
#include "core/listening/headroom.h"
#include "core/listening/masking.h"
#include "core/listening/quiet_stage.h"
#include "core/listening/wash.h"
#include "core/report/check_text.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// Two players with a wedge each, one of them under the bass amplifier, and a place in the house.
Show stage() {
    Show show = plain_stage(2, 2);
    show.tolerance.draws = 100;
    for (int i = 0; i < 2; ++i) {
        Performer player;
        player.id = i == 0 ? "ann" : "bea";
        player.name = i == 0 ? "Ann" : "Bea";
        player.position = show.inputs[static_cast<std::size_t>(i)].position.xy();
        player.mix = show.mixes[static_cast<std::size_t>(i)].id;
        show.performers.push_back(player);
        show.inputs[static_cast<std::size_t>(i)].performer = player.id;
        show.inputs[static_cast<std::size_t>(i)].spectrum = SpectrumName::strings;
        show.loudspeakers[static_cast<std::size_t>(i)].max_spl_db = i == 0 ? 120.0 : 101.0;
        send(show, i, i, 92.0);
    }
    Backline amp;
    amp.id = "amp";
    amp.name = "Bass amplifier";
    amp.position = {show.performers[1].position.x, show.performers[1].position.y + 1.0, 0.5};
    amp.level_1m_dba = 94.0;
    amp.spectrum = SpectrumName::bass;
    show.backline = {amp};
    Listener desk;
    desk.id = desk.name = "Desk";
    desk.position = {0.0, -10.0, 1.2};
    show.listeners = {desk};
    return show;
}

std::string told(const Show& show) { return report::check_text(show, *analyse(show)); }
bool has(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }
}  // namespace

class CheckText : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void players_are_told_what_they_cannot_hear() {
        const Show show = stage();
        const std::string text = told(show);
        int sentences = 0;
        for (const EarSpectrum& spectrum : ear_spectra(show))
            for (const MaskedRange& range : spectrum.masked) {
                const std::string line = (spectrum.performer == "ann" ? "  Ann: " : "  Bea: ") + range.sentence + "\n";
                QVERIFY2(has(text, line), (line + text).c_str());
                ++sentences;
            }
        QVERIFY(sentences > 0);
        QVERIFY2(has(text, "  Bea: Your low strings are under Bass amplifier ("), text.c_str());
    }
    void the_house_is_told_where_it_comes_from() {
        const Show show = stage();
        const auto shares = wash_shares(show, show.listeners[0].position);
        QCOMPARE(shares.size(), std::size_t{2});
        const std::string first = report::object_name(show, shares[0].loudspeaker) + " " +
                                  std::to_string(std::lround(100.0 * shares[0].share)) + " %";
        QVERIFY2(has(told(show), "    from " + first), told(show).c_str());
    }
    void the_loudspeaker_with_least_left_is_named() {
        Show show = stage();
        const auto loads = loudspeaker_loads(show);
        QVERIFY(*loads[1].headroom_db<*loads[0].headroom_db&& * loads[1].headroom_db> 0.0);
        QVERIFY2(has(told(show), report::object_name(show, loads[1].id) + " has least left: it is asked for " +
                                     std::to_string(std::lround(*loads[1].level_db)) + " dB at 1 m"),
                 told(show).c_str());
        show.loudspeakers[1].max_spl_db = 80.0;  // beyond what it can do: that is a warning
        QVERIFY(!has(told(show), "has least left"));
        QVERIFY2(has(told(show), "Look at this"), told(show).c_str());
    }
    void what_louder_costs_and_how_quiet_it_could_be() {
        const Show show = stage();
        const std::string text = told(show);
        for (const Louder& louder : cost_of_louder(show))
            if (louder.source == "amp")
                for (const LouderCost& cost : louder.performers)
                    if (cost.performer == "bea")
                        QVERIFY2(has(text, fmt::format("Bea {:.1f} dB", cost.turned_up_db)), text.c_str());
        QVERIFY2(has(text, "  Bass amplifier: "), text.c_str());
        const QuietStage quiet = quietest_stage(show);
        QVERIFY(quiet.possible);
        const auto bea = [](const std::vector<PerformerFigure>& ears) { return std::lround(*ears[1].ear_dba); };
        QVERIFY2(has(text, fmt::format("  Bea: {} dBA, then {} dBA\n", bea(quiet.ears_before), bea(quiet.ears_after))),
                 text.c_str());
        Show silent = show;
        silent.performers.pop_back();
        QVERIFY(!has(told(silent), "Quietest stage"));
    }
};

HOWLMAP_TEST(CheckText)
#include "test_check_text.moc"
