// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/maps.h"

#include "core/maps/grid.h"
#include "core/maps/mapper.h"

namespace howlmap {

MapResult make_map(const Show& show, const MapRequest& request, const Job& job) {
    if (auto wrong = maps::wrong_option(request)) return tl::unexpected(*wrong);
    maps::MapSession session;
    auto mapper = maps::mapper_for(show, request, session, job);
    if (!mapper) return tl::unexpected(mapper.error());
    auto grid = maps::empty_grid(show, request);
    if (!grid) return grid;
    if (!(*mapper)->draw(*grid, maps::Quality::full, job)) return maps::error(MapError::Reason::cancelled);
    return grid;
}

MapResult feedback_map(const Show& show, const std::string& input, const MapOptions& options, const Job& job) {
    return make_map(show, {MapKind::feedback, input, options}, job);
}
MapResult loudspeaker_map(const Show& show, const std::string& loudspeaker, const MapOptions& options, const Job& job) {
    return make_map(show, {MapKind::loudspeaker, loudspeaker, options}, job);
}
MapResult level_map(const Show& show, const std::string& mix, const MapOptions& options, const Job& job) {
    return make_map(show, {MapKind::level, mix, options}, job);
}
MapResult wash_map(const Show& show, const MapOptions& options, const Job& job) {
    return make_map(show, {MapKind::wash, {}, options}, job);
}

}  // namespace howlmap
