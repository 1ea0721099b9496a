// SPDX-License-Identifier: GPL-3.0-or-later
// Energy ratios of everything between a send and an ear, in third-octaves, without phase.
#pragma once
#include <vector>

#include "core/listening/spectrum.h"
#include "core/show/show.h"

namespace howlmap {

/// Sum over the direct path and the images of (R D)^2 / r^2 times the air's loss, from 1 m on the loudspeaker's axis to
/// a point.
BandEnergies path_energies(const Show& show, const Loudspeaker& loudspeaker, Vec3 point);
/// The same from a source that radiates alike in all directions, direct path and floor only: backline.
BandEnergies backline_energies(const Show& show, const Backline& backline, Vec3 point);
/// |Rl|^2: a loudspeaker's response with its trim.
BandEnergies response_energies(const Loudspeaker& loudspeaker);
/// |P|^2: an input's high-pass and equaliser.
BandEnergies chain_energies(const Input& input);
/// |E|^2: a mix's high-pass, graphic equaliser and notches.
BandEnergies chain_energies(const Mix& mix);

/// Where a performer's ears are: ear height above the highest riser under her.
Vec3 ear_of(const Show& show, const Performer& performer);

/// What depends on inputs and mixes alone, computed once a show: spectrum times |P|^2 an input, |E|^2 a mix, |Rl|^2 a
/// loudspeaker.
struct ChainEnergies {
    explicit ChainEnergies(const Show& show);
    std::vector<BandEnergies> inputs, mixes, loudspeakers;
};

}  // namespace howlmap
