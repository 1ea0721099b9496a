// SPDX-License-Identifier: GPL-3.0-or-later
// Feedback and loudspeaker maps against the obvious way, on random shows.
#include <cmath>
#include <cstdio>

#include "core/loop/stability.h"
#include "core/maps/maps.h"
#include "core/show/find.h"
#include "core/units/bands.h"
#include "tests/core/maps/obvious.h"
#include "tests/support/random.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
constexpr double kKernelError = 0.05;  // dB at every cell
constexpr double kPeakError = 0.1;     // dB in 99 of 100 cells

Vec2 place_of(const MapGrid& grid, std::size_t index) {
    const int columns = grid.columns;
    return {grid.x(static_cast<int>(index) % columns), grid.y(static_cast<int>(index) / columns)};
}

std::vector<std::size_t> some_cells(const MapGrid& grid, int count, Random& random) {
    std::vector<std::size_t> inside, chosen;
    for (std::size_t i = 0; i < grid.inside.size(); ++i)
        if (grid.inside[i]) inside.push_back(i);
    for (int i = 0; i < count && !inside.empty(); ++i) chosen.push_back(random.one_of(inside));
    return chosen;
}

/// A show with its loops closed, sends as loud as on a quiet stage.
Show drawn(std::uint64_t seed) {
    Show show = random_show(seed, stage_like());
    for (Mix& mix : show.mixes)
        for (Send& send : mix.sends) send.level_db = std::min(send.level_db, 100.0);
    return show;
}

/// One with a loop that is stable without its last input.
Show stable_one() {
    Show show = drawn(7);
    for (Mix& mix : show.mixes)
        for (Send& send : mix.sends) send.level_db = std::min(send.level_db, 70.0);
    return show;
}

std::string an_input_with_loop(const Show& show) {
    const LoopModel model(show);
    return model.empty() ? "" : show.inputs[static_cast<std::size_t>(model.inputs().back().index)].id;
}

/// The nearest who hears a mix of the loudspeaker.
const Performer* listener_for(const Show& show, const Loudspeaker& loudspeaker) {
    const Performer* nearest = nullptr;
    double least = 1e9;
    for (const Performer& performer : show.performers) {
        const Mix* mix = find_by_id(show.mixes, performer.mix);
        if (performer.hears != Hears::loudspeakers || !mix) continue;
        if (std::find(mix->loudspeakers.begin(), mix->loudspeakers.end(), loudspeaker.id) == mix->loudspeakers.end())
            continue;
        const Vec3 ear{performer.position.x, performer.position.y,
                       riser_height_at(show.stage, performer.position) + performer.ear_height_m};
        if (length(ear - loudspeaker.position) >= least) continue;
        least = length(ear - loudspeaker.position);
        nearest = &performer;
    }
    return nearest;
}
}  // namespace

