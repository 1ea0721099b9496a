// SPDX-License-Identifier: GPL-3.0-or-later
// The engine that a window draws from: the same numbers as a map from scratch, coarse before fine, nothing done twice,
// cancelled when asked.
#include <atomic>
#include <cmath>
#include <functional>
#include <thread>

#include "core/loop/loop_model.h"
#include "core/maps/maps.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
bool same_numbers(const MapGrid& a, const MapGrid& b) {
    const auto same = [](const std::vector<float>& x, const std::vector<float>& y) {
        return std::equal(x.begin(), x.end(), y.begin(), y.end(),
                          [](float p, float q) { return p == q || (std::isnan(p) && std::isnan(q)); });
    };
    return a.columns == b.columns && a.rows == b.rows && a.first_column == b.first_column &&
           a.first_row == b.first_row && a.step == b.step && a.unit == b.unit && a.inside == b.inside &&
           a.unstable_without == b.unstable_without && a.silent == b.silent && same(a.value, b.value) &&
           same(a.worst_hz, b.worst_hz);
}

Show quiet(std::uint64_t seed) {
    Show show = random_show(seed, stage_like());
    for (Mix& mix : show.mixes)
        for (Send& send : mix.sends) send.level_db = std::min(send.level_db, 65.0);
    return show;
}

/// The first grid that an engine tells of a show.
MapEngine::Shown first_look(MapEngine& engine, const Show& show, const MapRequest& request) {
    std::vector<MapEngine::Shown> told;
    const auto last = engine.update(show, request, {}, [&](const auto& grid) { told.push_back(grid); });
    return last && told.size() == 2 ? told.front() : nullptr;
}

/// Largest difference of two grids of the same shape in dB; infinite where only one has a value.
float largest_difference(const MapGrid& a, const MapGrid& b) {
    if (a.inside != b.inside || a.unstable_without != b.unstable_without) return INFINITY;
    float most = 0.0f;
    for (std::size_t i = 0; i < a.value.size(); ++i) {
        if (std::isnan(a.value[i]) && std::isnan(b.value[i])) continue;
        const float apart = std::abs(a.value[i] - b.value[i]);
        most = std::isnan(apart) ? INFINITY : std::max(most, apart);
    }
    return most;
}

std::string heard_input(const Show& show) {
    const LoopModel model(show);
    return model.empty() ? "" : show.inputs[static_cast<std::size_t>(model.inputs().front().index)].id;
}
}  // namespace

