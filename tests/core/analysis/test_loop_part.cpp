// SPDX-License-Identifier: GPL-3.0-or-later
#include <functional>

#include "core/analysis/analysis.h"
#include "core/report/analysis_json.h"
#include "core/show/loop_part.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
Show a_show(std::uint64_t seed) {
    Show show = random_show(seed, stage_like());
    show.tolerance.draws = 20;
    return show;
}

/// Margins, rings, pairs and draws as text, without what else a result says.
std::string loops_text(AnalysisResult result) {
    result.title = "";
    result.verdict = Verdict::holds;
    result.performers.clear();
    result.house.clear();
    result.warnings.clear();
    return analysis_json(result);
}

/// Everything that no loop depends on.
void change_the_rest(Show& show) {
    show.title += "!";
    show.system.target_margin_db += 2.0;
    show.system.house_target_dba -= 3.0;
    show.stage.outline.push_back({0.5, -0.5});
    show.performers.clear();
    show.backline.clear();
    show.listeners.clear();
    for (Loudspeaker& unit : show.loudspeakers) {
        unit.name = unit.notes = "other";
        unit.kind = LoudspeakerKind::main;
        unit.max_spl_db = 90.0;
    }
    for (Input& input : show.inputs) {
        input.name = input.notes = input.stand = "other";
        input.channel += 3;
        input.spectrum = SpectrumName::bass;
        input.performer = "";
        input.phantom = input.di = true;
    }
    for (Mix& mix : show.mixes) {
        mix.name = "other";
        mix.number += 7;
    }
}
}  // namespace

class LoopPart : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void alone_it_gives_the_same_figures() {
        for (std::uint64_t seed = 1; seed <= 12; ++seed) {
            const Show show = a_show(seed);
            QCOMPARE(loops_text(*analyse(loop_part(show))), loops_text(*analyse(show)));
        }
    }
    void what_no_loop_depends_on_is_not_in_it() {
        const Show show = a_show(1);
        Show other = show;
        change_the_rest(other);
        QVERIFY(!(other == show));
        QVERIFY(loop_part(other) == loop_part(show));
    }
    void an_earlier_result_spares_the_work_and_changes_nothing() {
        for (std::uint64_t seed = 1; seed <= 4; ++seed) {
            const Show show = a_show(seed);
            Show other = show;
            change_the_rest(other);
            AnalysisOptions options;
            options.earlier = std::make_shared<const AnalysisResult>(*analyse(show));
            QCOMPARE(analysis_json(*analyse(other, options)), analysis_json(*analyse(other)));
        }
    }
    void what_they_depend_on_is() {
        const Show show = a_show(1);
        const std::vector<std::function<void(Show&)>> changes{
            [](Show& s) { s.air.temperature_c += 1.0; },
            [](Show& s) { s.system.latency_ms += 1.0; },
            [](Show& s) { s.tolerance.seed += 1; },
            [](Show& s) { s.stage.surfaces.floor.absorption = 0.77; },
            [](Show& s) {
                s.stage.room = Room{900.0, 1.7, {}};
            },
            [](Show& s) {
                s.stage.risers.push_back({"new", "", {{0, 0}, {1, 0}, {1, 1}}, 0.3, {}});
            },
            [](Show& s) { s.loudspeakers.front().position.x += 0.1; },
            [](Show& s) { s.loudspeakers.front().trim_db += 1.0; },
            [](Show& s) { s.loudspeakers.front().response.low_hz = 333.0; },
            [](Show& s) { s.inputs.front().position.z += 0.1; },
            [](Show& s) { s.inputs.front().source_spl_db += 1.0; },
            [](Show& s) {
                s.inputs.front().equaliser.push_back({500.0, 2.0, -3.0, {}});
            },
            [](Show& s) { s.inputs.erase(s.inputs.begin()); },
            [](Show& s) { s.mixes.front().graphic_eq[12] = -4.5; },
            [](Show& s) {
                s.mixes.front().sends.push_back({s.inputs.back().id, 61.0, {}});
            },
            [](Show& s) { s.mixes.front().delay_ms += 1.0; },
        };
        for (const auto& change : changes) {
            Show other = show;
            change(other);
            QVERIFY(!(loop_part(other) == loop_part(show)));
        }
    }
};
HOWLMAP_TEST(LoopPart)
#include "test_loop_part.moc"