class FeedbackMap : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void agrees_with_the_obvious_way_at_every_cell() {
        int cells = 0, unstable = 0;
        double worst = 0.0;
        for (std::uint64_t seed = 1; seed <= 40; ++seed) {
            const Show show = drawn(seed);
            const std::string input = an_input_with_loop(show);
            if (input.empty()) continue;
            const auto map = feedback_map(show, input, {.step = 0.25});
            QVERIFY(map);
            unstable += map->unstable_without;
            if (map->unstable_without) continue;
            Random random(seed);
            for (const std::size_t cell : some_cells(*map, 12, random)) {
                const double margin = ObviousFeedback(show, input, place_of(*map, cell))
                                          .margin_db(static_cast<double>(map->worst_hz[cell]));
                const double error = std::abs(static_cast<double>(map->value[cell]) - margin);
                worst = std::max(worst, error);
                if (error > kKernelError)
                    QFAIL(qPrintable(QString("seed %1, cell %2: %3 dB off at %4 Hz")
                                         .arg(seed)
                                         .arg(cell)
                                         .arg(error)
                                         .arg(map->worst_hz[cell])));
                ++cells;
            }
        }
        QVERIFY(cells > 300);
        std::printf("feedback map: %d cells, largest error %.4f dB, %d shows ring without the input\n", cells, worst,
                    unstable);
    }

    void cabinets_at_the_limits_of_a_file() {
        constexpr double least = 5e-324;
        for (const Coverage& cabinet :
             {Coverage{least, 60.0, 0.5, 0.35, 24.0, {}}, Coverage{90.0, least, 50.0, 0.35, 60.0, {}},
              Coverage{least, least, least, least, 24.0, {}}}) {
            Show show = stable_one();
            for (Loudspeaker& unit : show.loudspeakers) unit.directivity = cabinet;
            const std::string input = an_input_with_loop(show);
            const auto map = feedback_map(show, input, {.step = 0.5});
            QVERIFY(map && !map->unstable_without);
            Random random(1);
            for (const std::size_t cell : some_cells(*map, 12, random)) {
                const double margin = ObviousFeedback(show, input, place_of(*map, cell))
                                          .margin_db(static_cast<double>(map->worst_hz[cell]));
                QVERIFY(std::abs(static_cast<double>(map->value[cell]) - margin) < kKernelError);
            }
        }
    }

    void finds_the_peak() {
        int cells = 0, missed = 0;
        double worst = 0.0;
        for (std::uint64_t seed = 201; seed <= 240; ++seed) {
            RandomShowOptions options = stage_like();
            options.most_inputs = 3;
            options.most_loudspeakers = 3;
            const Show show = random_show(seed, options);
            const std::string input = an_input_with_loop(show);
            if (input.empty()) continue;
            const auto map = feedback_map(show, input, {.step = 0.5});
            QVERIFY(map);
            if (map->unstable_without) continue;
            Random random(seed);
            for (const std::size_t cell : some_cells(*map, 4, random)) {
                const Peak peak = smallest_margin(ObviousFeedback(show, input, place_of(*map, cell)), 384);
                const double under_read = static_cast<double>(map->value[cell]) - peak.margin_db;
                worst = std::max(worst, under_read);
                missed += under_read > kPeakError;
                ++cells;
            }
        }
        std::printf("peaks: %d cells, %d under-read by more than 0.1 dB, worst %.3f dB\n", cells, missed, worst);
        QVERIFY(cells > 120);
        QVERIFY(missed * 100 <= cells);
    }

    void one_band_and_one_frequency() {
        const Show show = stable_one();
        const std::string input = an_input_with_loop(show);
        const auto band = feedback_map(show, input, {.step = 0.5, .band = 21});
        const auto tone = feedback_map(show, input, {.step = 0.5, .hz = 1234.5});
        QVERIFY(band && tone && !band->unstable_without);
        Random random(3);
        for (const std::size_t cell : some_cells(*band, 10, random)) {
            const ObviousFeedback obvious(show, input, place_of(*band, cell));
            double least = 1e9;
            const double low = third_octave_centre(21) * std::pow(10.0, -0.05),
                         high = third_octave_centre(21) * std::pow(10.0, 0.05);
            for (int i = 0; i <= 400; ++i)
                least = std::min(least, obvious.margin_db(low * std::pow(high / low, i / 400.0)));
            QVERIFY(std::abs(static_cast<double>(band->value[cell]) - least) < 0.1);
            QVERIFY(band->worst_hz[cell] > low * 0.999f && band->worst_hz[cell] < high * 1.001f);
            QVERIFY(std::abs(static_cast<double>(tone->value[cell]) - obvious.margin_db(1234.5)) < kKernelError);
            QVERIFY(std::abs(tone->worst_hz[cell] - 1234.5f) < 0.01f);
        }
    }

    void a_stage_that_rings_without_the_input_says_so() {
        Show show = stable_one();
        const std::string input = an_input_with_loop(show);
        Input other = *find_by_id(show.inputs, input);
        other.id = "other";
        other.position = show.loudspeakers[0].position + Vec3{0.0, 0.2, 0.1};
        show.inputs.push_back(other);
        for (Mix& mix : show.mixes)
            if (!mix.loudspeakers.empty()) mix.sends.push_back({"other", 130.0, {}});
        const auto map = feedback_map(show, input, {.step = 0.5});
        QVERIFY(map && map->unstable_without && !map->silent);
        for (const float value : map->value) QVERIFY(std::isnan(value));
        const std::string text = map_csv(*map);
        QVERIFY(text.find(",,\n") != std::string::npos);
        QVERIFY(text.find("nan") == std::string::npos);
    }

    void an_input_that_nobody_sends_is_silent() {
        Show show = stable_one();
        const std::string input = an_input_with_loop(show);
        for (Mix& mix : show.mixes) std::erase_if(mix.sends, [&](const Send& send) { return send.input == input; });
        const auto map = feedback_map(show, input, {.step = 0.5});
        QVERIFY(map && map->silent && !map->unstable_without);
    }

    void what_cannot_be_mapped_is_refused() {
        Show show = drawn(7);
        QVERIFY(feedback_map(show, "nothing").error().reason == MapError::Reason::unknown_id);
        Input line;
        line.id = "keys";
        line.transducer = Line{};
        show.inputs.push_back(line);
        QVERIFY(feedback_map(show, "keys").error().reason == MapError::Reason::not_possible);
        const std::string input = an_input_with_loop(show);
        for (const MapOptions& options :
             {MapOptions{.step = 0.019}, MapOptions{.step = 1.1}, MapOptions{.step = std::nan("")},
              MapOptions{.coarse = 0}, MapOptions{.band = 31}, MapOptions{.hz = 19.0},
              MapOptions{.band = 3, .hz = 100.0}}) {
            const auto map = feedback_map(show, input, options);
            QVERIFY(!map && map.error().reason == MapError::Reason::bad_option && !map.error().message.empty());
        }
        QVERIFY(feedback_map(show, input, {.step = 0.02}));
        show.stage.outline = {{-1000, -1000}, {1000, -1000}, {1000, 1000}, {-1000, 1000}};
        const auto huge = feedback_map(show, input, {.step = 0.05});
        QVERIFY(!huge && huge.error().reason == MapError::Reason::bad_option);
    }
};

