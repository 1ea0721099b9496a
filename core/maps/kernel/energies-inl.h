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

/// Directivity and gain of a path at the bands of a column: one number, rows, or the coverage formula.
template <DirectivityRows::Kind Kind>
HWY_INLINE V BandGain(const DirectivityRows& rows, const Terms& t, int image, std::size_t cell, int column,
                      std::size_t lane) {
    const F f;
    if constexpr (Kind == DirectivityRows::Kind::same) return Number(t.gain[image][cell]);
    if constexpr (Kind == DirectivityRows::Kind::radial) {
        const float* row = rows.low.data.data() + t.low_at[image][cell] + column * rows.low.column_floats + lane;
        const V shares[2] = {Number(t.low[0][image][cell]), Number(t.low[1][image][cell])};
        return Mixed(row, row + rows.low.row_floats, shares);
    }
    if constexpr (Kind == DirectivityRows::Kind::cap) {
        const float* row = rows.low.data.data() + t.low_at[image][cell] + column * rows.low.column_floats + lane;
        V value = hn::Zero(f);
        for (int k = 0; k < 4; ++k, row += rows.low.row_floats)
            value = hn::MulAdd(Number(t.low[k][image][cell]), hn::Load(f, row), value);
        return hn::Mul(Number(t.gain[image][cell]), hn::Min(value, Number(1.0f)));
    }
    const float* control = rows.control.data() + static_cast<std::size_t>(column * 2 * kBlock) + lane;
    const V q = hn::MulAdd(Number(t.squares[1][image][cell]), hn::Load(f, control + kBlock),
                           hn::Mul(Number(t.squares[0][image][cell]), hn::Load(f, control)));
    const V fallen = hn::Sub(hn::Exp(f, hn::Mul(q, Number(rows.decay))), Number(1.0f));
    return hn::Mul(Number(t.gain[image][cell]), hn::Exp(f, hn::Mul(fallen, Number(rows.depth))));
}

/// Energy of all images of an end at one cell, bands weighted and added.
template <DirectivityRows::Kind Kind>
float EndEnergy(const FixedEnd& end, const AirRows& air, const Terms& t, std::size_t cell) {
    const F f;
    V sum = hn::Zero(f);
    for (int column = 0; column < kBandSweep.columns; ++column)
        for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f)) {
            V squares = hn::Zero(f);
            for (int image = 0; image < end.image_count; ++image) {
                const float* row = air.data.data() + t.air_at[image][cell] + column * air.column_floats + lane;
                const V shares[2] = {Number(t.air[0][image][cell]), Number(t.air[1][image][cell])};
                const V gain = BandGain<Kind>(*end.directivity, t, image, cell, column, lane);
                const V amplitude = hn::Mul(gain, Mixed(row, row + air.row_floats, shares));
                squares = hn::MulAdd(amplitude, amplitude, squares);
            }
            sum = hn::MulAdd(squares, hn::Load(f, end.weights + static_cast<std::size_t>(column * kBlock) + lane), sum);
        }
    return hn::GetLane(hn::SumOfLanes(f, sum));
}

using EnergyFunction = float (*)(const FixedEnd&, const AirRows&, const Terms&, std::size_t);

inline EnergyFunction EnergyFor(const DirectivityRows& rows) {
    using Kind = DirectivityRows::Kind;
    switch (rows.kind) {
        case Kind::same:
            return EndEnergy<Kind::same>;
        case Kind::radial:
            return EndEnergy<Kind::radial>;
        case Kind::cap:
            return EndEnergy<Kind::cap>;
        default:
            return EndEnergy<Kind::coverage>;
    }
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#endif
