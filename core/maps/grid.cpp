// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/grid.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace howlmap {
namespace {
constexpr double kMarginAroundListeners = 1.0;  // m

int first_multiple(double low, double step) { return static_cast<int>(std::ceil(low / step - 1e-6)); }
int last_multiple(double high, double step) { return static_cast<int>(std::floor(high / step + 1e-6)); }

Box2 bounds_of_area(const std::vector<Outline>& area) {
    Outline corners;
    for (const Outline& outline : area) corners.insert(corners.end(), outline.begin(), outline.end());
    return bounds_of(corners);
}

/// Columns times rows of a box, in double so that no size overflows.
double cell_count(const Box2& box, double step) {
    const auto along = [&](double low, double high) {
        return std::floor(high / step + 1e-6) - std::ceil(low / step - 1e-6) + 1.0;
    };
    return std::max(0.0, along(box.low.x, box.high.x)) * std::max(0.0, along(box.low.y, box.high.y));
}

Outline house_box(const Show& show) {
    Box2 box = bounds_of(show.stage.outline);
    box.low.y -= box.high.y - box.low.y;
    for (const Listener& listener : show.listeners) {
        const Vec2 place = listener.position.xy();
        box.low = {std::min(box.low.x, place.x - kMarginAroundListeners),
                   std::min(box.low.y, place.y - kMarginAroundListeners)};
        box.high = {std::max(box.high.x, place.x + kMarginAroundListeners),
                    std::max(box.high.y, place.y + kMarginAroundListeners)};
    }
    return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

double step_that_fits(const Box2& box, double wanted, double cells) {
    double step = wanted;
    while (cell_count(box, step) > cells && step < 1e4)
        step = std::max(step + 0.05, 0.05 * std::round(step * 1.05 / 0.05));
    return step;
}
}  // namespace

std::vector<Outline> mapped_area(const Show& show, MapKind kind) {
    if (kind != MapKind::wash) return {show.stage.outline};
    return {show.stage.outline, house_box(show)};
}

double fitting_step(const Show& show, MapKind kind, double wanted, std::int64_t cells) {
    return step_that_fits(bounds_of_area(mapped_area(show, kind)), wanted, static_cast<double>(cells));
}

std::optional<std::size_t> cell_at(const MapGrid& grid, Vec2 place) {
    const double column = std::round(place.x / grid.step) - grid.first_column,
                 row = std::round(place.y / grid.step) - grid.first_row;
    if (!(column >= 0.0 && row >= 0.0 && column < grid.columns && row < grid.rows)) return std::nullopt;
    const std::size_t index = grid.index(static_cast<int>(column), static_cast<int>(row));
    if (!grid.inside[index]) return std::nullopt;
    return index;
}

namespace maps {
namespace {
constexpr double kOnEdge = 1e-9;  // m

struct Span {
    double low, high;
};

/// Where a line of constant y runs inside or along an outline: crossings of edges pair up. Both ways of counting a
/// corner are taken, so that a line through corners finds the area above it and the area below it.
std::vector<Span> spans_at(const Outline& outline, double y) {
    std::vector<Span> spans;
    for (const bool upper : {false, true}) {
        std::vector<double> crossings;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            Vec2 a = outline[i], b = outline[(i + 1) % outline.size()];
            if (a.y > b.y) std::swap(a, b);
            const bool crosses = upper ? a.y < y && y <= b.y : a.y <= y && y < b.y;
            if (crosses) crossings.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
        }
        std::sort(crossings.begin(), crossings.end());
        for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) spans.push_back({crossings[i], crossings[i + 1]});
    }
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vec2 a = outline[i], b = outline[(i + 1) % outline.size()];
        if (a.y == y && b.y == y) spans.push_back({std::min(a.x, b.x), std::max(a.x, b.x)});
        if (a.y == y) spans.push_back({a.x, a.x});
    }
    return spans;
}

/// A row's y may miss a corner or a level edge by rounding: the corner's own y is taken then.
double snapped(const Outline& outline, double y) {
    for (const Vec2& corner : outline)
        if (std::abs(corner.y - y) <= kOnEdge) return corner.y;
    return y;
}

const char* unit_of(const MapRequest& request) {
    const bool weighted = request.kind == MapKind::level || request.kind == MapKind::wash;
    return weighted && !request.options.band ? "dBA" : "dB";
}
}  // namespace