class LoudspeakerMap : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void agrees_with_the_obvious_way_at_every_cell() {
        int cells = 0;
        double worst = 0.0;
        for (std::uint64_t seed = 1; seed <= 40; ++seed) {
            const Show show = drawn(seed);
            for (const Loudspeaker& loudspeaker : show.loudspeakers) {
                const Performer* performer = listener_for(show, loudspeaker);
                const auto map = loudspeaker_map(show, loudspeaker.id, {.step = 0.5});
                QCOMPARE(map.has_value(), performer != nullptr);
                if (!map || map->unstable_without || map->silent) continue;
                Random random(seed);
                for (const std::size_t cell : some_cells(*map, 6, random)) {
                    const ObviousLoudspeaker obvious(show, loudspeaker.id, performer->id, place_of(*map, cell));
                    const double error = std::abs(static_cast<double>(map->value[cell]) -
                                                  obvious.margin_db(static_cast<double>(map->worst_hz[cell])));
                    worst = std::max(worst, error);
                    if (error > kKernelError)
                        QFAIL(qPrintable(QString("seed %1, %2, cell %3: %4 dB off at %5 Hz")
                                             .arg(seed)
                                             .arg(loudspeaker.id.c_str())
                                             .arg(cell)
                                             .arg(error)
                                             .arg(map->worst_hz[cell])));
                    ++cells;
                }
            }
        }
        QVERIFY(cells > 100);
        std::printf("loudspeaker map: %d cells, largest error %.4f dB\n", cells, worst);
    }

    void unknown_and_unheard_loudspeakers_are_refused() {
        Show show = drawn(7);
        QVERIFY(loudspeaker_map(show, "nothing").error().reason == MapError::Reason::unknown_id);
        show.performers.clear();
        QVERIFY(loudspeaker_map(show, show.loudspeakers[0].id).error().reason == MapError::Reason::not_possible);
    }
};

HOWLMAP_TEST(FeedbackMap)
HOWLMAP_TEST(LoudspeakerMap)
#include "test_feedback_map.moc"
