// SPDX-License-Identifier: GPL-3.0-or-later
// Cells: where they lie, which are inside, the text of the CSV file.
#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

#include "core/maps/grid.h"
#include "tests/support/random.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
Show on(const Outline& outline) {
    Show show;
    show.stage.outline = outline;
    return show;
}
MapGrid grid_of(const Show& show, double step) {
    return *maps::empty_grid(show, {MapKind::feedback, "", {.step = step}});
}
}  // namespace

class Grid : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void cells_lie_at_whole_multiples_and_edges_count() {
        const MapGrid grid = grid_of(on({{-0.15, 0.0}, {0.15, 0.0}, {0.15, 0.1}, {-0.15, 0.1}}), 0.05);
        QCOMPARE(grid.columns, 7);
        QCOMPARE(grid.rows, 3);
        QCOMPARE(grid.x(0), -0.15);
        QCOMPARE(grid.x(6), 0.15);
        QVERIFY(std::all_of(grid.inside.begin(), grid.inside.end(), [](auto in) { return in == 1; }));
    }
    void inside_agrees_with_the_polygon() {
        Random random(11);
        for (int i = 0; i < 50; ++i) {
            Outline outline;  // a star: simple, with corners in and out, some of them on cells
            const int corners = random.whole(3, 12);
            for (int k = 0; k < corners; ++k) {
                const double angle = 2.0 * kPi * k / corners, radius = random.between(0.8, 4.0);
                outline.push_back({std::round(radius * std::cos(angle) * 10.0) / 10.0,
                                   std::round(radius * std::sin(angle) * 10.0) / 10.0});
            }
            if (!is_simple(outline)) continue;
            const MapGrid grid = grid_of(on(outline), 0.1);
            for (int row = 0; row < grid.rows; ++row)
                for (int column = 0; column < grid.columns; ++column) {
                    const Vec2 place{grid.x(column), grid.y(row)};
                    const bool inside = covers(outline, place), marked = grid.inside[grid.index(column, row)] != 0;
                    // Boost's test has no tolerance: a cell on a slanting edge may fall to either side.
                    const bool on_edge = length(nearest_inside(outline, place) - place) < 1e-9;
                    QVERIFY(inside == marked || (marked && on_edge));
                }
        }
    }
    void tiles_hold_every_cell_once() {
        const MapGrid grid = grid_of(on({{-1.0, 0.0}, {1.3, 0.0}, {0.2, 2.1}}), 0.05);
        const maps::CellList cells = maps::cells_of(grid);
        std::set<std::uint32_t> seen(cells.index.begin(), cells.index.end());
        QCOMPARE(seen.size(), cells.index.size());
        QCOMPARE(static_cast<long>(seen.size()),
                 static_cast<long>(std::count(grid.inside.begin(), grid.inside.end(), 1)));
        int held = 0;
        for (const maps::Tile& tile : cells.tiles) held += tile.cells;
        QCOMPARE(static_cast<std::size_t>(held), seen.size());
    }
    void a_coarse_grid_is_every_fourth_cell() {
        const Show show = on({{-1.03, 0.02}, {1.3, 0.0}, {1.2, 2.1}});
        const MapGrid fine = grid_of(show, 0.05);
        const MapGrid coarse = *maps::empty_grid(show, {MapKind::feedback, "", {.step = 0.05, .coarse = 4}});
        QCOMPARE(coarse.step, 0.2);
        for (int row = 0; row < coarse.rows; ++row)
            for (int column = 0; column < coarse.columns; ++column) {
                const auto there = cell_at(fine, {coarse.x(column), coarse.y(row)});
                QCOMPARE(there.has_value(), coarse.inside[coarse.index(column, row)] != 0);
            }
    }
    void risers_under_cells() {
        Show show = on({{-2, 0}, {2, 0}, {2, 2}, {-2, 2}});
        Riser low, high;
        low.outline = {{-1, 0}, {1, 0}, {1, 1}, {-1, 1}};
        low.height_m = 0.2;
        high.outline = {{-0.5, 0}, {0.5, 0}, {0.5, 1}, {-0.5, 1}};
        high.height_m = 0.4;
        show.stage.risers = {high, low};
        const MapGrid grid = grid_of(show, 0.1);
        maps::CellList cells = maps::cells_of(grid);
        maps::set_height_above_risers(cells, show.stage, grid, 1.6);
        for (const Vec2& from : {Vec2{0.0, 0.5}, Vec2{0.8, 0.5}, Vec2{1.5, 0.5}}) {
            const auto floor = maps::common_floor(cells, show.stage, grid, from);
            for (std::size_t i = 0; i < cells.index.size(); ++i) {
                const Vec2 place{cells.x[i], cells.y[i]};
                QCOMPARE(cells.tiles[i / 16].z[i % 16], riser_height_at(show.stage, place) + 1.6);
                QCOMPARE(floor.empty() ? 0.0 : floor[i], common_riser_height(show.stage, from, place));
            }
        }
    }
    void nearest_cell() {
        const MapGrid grid = grid_of(on({{-1, 0}, {1, 0}, {1, 1}, {-1, 1}}), 0.25);
        QCOMPARE(*cell_at(grid, {-1.1, 0.1}), grid.index(0, 0));
        QCOMPARE(*cell_at(grid, {0.9, 0.6}), grid.index(8, 2));
        QVERIFY(!cell_at(grid, {1.2, 0.5}));
        QVERIFY(!cell_at(grid, {std::nan(""), 0.5}));
    }
    void csv_text() {
        MapGrid grid = grid_of(on({{-0.05, 0}, {0.05, 0}, {0.05, 0.05}, {-0.05, 0.05}}), 0.05);
        for (std::size_t i = 0; i < grid.value.size(); ++i) grid.value[i] = 0.25f * static_cast<float>(i) - 0.25f;
        grid.worst_hz[1] = 98.5f;
        grid.value[2] = std::numeric_limits<float>::quiet_NaN();
        const std::string expected =
            "x_m,y_m,value,worst_hz\n-0.05,0,-0.25,\n0,0,0,98.5\n0.05,0,,\n-0.05,0.05,0.5,\n0,0.05,0.75,\n0.05,0.05,1,"
            "\n";
        QCOMPARE(map_csv(grid), expected);
    }
    void a_step_that_fits() {
        const Show stage = on({{-4, 0}, {4, 0}, {4, 5}, {-4, 5}});
        QCOMPARE(fitting_step(stage, MapKind::feedback, 0.05), 0.05);
        const Show huge = on({{-400, 0}, {400, 0}, {400, 500}, {-400, 500}});
        const double step = fitting_step(huge, MapKind::feedback, 0.05);
        const MapGrid grid = grid_of(huge, step);
        QVERIFY(grid.columns * grid.rows <= 250'000);
    }
};

HOWLMAP_TEST(Grid)
#include "test_grid.moc"
