// SPDX-License-Identifier: GPL-3.0-or-later
// Loudspeaker map: one loudspeaker moved over the stage, aimed at its listener and made as loud at her ear as now. The
// loop is opened at the mix that she hears: T(f) = k (U + sum of z_c(f) H(c, cell)), where neither z nor U depends on
// the cell, and k brings the level at her ear back.
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/loop/loop_model.h"
#include "core/loop/stability.h"
#include "core/maps/band_weights.h"
#include "core/maps/ends.h"
#include "core/maps/loop_drives.h"
#include "core/maps/mapper.h"
#include "core/maps/run.h"
#include "core/show/find.h"

namespace howlmap::maps {
namespace {
bool feeds(const Mix& mix, const Loudspeaker& loudspeaker) {
    return std::find(mix.loudspeakers.begin(), mix.loudspeakers.end(), loudspeaker.id) != mix.loudspeakers.end();
}

struct Hearing {
    const Performer* performer = nullptr;
    const Mix* mix = nullptr;
};

/// The nearest performer who hears a mix that the loudspeaker carries.
Hearing listener_of(const Show& show, const Loudspeaker& loudspeaker) {
    Hearing nearest;
    double least = std::numeric_limits<double>::infinity();
    for (const Performer& performer : show.performers) {
        const Mix* mix = find_by_id(show.mixes, performer.mix);
        if (performer.hears != Hears::loudspeakers || !mix || !feeds(*mix, loudspeaker)) continue;
        const double distance = length(ear_of(show, performer) - loudspeaker.position);
        if (distance >= least) continue;
        least = distance;
        nearest = {&performer, mix};
    }
    return nearest;
}

class LoudspeakerMapper : public Mapper {
  public:
    LoudspeakerMapper(const Show& show, const Loudspeaker& loudspeaker, const Hearing& hearing, const Range& range,
                      MapSession& session, const Job& job)
        : show_(show),
          loudspeaker_(loudspeaker),
          range_(range),
          store_(session.store),
          loops_(session.loops),
          ear_(ear_of(show, *hearing.performer)) {
        loops_.update(show, store_, job);
        bus_ = position(loops_.model().buses(), static_cast<int>(hearing.mix - show.mixes.data()));
        speaker_ = position(loops_.model().speakers(), static_cast<int>(&loudspeaker - show.loudspeakers.data()));
        silent_ = bus_ < 0 || speaker_ < 0;
        if (silent_ || job.cancelled()) return;
        unstable_ = rings_without(*hearing.mix, job);
        if (unstable_) return;
        set_levels(*hearing.mix);
    }

    bool draw(MapGrid& grid, Quality quality, const Job& job) override {
        if (!job.cancelled() && !silent_ && !unstable_) set_drives(quality, job);
        if (job.cancelled()) return false;  // perhaps before everything was ready
        grid.silent = silent_;
        grid.unstable_without = unstable_;
        if (silent_ || unstable_) return true;
        CellList cells = cells_of(grid);
        set_height(cells, loudspeaker_.position.z);
        const CellEnd cell{.sounds = true,
                           .frame = frame_of(loudspeaker_.aim),
                           .aimed = true,
                           .target = ear_,
                           .roll_deg = loudspeaker_.aim.roll_deg};
        const std::vector<float> factors = make_up(grid, cells, cell, job);
        Ends ends(show_, grid, cells, kSwept, store_);
        for (const LoopModel::In& in : loops_.model().inputs())
            ends.add_input(show_.inputs[static_cast<std::size_t>(in.index)], loudspeaker_.directivity);
        const auto air = ends.air();
        const double speed = loops_.speed();
        const std::vector<const Directivity*> directivities(loops_.model().inputs().size(), &loudspeaker_.directivity);
        DrivenField driven(ends.all(), directivities, drives_, store_, speed);
        driven.field.cell = cell;
        driven.set_air(*air);
        return run_field(driven.field, cells, speed, factors, grid, job);
    }

  private:
    void set_drives(Quality quality, const Job& job) {
        DriveFunction function = loudspeaker_drives(loops_, speaker_, bus_);
        if (quality == Quality::quick) {
            drives_ = tabulate_quickly(function, range_, loops_.speed(), job);
            return;
        }
        const std::vector<const Directivity*> directivities(function.ends, &loudspeaker_.directivity);
        function.axes = axes_of(directivities, store_, loops_.speed());
        drives_ = tabulate(function, range_, loops_.speed(), job);
    }

    template <class List>
    static int position(const List& list, int index) {
        const auto found =
            std::find_if(list.begin(), list.end(), [&](const auto& item) { return item.index == index; });
        return found == list.end() ? -1 : static_cast<int>(found - list.begin());
    }

    bool rings_without(const Mix& mix, const Job& job) const {
        Show rest = show_;
        std::erase_if(rest.mixes, [&](const Mix& other) { return other.id == mix.id; });
        const auto margin = stability_of(rest, false, job).margin_db;
        return margin && *margin < 0.0;
    }

    /// A-weighted energies of the mix at the ear as drawn, and what the moved loudspeaker sends out.
    void set_levels(const Mix& mix) {
        const ChainEnergies chains(show_);
        for (const Loudspeaker& other : show_.loudspeakers) {
            const double energy =
                a_weighted(energies_of(show_, chains, other, mix) * path_energies(show_, other, ear_));
            (&other == &loudspeaker_ ? own_ : others_) += energy;
        }
        weights_ = band_weights(energies_of(show_, chains, loudspeaker_, mix), std::nullopt);
    }

    /// k squared by cell: energy at the ear now over energy there with the loudspeaker at the cell.
    std::vector<float> make_up(const MapGrid& grid, const CellList& cells, const CellEnd& cell, const Job& job) const {
        Ends ears(show_, grid, cells, kBandSweep, store_);
        ears.add_ear(ear_, loudspeaker_.directivity).weights = weights_.data();
        const auto air = ears.air();
        EnergyField field;
        field.ends = ears.all();
        field.cell = cell;
        field.air = air.get();
        std::vector<float> factors = run_energies(field, cells, {.stop = job.stop, .progress = {}});
        for (float& factor : factors) {
            const double moved = others_ + static_cast<double>(factor);
            factor = moved > 0.0 ? static_cast<float>((others_ + own_) / moved) : 1.0f;
        }
        return factors;
    }

    const Show& show_;
    const Loudspeaker& loudspeaker_;
    Range range_;
    TableStore& store_;
    LoopTable& loops_;
    Vec3 ear_;
    int bus_ = -1, speaker_ = -1;
    bool silent_ = false, unstable_ = false;
    double own_ = 0.0, others_ = 0.0;
    BandWeights weights_{};
    Drives drives_;
};
}  // namespace

MapperResult loudspeaker_mapper(const Show& show, const MapRequest& request, MapSession& session, const Job& job) {
    const Loudspeaker* loudspeaker = find_by_id(show.loudspeakers, request.id);
    if (!loudspeaker) return error(MapError::Reason::unknown_id, "There is no loudspeaker \"" + request.id + "\".");
    const Hearing hearing = listener_of(show, *loudspeaker);
    if (!hearing.performer)
        return error(MapError::Reason::not_possible,
                     "Nobody hears a mix of \"" + request.id +
                         "\" from loudspeakers, so there is no level to hold while it moves.");
    return std::make_unique<LoudspeakerMapper>(show, *loudspeaker, hearing, range_of(request.options), session, job);
}

}  // namespace howlmap::maps
