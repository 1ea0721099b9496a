// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/table_store.h"

#include <algorithm>

#include "core/maps/kernel/fine.h"

namespace howlmap::maps {
namespace {
constexpr std::size_t kMostKept = 64;  // tables of a megabyte or so

TableStore::Axis axis_of(const CapOnSphere& cap, double speed) {
    const FineGrid& grid = fine_grid();
    TableStore::Axis axis{cap_axis(cap, grid.hz, speed), {}};
    for (const int k : grid.sparse) axis.sparse.push_back(axis.fine[static_cast<std::size_t>(k)]);
    return axis;
}
}  // namespace

TableStore::Rows TableStore::directivity(const Directivity& directivity, const Sweep& sweep, double speed) {
    // Only a cap on a sphere depends on the wavelength.
    const double key = std::holds_alternative<CapOnSphere>(directivity) ? speed : 0.0;
    for (const Made& made : directivities_)
        if (made.sweep == &sweep && made.speed == key && made.from == directivity) return made.rows;
    if (directivities_.size() >= kMostKept) directivities_.erase(directivities_.begin());
    directivities_.push_back(
        {directivity, &sweep, key, std::make_shared<DirectivityRows>(directivity_rows(directivity, sweep, speed))});
    return directivities_.back().rows;
}

std::shared_ptr<const TableStore::Axis> TableStore::axis(const Directivity& directivity, double speed) {
    const auto* cap = std::get_if<CapOnSphere>(&directivity);
    if (!cap) return nullptr;
    for (const MadeAxis& made : axes_)
        if (made.speed == speed && made.from == *cap) return made.axis;
    if (axes_.size() >= kMostKept) axes_.erase(axes_.begin());
    axes_.push_back({*cap, speed, std::make_shared<Axis>(axis_of(*cap, speed))});
    return axes_.back().axis;
}

TableStore::Rows TableStore::pattern(const Input& input, const Sweep& sweep) {
    const ReceiverPattern pattern(input);
    if (!pattern.is_table()) return nullptr;
    const Directivity key = *pattern.table();
    for (const Made& made : patterns_)
        if (made.sweep == &sweep && made.from == key) return made.rows;
    if (patterns_.size() >= kMostKept) patterns_.erase(patterns_.begin());
    patterns_.push_back({key, &sweep, 0.0, std::make_shared<DirectivityRows>(pattern_rows(pattern, sweep))});
    return patterns_.back().rows;
}

std::shared_ptr<const AirRows> TableStore::air(const Show& show, const Sweep& sweep, double farthest_m) {
    MadeAir& made = air_[&sweep];
    if (made.rows && made.farthest_m >= farthest_m && made.air == show.air && made.surfaces == show.stage.surfaces)
        return made.rows;
    const double reach = farthest_m * 1.25 + 5.0;  // so that a drag does not outrun it at once
    made = {show.air, show.stage.surfaces, reach,
            std::make_shared<AirRows>(air_rows(Surroundings(show.air, show.stage.surfaces), sweep, reach))};
    return made.rows;
}

}  // namespace howlmap::maps
