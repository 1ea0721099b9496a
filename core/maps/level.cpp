// SPDX-License-Identifier: GPL-3.0-or-later
// Level map of a mix and wash map of the stage: energies of all paths at ear height, third-octave by third-octave.
#include <algorithm>

#include "core/air/weighting.h"
#include "core/listening/transfer.h"
#include "core/maps/band_weights.h"
#include "core/maps/ends.h"
#include "core/maps/mapper.h"
#include "core/maps/run.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::maps {
namespace {
constexpr double kEarHeight = 1.6;  // m above the highest riser

class LevelMapper : public Mapper {
  public:
    LevelMapper(const Show& show, const Mix* mix, std::optional<int> band, TableStore& store)
        : show_(show), store_(store) {
        const ChainEnergies chains(show);
        for (const Loudspeaker& loudspeaker : show.loudspeakers) {
            if (!mix && !makes_wash(loudspeaker.kind)) continue;
            const BandEnergies energies =
                mix ? energies_of(show, chains, loudspeaker, *mix) : energies_of(show, chains, loudspeaker);
            const BandWeights weights = band_weights(energies, band);
            if (std::all_of(weights.begin(), weights.end(), [](float w) { return w == 0.0f; })) continue;
            loudspeakers_.push_back(&loudspeaker);
            weights_.push_back(weights);
        }
    }

    bool draw(MapGrid& grid, Quality, const Job& job) override {
        grid.silent = loudspeakers_.empty();
        if (grid.silent) return !job.cancelled();
        CellList cells = cells_of(grid);
        set_height_above_risers(cells, show_.stage, grid, kEarHeight);
        Ends ends(show_, grid, cells, kBandSweep, store_);
        for (std::size_t i = 0; i < loudspeakers_.size(); ++i)
            ends.add_loudspeaker(*loudspeakers_[i], 1.0, nullptr).weights = weights_[i].data();
        const auto air = ends.air();
        EnergyField field;
        field.ends = ends.all();
        field.air = air.get();
        const std::vector<float> energies = run_energies(field, cells, job);
        if (job.cancelled()) return false;
        for (std::size_t i = 0; i < energies.size(); ++i)
            if (energies[i] > 0.0f) grid.value[cells.index[i]] = 10.0f * std::log10(energies[i]);
        return true;
    }

  private:
    const Show& show_;
    TableStore& store_;
    std::vector<const Loudspeaker*> loudspeakers_;
    std::vector<BandWeights> weights_;
};
}  // namespace

MapperResult level_mapper(const Show& show, const MapRequest& request, MapSession& session, const Job&) {
    const Mix* mix = nullptr;
    if (request.kind == MapKind::level) {
        mix = find_by_id(show.mixes, request.id);
        if (!mix) return error(MapError::Reason::unknown_id, "There is no mix \"" + request.id + "\".");
    }
    return std::make_unique<LevelMapper>(show, mix, request.options.band, session.store);
}

}  // namespace howlmap::maps
