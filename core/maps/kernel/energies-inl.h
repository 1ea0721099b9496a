// SPDX-License-Identifier: GPL-3.0-or-later
// Energies of third-octave bands at the cells of a tile, bands in the lanes. Included once for every target.
#if defined(HOWLMAP_MAPS_ENERGIES_INL) == defined(HWY_TARGET_TOGGLE)
#ifdef HOWLMAP_MAPS_ENERGIES_INL
#undef HOWLMAP_MAPS_ENERGIES_INL
#else
#define HOWLMAP_MAPS_ENERGIES_INL
#endif

#include "core/maps/kernel/sweep-inl.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::maps {
namespace HWY_NAMESPACE {

/// Energy of all images of an end at one cell, bands weighted and added.
template <class S>
float EndEnergy(const FixedEnd& end, const AirRows& air, const Terms& t, std::size_t cell) {
    const F f;
    V sum = hn::Zero(f);
    for (int column = 0; column < kBandSweep.columns; ++column)
        for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f)) {
            V squares = hn::Zero(f);
            for (int image = 0; image < end.image_count; ++image) {
                const V amplitude = Amplitude<S, 0>(RowsOf<S>(end, air, t, image, cell, column, lane));
                squares = hn::MulAdd(amplitude, amplitude, squares);
            }
            sum = hn::MulAdd(squares, hn::Load(f, end.weights + static_cast<std::size_t>(column * kBlock) + lane), sum);
        }
    return hn::GetLane(hn::SumOfLanes(f, sum));
}

using EnergyFunction = float (*)(const FixedEnd&, const AirRows&, const Terms&, std::size_t);

inline EnergyFunction EnergyFor(const DirectivityRows& rows) {
    switch (rows.kind) {
        case DirectivityRows::Kind::same:
            return EndEnergy<Shape<0, 0, false, 0>>;
        case DirectivityRows::Kind::radial:
            return EndEnergy<Shape<1, 2, false, 0>>;
        default:
            return EndEnergy<Shape<1, 3, false, 0>>;
    }
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#endif
