// SPDX-License-Identifier: GPL-3.0-or-later
// Level and wash maps against the levels that the listening figures are made from.
#include <cmath>
#include <cstdio>

#include "core/maps/maps.h"
#include "tests/core/maps/obvious.h"
#include "tests/support/random.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
constexpr double kError = 0.05;

/// Largest difference between a map and the obvious level at some of its cells.
template <class Obvious>
double largest_error(const MapGrid& grid, std::uint64_t seed, Obvious obvious) {
    Random random(seed);
    double worst = 0.0;
    for (int i = 0; i < 20; ++i) {
        const int column = random.whole(0, grid.columns - 1), row = random.whole(0, grid.rows - 1);
        if (!grid.inside[grid.index(column, row)]) continue;
        const double value = static_cast<double>(grid.value[grid.index(column, row)]);
        worst = std::max(worst, std::abs(value - obvious(Vec2{grid.x(column), grid.y(row)})));
    }
    return worst;
}
}  // namespace

class LevelMap : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void agrees_with_the_ears() {
        double worst = 0.0;
        int maps = 0;
        for (std::uint64_t seed = 1; seed <= 80; ++seed) {
            const Show show = random_show(seed, stage_like());
            for (const Mix& mix : show.mixes) {
                const auto map = level_map(show, mix.id, {.step = 0.25});
                QVERIFY(map);
                QCOMPARE(map->unit, std::string("dBA"));
                if (map->silent) continue;
                const double error =
                    largest_error(*map, seed, [&](Vec2 place) { return obvious_level(show, mix.id, place); });
                if (!(error < kError)) QFAIL(qPrintable(QString("seed %1: %2 dB").arg(seed).arg(error)));
                worst = std::max(worst, error);
                ++maps;
            }
        }
        QVERIFY(maps > 50);
        std::printf("level map: %d maps, largest error %.4f dB\n", maps, worst);
    }
    void one_band() {
        const Show show = random_show(7, stage_like());
        for (const int band : {0, 17, 30}) {
            const auto map = level_map(show, show.mixes[0].id, {.step = 0.5, .band = band});
            QVERIFY(map);
            QCOMPARE(map->unit, std::string("dB"));
            if (map->silent) continue;
            QVERIFY(largest_error(*map, 7, [&](Vec2 place) {
                        return obvious_level(show, show.mixes[0].id, place, band);
                    }) < kError);
        }
    }
    void silence_and_refusals() {
        Show show = random_show(7, stage_like());
        for (Mix& mix : show.mixes) mix.sends.clear();
        const auto map = level_map(show, show.mixes[0].id, {.step = 0.5});
        QVERIFY(map && map->silent);
        QVERIFY(level_map(show, "nothing").error().reason == MapError::Reason::unknown_id);
        QVERIFY(level_map(show, show.mixes[0].id, {.hz = 100.0}).error().reason == MapError::Reason::bad_option);
    }
};

class WashMap : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void agrees_with_the_house_figures() {
        double worst = 0.0;
        int maps = 0;
        for (std::uint64_t seed = 1; seed <= 60; ++seed) {
            Show show = random_show(seed, stage_like());
            const auto map = wash_map(show, {.step = 0.5});
            QVERIFY(map);
            if (map->silent) continue;
            const double error = largest_error(*map, seed, [&](Vec2 place) { return obvious_wash(show, place); });
            if (!(error < kError)) QFAIL(qPrintable(QString("seed %1: %2 dB").arg(seed).arg(error)));
            worst = std::max(worst, error);
            ++maps;
        }
        QVERIFY(maps > 20);
        std::printf("wash map: %d maps, largest error %.4f dB\n", maps, worst);
    }
    void covers_stage_house_and_every_listener() {
        Show show = random_show(7, stage_like());
        Listener far;
        far.id = "balcony";
        far.position = {23.0, -31.0, 4.0};
        show.listeners.push_back(far);
        const auto map = wash_map(show, {.step = 0.5});
        QVERIFY(map && cell_at(*map, {23.9, -31.9}) && !cell_at(*map, {25.0, -31.0}));
        const Box2 box = bounds_of(show.stage.outline);
        QVERIFY(cell_at(*map, {(box.low.x + box.high.x) / 2, box.low.y - (box.high.y - box.low.y) + 0.5}));
    }
};

HOWLMAP_TEST(LevelMap)
HOWLMAP_TEST(WashMap)
#include "test_level_map.moc"
