// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/transfer.h"

#include <cmath>

#include "core/air/air.h"
#include "core/directivity/loudspeaker_directivity.h"
#include "core/loop/chain.h"
#include "core/propagation/paths.h"
#include "core/propagation/reflection.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
template <class Gain>
BandEnergies by_band(const Gain& gain) {
    BandEnergies energies{};
    for (int band = 0; band < kThirdOctaves; ++band)
        energies[static_cast<std::size_t>(band)] = gain(third_octave_centre(band));
    return energies;
}

BandEnergies squared_magnitudes(const Filter& filter) {
    return by_band([&](double hz) { return std::norm(filter.at(hz)); });
}

/// Energy ratio of a path without directivity: reflection, distance, air.
double path_energy(const Show& show, const Path& path, const AirAbsorption& air, double hz) {
    const double reflection =
        path.via == Via::direct ? 1.0 : reflection_factor(surface_of(show.stage.surfaces, path.via).absorption, hz);
    const double spread = reflection / path.held_m;
    return spread * spread * db_to_energy(-air.db_per_m(hz) * path.held_m);
}
}  // namespace

BandEnergies path_energies(const Show& show, const Loudspeaker& loudspeaker, Vec3 point) {
    const double floor_z = common_riser_height(show.stage, loudspeaker.position.xy(), point.xy());
    const auto paths = paths_between(loudspeaker.position, point, planes_of(show.stage.surfaces, floor_z));
    const Frame frame = frame_of(loudspeaker.aim);
    const AirAbsorption air(show.air);
    const double speed = speed_of_sound(show.air.temperature_c);
    return by_band([&](double hz) {
        const LoudspeakerSlice slice(loudspeaker.directivity, hz, speed);
        double energy = 0.0;
        for (const Path& path : paths) {
            const double directivity = slice.gain(local_angles(frame, path.leaving));
            energy += directivity * directivity * path_energy(show, path, air, hz);
        }
        return energy;
    });
}

BandEnergies backline_energies(const Show& show, const Backline& backline, Vec3 point) {
    Surfaces floor_only;
    floor_only.floor = show.stage.surfaces.floor;
    const double floor_z = common_riser_height(show.stage, backline.position.xy(), point.xy());
    const auto paths = paths_between(backline.position, point, planes_of(floor_only, floor_z));
    const AirAbsorption air(show.air);
    return by_band([&](double hz) {
        double energy = 0.0;
        for (const Path& path : paths) energy += path_energy(show, path, air, hz);
        return energy;
    });
}

BandEnergies response_energies(const Loudspeaker& loudspeaker) {
    return squared_magnitudes(loudspeaker_response(loudspeaker));
}
BandEnergies chain_energies(const Input& input) { return squared_magnitudes(input_chain(input)); }
BandEnergies chain_energies(const Mix& mix) { return squared_magnitudes(mix_chain(mix)); }

Vec3 ear_of(const Show& show, const Performer& performer) {
    const double ground = riser_height_at(show.stage, performer.position);
    return {performer.position.x, performer.position.y, ground + performer.ear_height_m};
}

ChainEnergies::ChainEnergies(const Show& show) {
    for (const Input& input : show.inputs) inputs.push_back(spectrum_energies(input.spectrum) * chain_energies(input));
    for (const Mix& mix : show.mixes) mixes.push_back(chain_energies(mix));
    for (const Loudspeaker& loudspeaker : show.loudspeakers) loudspeakers.push_back(response_energies(loudspeaker));
}

}  // namespace howlmap