std::vector<std::uint8_t> cells_within(const MapGrid& grid, const Outline& outline) {
    std::vector<std::uint8_t> within(grid.index(0, grid.rows), 0);
    for (int row = 0; row < grid.rows; ++row)
        for (const Span& span : spans_at(outline, snapped(outline, grid.y(row)))) {
            const double low = std::ceil((span.low - kOnEdge) / grid.step - 1e-9),
                         high = std::floor((span.high + kOnEdge) / grid.step + 1e-9);
            const int from = static_cast<int>(std::max(low - grid.first_column, 0.0));
            const int to = static_cast<int>(std::min(high - grid.first_column, grid.columns - 1.0));
            for (int column = from; column <= to; ++column) within[grid.index(column, row)] = 1;
        }
    return within;
}

tl::expected<MapGrid, MapError> empty_grid(const Show& show, const MapRequest& request) {
    const std::vector<Outline> area = mapped_area(show, request.kind);
    const Box2 box = bounds_of_area(area);
    MapGrid grid;
    grid.kind = request.kind;
    grid.id = request.id;
    grid.unit = unit_of(request);
    grid.step = request.options.step * request.options.coarse;
    if (cell_count(box, grid.step) > static_cast<double>(kMostMapCells))
        return tl::unexpected(MapError{
            MapError::Reason::bad_option,
            fmt::format("A step of {:g} m gives more than {} cells here; the finest possible is {:g} m.", grid.step,
                        kMostMapCells, step_that_fits(box, grid.step, static_cast<double>(kMostMapCells)))});
    grid.first_column = first_multiple(box.low.x, grid.step);
    grid.first_row = first_multiple(box.low.y, grid.step);
    grid.columns = std::max(0, last_multiple(box.high.x, grid.step) - grid.first_column + 1);
    grid.rows = std::max(0, last_multiple(box.high.y, grid.step) - grid.first_row + 1);
    grid.inside.assign(grid.index(0, grid.rows), 0);
    for (const Outline& outline : area) {
        const auto within = cells_within(grid, outline);
        for (std::size_t i = 0; i < within.size(); ++i) grid.inside[i] |= within[i];
    }
    grid.value.assign(grid.inside.size(), std::numeric_limits<float>::quiet_NaN());
    grid.worst_hz = grid.value;
    return grid;
}

CellList cells_of(const MapGrid& grid) {
    CellList cells;
    for (int row = 0; row < grid.rows; row += 4)
        for (int column = 0; column < grid.columns; column += 4)
            for (int r = row; r < std::min(row + 4, grid.rows); ++r)
                for (int c = column; c < std::min(column + 4, grid.columns); ++c)
                    if (grid.inside[grid.index(c, r)]) {
                        cells.index.push_back(static_cast<std::uint32_t>(grid.index(c, r)));
                        cells.x.push_back(grid.x(c));
                        cells.y.push_back(grid.y(r));
                    }
    cells.tiles.resize((cells.index.size() + kTile - 1) / kTile);
    for (std::size_t t = 0; t < cells.tiles.size(); ++t) {
        Tile& tile = cells.tiles[t];
        tile.first = static_cast<int>(t * kTile);
        tile.cells = static_cast<int>(std::min<std::size_t>(kTile, cells.index.size() - t * kTile));
        for (std::size_t i = 0; i < kTile; ++i) {
            const std::size_t from = std::min(t * kTile + i, cells.index.size() - 1);
            tile.x[i] = cells.x[from];
            tile.y[i] = cells.y[from];
        }
    }
    return cells;
}

void set_height(CellList& cells, double z) {
    for (Tile& tile : cells.tiles) tile.z.fill(z);
}

void set_height_above_risers(CellList& cells, const Stage& stage, const MapGrid& grid, double height) {
    std::vector<double> ground(grid.inside.size(), 0.0);
    for (const Riser& riser : stage.risers) {
        const auto within = cells_within(grid, riser.outline);
        for (std::size_t i = 0; i < within.size(); ++i)
            if (within[i]) ground[i] = std::max(ground[i], riser.height_m);
    }
    for (Tile& tile : cells.tiles)
        for (std::size_t i = 0; i < kTile; ++i) {
            const std::size_t at = std::min(static_cast<std::size_t>(tile.first) + i, cells.index.size() - 1);
            tile.z[i] = ground[cells.index[at]] + height;
        }
}

std::vector<double> common_floor(const CellList& cells, const Stage& stage, const MapGrid& grid, Vec2 point) {
    std::vector<double> floor;
    for (const Riser& riser : stage.risers) {
        if (riser.height_m <= 0.0 || !covers(riser.outline, point)) continue;
        const auto within = cells_within(grid, riser.outline);
        floor.resize(cells.index.size(), 0.0);
        for (std::size_t i = 0; i < floor.size(); ++i)
            if (within[cells.index[i]]) floor[i] = std::max(floor[i], riser.height_m);
    }
    return floor;
}

}  // namespace maps
}  // namespace howlmap