class Engine : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void same_numbers_as_from_scratch_while_things_move() {
        for (const std::uint64_t seed : {3, 7, 11}) {
            Show show = quiet(seed);
            MapEngine engine;
            for (int step = 0; step < 4; ++step) {
                show.loudspeakers[0].position.x += 0.05;
                if (step == 2) show.loudspeakers.back().aim.yaw_deg += 10.0;
                if (step == 3) show.air.temperature_c += 5.0;
                for (const MapRequest& request : {MapRequest{MapKind::feedback, heard_input(show), {.step = 0.25}},
                                                  MapRequest{MapKind::level, show.mixes[0].id, {.step = 0.25}},
                                                  MapRequest{MapKind::wash, "", {.step = 0.5}}}) {
                    if (request.kind == MapKind::feedback && request.id.empty()) continue;
                    const auto kept = engine.update(show, request);
                    const auto scratch = make_map(show, request);
                    QVERIFY(kept && scratch);
                    QVERIFY(same_numbers(**kept, *scratch));
                }
            }
        }
    }
    void coarse_first_and_nearly_the_same_numbers() {
        const Show show = quiet(7);
        std::vector<MapEngine::Shown> told;
        MapEngine engine;
        const auto last = engine.update(show, {MapKind::feedback, heard_input(show), {.step = 0.1}}, {},
                                        [&](const auto& grid) { told.push_back(grid); });
        QVERIFY(last);
        QCOMPARE(told.size(), std::size_t{2});
        QCOMPARE(told[1], *last);
        QVERIFY(std::abs(told[0]->step - 0.4) < 1e-12);
        // The first look may step over the top of a peak, never see one that is not there.
        int cells = 0, far = 0;
        for (int row = 0; row < told[0]->rows; ++row)
            for (int column = 0; column < told[0]->columns; ++column) {
                const auto fine = cell_at(*told[1], {told[0]->x(column), told[0]->y(row)});
                if (!told[0]->inside[told[0]->index(column, row)]) continue;
                QVERIFY(fine);
                const float under_read = told[0]->value[told[0]->index(column, row)] - told[1]->value[*fine];
                QVERIFY(under_read > -0.02f);
                far += under_read > 1.0f;
                ++cells;
            }
        QVERIFY(cells > 100);
        QVERIFY(far * 20 < cells);
    }
    /// What stays is not swept again, so a first look after many others is the one of a new engine.
    void the_first_look_keeps_what_stays() {
        Show show = quiet(7);
        MapRequest request{MapKind::feedback, heard_input(show), {.step = 0.1}};
        Input& input = *std::find_if(show.inputs.begin(), show.inputs.end(),
                                     [&](const Input& one) { return one.id == request.id; });
        const std::vector<std::function<void()>> moves{
            [] {},
            [&] { show.loudspeakers.front().position.x += 0.1; },
            [&] { show.loudspeakers.front().position.x += 0.1; },
            [&] { show.loudspeakers.back().aim.yaw_deg += 20.0; },
            [&] { show.mixes.front().sends.front().level_db -= 3.0; },
            [&] { show.loudspeakers.front().directivity = Omni{}; },
            [&] { input.position.x += 0.3; },
            [&] { input.position.z += 0.2; },
            [&] { input.aim.yaw_deg += 50.0; },
            [&] {
                input.transducer = Microphone{PatternName::hypercardioid, false, {}, {}};
            },
            [&] { show.air.temperature_c += 8.0; },
            [&] { show.stage.surfaces.floor.absorption = 0.4; },
            [&] { show.stage.outline[0].x -= 1.0; },
            [&] { request.options.band = 20; },
            [&] { request.options.band.reset(); },
            [&] { show.loudspeakers.push_back(show.loudspeakers.front()); },
            [&] {
                show.loudspeakers.back().id = "another";
                show.loudspeakers.back().position.y += 0.7;
                show.mixes.front().loudspeakers.push_back("another");
            },
            [&] { show.mixes.front().loudspeakers.pop_back(); },
        };
        MapEngine engine;
        for (std::size_t i = 0; i < moves.size(); ++i) {
            moves[i]();
            MapEngine other;
            const auto kept = first_look(engine, show, request), anew = first_look(other, show, request);
            QVERIFY2(kept && anew, qPrintable(QString("move %1").arg(i)));
            const float apart = largest_difference(*kept, *anew);
            QVERIFY2(apart < 0.03f, qPrintable(QString("move %1: %2 dB").arg(i).arg(static_cast<double>(apart))));
            const auto values =
                std::count_if(kept->value.begin(), kept->value.end(), [](float v) { return !std::isnan(v); });
            QVERIFY2(values > 100, qPrintable(QString("move %1: %2 values").arg(i).arg(values)));
        }
    }
    void a_first_look_that_was_cancelled_is_not_kept() {
        Show show = quiet(7);
        const MapRequest request{MapKind::feedback, heard_input(show), {.step = 0.05}};
        for (const int reports : {1, 2, 4}) {
            MapEngine engine, other;
            std::stop_source stop;
            std::atomic<int> seen{0};
            const Job job{stop.get_token(), [&](double) {
                              if (++seen == reports) stop.request_stop();
                          }};
            QVERIFY(!engine.update(show, request, job));
            const auto kept = first_look(engine, show, request), anew = first_look(other, show, request);
            QVERIFY(kept && anew && largest_difference(*kept, *anew) < 0.03f);
        }
    }
    void nothing_is_drawn_twice() {
        Show show = quiet(7);
        MapEngine engine;
        const MapRequest request{MapKind::feedback, heard_input(show), {.step = 0.25}};
        const auto first = engine.update(show, request);
        show.title = "another";
        show.loudspeakers[0].name = "called otherwise";
        show.marks.push_back({});
        const auto again = engine.update(show, request);
        QVERIFY(first && again);
        QCOMPARE(again->get(), first->get());
        show.loudspeakers[0].trim_db += 1.0;
        const auto louder = engine.update(show, request);
        QVERIFY(louder && louder->get() != first->get());
    }
    void a_map_of_loops_outlives_what_touches_no_loop() {
        Show show = quiet(7);
        MapEngine engine;
        const MapRequest request{MapKind::feedback, heard_input(show), {.step = 0.25}};
        const auto first = engine.update(show, request);
        show.performers.clear();
        show.listeners.push_back({});
        show.tolerance.draws += 1;
        show.stage.room = Room{900.0, 1.7, {}};
        show.inputs[0].channel += 5;
        const auto again = engine.update(show, request);
        QVERIFY(first && again);
        QCOMPARE(again->get(), first->get());
        const auto scratch = make_map(show, request);
        QVERIFY(scratch && same_numbers(**again, *scratch));
        show.stage.outline[0].x -= 1.0;
        const auto wider = engine.update(show, request);
        QVERIFY(wider && wider->get() != first->get());
    }
    void cancelled_when_asked() {
        const Show show = quiet(7);
        for (const MapRequest& request : {MapRequest{MapKind::feedback, heard_input(show), {.step = 0.02}},
                                          MapRequest{MapKind::level, show.mixes[0].id, {.step = 0.02}}}) {
            std::stop_source stop;
            MapEngine engine;
            std::atomic<int> reports{0};
            Job job{stop.get_token(), [&](double fraction) {
                        QVERIFY(fraction >= 0.0 && fraction <= 1.0);
                        if (++reports == 3) stop.request_stop();
                    }};
            const auto map = engine.update(show, request, job);
            QVERIFY2(reports >= 3, qPrintable(QString("%1 reports").arg(reports.load())));
            QVERIFY(!map && map.error().reason == MapError::Reason::cancelled);
            QVERIFY(!make_map(show, request, {stop.get_token(), {}}));
        }
    }
    void refusals_come_through() {
        MapEngine engine;
        const auto map = engine.update(quiet(7), {MapKind::feedback, "nothing", {}});
        QVERIFY(!map && map.error().reason == MapError::Reason::unknown_id);
    }
};

HOWLMAP_TEST(Engine)
#include "test_engine.moc"
