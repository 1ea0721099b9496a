// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/kept_responses.h"

namespace howlmap::maps {

bool KeptResponses::Kept::is_of(const Loudspeaker& loudspeaker) const {
    return position == loudspeaker.position && aim == loudspeaker.aim && directivity == loudspeaker.directivity;
}

KeptResponses::Kept& KeptResponses::kept_of(std::size_t end, const Loudspeaker& loudspeaker) {
    Kept& kept = kept_[end];
    if (kept.is_of(loudspeaker)) return kept;
    kept.position = loudspeaker.position;
    kept.aim = loudspeaker.aim;
    kept.directivity = loudspeaker.directivity;
    kept.known = false;
    return kept;
}

void KeptResponses::connect(Field& field, const Show& show, const std::vector<const Loudspeaker*>& loudspeakers,
                            const Input& input, const MapGrid& grid, const CellList& cells) {
    const std::size_t stride = loudspeakers.size() * kColumnResponses;
    const std::size_t values = cells.tiles.size() * kTile * kColumns * stride;
    if (values * sizeof(Half) > kMostBytes) return kept_.clear();
    const Place place{show.air, show.stage, grid.step, input.transducer, input.aim, input.position.z, field.columns};
    if (!(place == place_) || loudspeakers.size() != kept_.size()) kept_.clear();
    place_ = place;
    kept_.resize(loudspeakers.size());
    values_.resize(values + kFetchedAhead);
    field.kept_stride = stride;
    for (std::size_t end = 0; end < loudspeakers.size(); ++end) {
        field.ends[end].kept = values_.data() + end * kColumnResponses;
        field.ends[end].known = kept_of(end, *loudspeakers[end]).known;
    }
}

void KeptResponses::filled() {
    for (Kept& kept : kept_) kept.known = true;
}

}  // namespace howlmap::maps
