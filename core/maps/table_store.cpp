// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/table_store.h"

#include <algorithm>

namespace howlmap::maps {
namespace {
constexpr std::size_t kMostKept = 64;  // tables of a megabyte or so
}

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
