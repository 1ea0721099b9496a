// SPDX-License-Identifier: GPL-3.0-or-later
// Paths between a fixed end and the cells of a tile, cells in the lanes. Included once for every target.
#if defined(HOWLMAP_MAPS_GEOMETRY_INL) == defined(HWY_TARGET_TOGGLE)
#ifdef HOWLMAP_MAPS_GEOMETRY_INL
#undef HOWLMAP_MAPS_GEOMETRY_INL
#else
#define HOWLMAP_MAPS_GEOMETRY_INL
#endif

#include "core/maps/kernel/terms.h"
#include "hwy/contrib/math/math-inl.h"
#include "hwy/cache_control.h"
#include "hwy/highway.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::maps {
namespace HWY_NAMESPACE {
namespace hn = hwy::HWY_NAMESPACE;

using F = hn::CappedTag<float, kBlock>;
using I = hn::RebindToSigned<F>;
using V = hn::Vec<F>;
using VI = hn::Vec<I>;
using D = hn::CappedTag<double, kBlock / 2>;
using H = hn::Rebind<float, D>;  // as many floats as there are doubles in a vector

HWY_INLINE V Number(float x) { return hn::Set(F(), x); }

/// Lines up the axes of what is at the cells: the same for all, or aimed from each cell at one place.
inline void SetAxes(const CellEnd& cell, const Tile& tile, CellAxes& axes) {
    const double turn = radians(cell.roll_deg), c = std::cos(turn), s = std::sin(turn);
    for (std::size_t i = 0; i < kTile; ++i) {
        Frame frame = cell.frame;
        const Vec3 to = cell.target - Vec3{tile.x[i], tile.y[i], tile.z[i]};
        const double far = length(to), aside = std::hypot(to.x, to.y);
        if (cell.aimed && far > 0.0) {
            const Vec3 right = aside > 0.0 ? Vec3{to.y / aside, -to.x / aside, 0.0} : Vec3{-1.0, 0.0, 0.0};
            frame.forward = to * (1.0 / far);
            const Vec3 up = cross(right, frame.forward);
            frame.right = right * c - up * s;
            frame.up = up * c + right * s;
        }
        const Vec3* from[3] = {&frame.forward, &frame.right, &frame.up};
        float(*into[3])[kTile] = {axes.forward, axes.right, axes.up};
        for (int k = 0; k < 3; ++k) {
            into[k][0][i] = static_cast<float>(from[k]->x);
            into[k][1][i] = static_cast<float>(from[k]->y);
            into[k][2][i] = static_cast<float>(from[k]->z);
        }
    }
}

/// Coordinate that a plane mirrors: 0 x, 1 y, 2 z, -1 none.
inline int MirroredAxis(Via via) {
    switch (via) {
        case Via::direct:
            return -1;
        case Via::left:
        case Via::right:
            return 0;
        case Via::back:
        case Via::front:
            return 1;
        default:
            return 2;
    }
}

/// 1 where the cell is strictly inside the plane, else 0. The fixed end is; but a floor may be as high as a riser.
inline void MarkPresent(const FixedEnd& end, const Image& image, const Tile& tile, float* there) {
    for (std::size_t i = 0; i < kTile; ++i) {
        bool inside = true;
        switch (image.via) {
            case Via::direct:
                break;
            case Via::floor: {
                const double floor = end.floor_z ? end.floor_z[static_cast<std::size_t>(tile.first) +
                                                               std::min(i, static_cast<std::size_t>(tile.cells - 1))]
                                                 : 0.0;
                inside = tile.z[i] > floor && end.position.z > floor;
                break;
            }
            case Via::back:
                inside = tile.y[i] < image.plane;
                break;
            case Via::front:
                inside = tile.y[i] > image.plane;
                break;
            case Via::left:
                inside = tile.x[i] < image.plane;
                break;
            case Via::right:
                inside = tile.x[i] > image.plane;
                break;
            case Via::ceiling:
                inside = tile.z[i] < image.plane;
                break;
        }
        there[i] = inside ? 1.0f : 0.0f;
    }
}

/// Distances in double precision, kept as two floats, and unit vectors from the mirrored fixed end to the cells.
inline void SetDistances(const FixedEnd& end, int image_index, const Tile& tile, Terms& terms, Scratch::Space& space) {
    const D d;
    const H h;
    const Image& image = end.images[static_cast<std::size_t>(image_index)];
    alignas(64) double at[3][kTile];
    for (std::size_t i = 0; i < kTile; ++i) {
        at[0][i] = end.position.x;
        at[1][i] = end.position.y;
        at[2][i] = end.position.z;
    }
    const int axis = MirroredAxis(image.via);
    if (axis >= 0)
        for (std::size_t i = 0; i < kTile; ++i) {
            double plane = image.plane;
            if (image.via == Via::floor)
                plane = end.floor_z ? end.floor_z[static_cast<std::size_t>(tile.first) +
                                                  std::min(i, static_cast<std::size_t>(tile.cells - 1))]
                                    : 0.0;
            at[axis][i] = 2.0 * plane - at[axis][i];
        }
    for (std::size_t i = 0; i < kTile; i += hn::Lanes(d)) {
        const auto x = hn::Sub(hn::Load(d, &tile.x[i]), hn::Load(d, &at[0][i]));
        const auto y = hn::Sub(hn::Load(d, &tile.y[i]), hn::Load(d, &at[1][i]));
        const auto z = hn::Sub(hn::Load(d, &tile.z[i]), hn::Load(d, &at[2][i]));
        const auto far = hn::Sqrt(hn::MulAdd(z, z, hn::MulAdd(y, y, hn::Mul(x, x))));
        const auto over = hn::Div(hn::Set(d, 1.0), hn::Max(far, hn::Set(d, 1e-30)));
        const auto held = hn::Max(far, hn::Set(d, kNearestM));
        const auto main = hn::DemoteTo(h, held);
        hn::Store(main, h, &terms.metres[image_index][i]);
        hn::Store(hn::DemoteTo(h, hn::Sub(held, hn::PromoteTo(d, main))), h, &terms.metres_rest[image_index][i]);
        hn::Store(hn::DemoteTo(h, hn::Mul(x, over)), h, &space.unit[0][i]);
        hn::Store(hn::DemoteTo(h, hn::Mul(y, over)), h, &space.unit[1][i]);
        hn::Store(hn::DemoteTo(h, hn::Mul(z, over)), h, &space.unit[2][i]);
    }
}

/// Components of the direction along three axes.
struct Seen {
    V ahead, across, above;
};

HWY_INLINE V Dot(const float (*unit)[kTile], std::size_t i, V x, V y, V z) {
    const F f;
    return hn::MulAdd(hn::Load(f, &unit[2][i]), z,
                      hn::MulAdd(hn::Load(f, &unit[1][i]), y, hn::Mul(hn::Load(f, &unit[0][i]), x)));
}
HWY_INLINE V DotFixed(const float (*unit)[kTile], std::size_t i, Vec3 axis) {
    return Dot(unit, i, Number(static_cast<float>(axis.x)), Number(static_cast<float>(axis.y)),
               Number(static_cast<float>(axis.z)));
}
HWY_INLINE V DotCell(const float (*unit)[kTile], std::size_t i, const float (*axis)[kTile]) {
    const F f;
    return hn::Neg(Dot(unit, i, hn::Load(f, &axis[0][i]), hn::Load(f, &axis[1][i]), hn::Load(f, &axis[2][i])));
}

inline Vec3 Flipped(Vec3 v, int axis) {
    if (axis == 0) v.x = -v.x;
    if (axis == 1) v.y = -v.y;
    if (axis == 2) v.z = -v.z;
    return v;
}

/// Angle off axis from the component along it and the one across, 0..pi.
HWY_INLINE V AngleOff(V ahead, V side) {
    const F f;
    const V quarter = hn::Atan(f, hn::Div(side, hn::Add(Number(1.0f), hn::Abs(ahead))));
    const V angle = hn::Add(quarter, quarter);
    return hn::IfThenElse(hn::Lt(ahead, hn::Zero(f)), hn::Sub(Number(static_cast<float>(kPi)), angle), angle);
}

HWY_INLINE V ArcSinh(V x) {
    const F f;
    return hn::Log(f, hn::Add(x, hn::Sqrt(hn::MulAdd(x, x, Number(1.0f)))));
}

/// Place among linear rows: whole row and the share of the next.
struct Between2 {
    VI row;
    V share;
};
HWY_INLINE Between2 BetweenRows(V position, int last) {
    const V held = hn::Min(hn::Max(position, Number(0.0f)), Number(static_cast<float>(last)));
    const VI row = hn::ConvertTo(I(), held);
    return {row, hn::Sub(held, hn::ConvertTo(F(), row))};
}

HWY_INLINE VI Times(VI a, int b) { return hn::Mul(a, hn::Set(I(), b)); }

/// Factors of two rows, the first of which lies at a coordinate.
HWY_INLINE void SetRows(const Rows& rows, V position, V gain, int image, std::size_t i, Terms& terms) {
    const F f;
    const Between2 at = BetweenRows(position, rows.last);
    const V next = hn::Mul(gain, at.share);
    hn::Store(hn::Sub(gain, next), f, &terms.low[0][image][i]);
    hn::Store(next, f, &terms.low[1][image][i]);
    hn::Store(Times(at.row, rows.row_floats), I(), &terms.low_at[image][i]);
}

/// Factors of the four rows around a coordinate: the cubic through them. The first lies one before it in the table.
HWY_INLINE void SetFourRows(const Rows& rows, V position, int image, std::size_t i, Terms& terms) {
    const F f;
    const Between2 at = BetweenRows(position, rows.last);
    const V t = at.share, one = Number(1.0f), two = Number(2.0f);
    const V down = hn::Sub(t, one), far = hn::Sub(t, two), up = hn::Add(t, one);
    const V outer = hn::Mul(hn::Mul(t, down), Number(1.0f / 6.0f)), inner = hn::Mul(hn::Mul(up, far), Number(0.5f));
    hn::Store(hn::Neg(hn::Mul(outer, far)), f, &terms.low[0][image][i]);
    hn::Store(hn::Mul(inner, down), f, &terms.low[1][image][i]);
    hn::Store(hn::Neg(hn::Mul(inner, t)), f, &terms.low[2][image][i]);
    hn::Store(hn::Mul(outer, up), f, &terms.low[3][image][i]);
    hn::Store(Times(at.row, rows.row_floats), I(), &terms.low_at[image][i]);
}

/// Coverage coordinate of q.
HWY_INLINE V CoverageRow(V q) {
    return hn::Mul(ArcSinh(hn::Mul(hn::Sqrt(q), Number(1.0f / kAngleKnee))), Number(kAngleRows));
}

/// Nodes of one block between the control frequencies, nearest to q in its middle and to the share of X in it.
HWY_INLINE void SetMiddle(const DirectivityRows& rows, int block, V x, V y, V gain, int image, std::size_t i,
                          Terms& terms) {
    const F f;
    const DirectivityRows::Middle& middle = rows.middles[static_cast<std::size_t>(block)];
    const V part = hn::Mul(x, Number(middle.across)), q = hn::MulAdd(y, Number(middle.above), part);
    const V row = hn::Min(CoverageRow(q), Number(static_cast<float>(rows.last_node)));
    const V share = hn::Mul(hn::Div(part, hn::Max(q, Number(1e-30f))), Number(DirectivityRows::kShareNodes - 1));
    const VI node = hn::NearestInt(row), share_node = hn::NearestInt(share);
    hn::Store(gain, f, &terms.middle[block][0][image][i]);
    hn::Store(hn::Mul(gain, hn::Sub(row, hn::ConvertTo(f, node))), f, &terms.middle[block][1][image][i]);
    hn::Store(hn::Mul(gain, hn::Sub(share, hn::ConvertTo(f, share_node))), f, &terms.middle[block][2][image][i]);
    const VI at = hn::Add(Times(share_node, rows.last_node + 1), node);
    hn::Store(Times(at, rows.node_floats()), I(), &terms.middle_at[block][image][i]);
}

/// Directivity of the loudspeaker; `gain` is everything else that does not depend on frequency. Returns the gain where
/// the directivity is one number.
HWY_INLINE V SetDirectivity(const DirectivityRows& rows, const Seen& seen, V gain, int image, std::size_t i,
                            Terms& terms) {
    const F f;
    if (rows.kind == DirectivityRows::Kind::same) return gain;
    const V square = hn::MulAdd(seen.above, seen.above, hn::Mul(seen.across, seen.across));
    const V angle = AngleOff(seen.ahead, hn::Sqrt(square));
    if (rows.kind == DirectivityRows::Kind::radial) {
        SetRows(rows.low, hn::Mul(angle, Number(rows.rows_per_radian)), gain, image, i, terms);
        return gain;
    }
    if (rows.kind == DirectivityRows::Kind::cap) {
        SetFourRows(rows.low, hn::Mul(angle, Number(rows.rows_per_radian)), image, i, terms);
        return gain;
    }
    const V scale = hn::Div(hn::Mul(angle, angle), hn::Max(square, Number(1e-30f)));
    const V x = hn::Mul(hn::Mul(scale, hn::Mul(seen.across, seen.across)), Number(rows.across));
    const V y = hn::Mul(hn::Mul(scale, hn::Mul(seen.above, seen.above)), Number(rows.above));
    hn::Store(x, f, &terms.squares[0][image][i]);
    hn::Store(y, f, &terms.squares[1][image][i]);
    if (rows.low.octaves > 0) {
        const V q = hn::MulAdd(y, Number(rows.low_above), hn::Mul(x, Number(rows.low_across)));
        SetRows(rows.low, CoverageRow(q), gain, image, i, terms);
    }
    for (int block = 0; block < (rows.octaves - rows.low.octaves) * kColumns; ++block)
        SetMiddle(rows, block, x, y, gain, image, i, terms);
    const V fallen = hn::Sub(hn::Exp(f, hn::Mul(hn::Add(x, y), Number(rows.decay))), Number(1.0f));
    return hn::Mul(gain, hn::Exp(f, hn::Mul(fallen, Number(rows.depth))));
}

/// Receiver: first order as a number, a measured pattern as two rows.
HWY_INLINE V SetPattern(const FixedEnd& end, V toward, V unit_square, int image, std::size_t i, Terms& terms) {
    const F f;
    const V cosine = hn::IfThenElse(hn::Lt(unit_square, Number(0.5f)), Number(1.0f), toward);
    if (!end.pattern || end.pattern->kind == DirectivityRows::Kind::same)
        return hn::MulAdd(Number(1.0f - end.first_order), cosine, Number(end.first_order));
    const V held = hn::Min(hn::Max(cosine, Number(-1.0f)), Number(1.0f));
    const V side = hn::Sqrt(hn::Max(hn::NegMulAdd(held, held, Number(1.0f)), Number(0.0f)));
    const Between2 at =
        BetweenRows(hn::Mul(AngleOff(held, side), Number(end.pattern->rows_per_radian)), end.pattern->low.last);
    hn::Store(hn::Sub(Number(1.0f), at.share), f, &terms.pattern[0][image][i]);
    hn::Store(at.share, f, &terms.pattern[1][image][i]);
    hn::Store(Times(at.row, end.pattern->low.row_floats), I(), &terms.pattern_at[image][i]);
    return Number(1.0f);
}

/// Air and reflection; `gain` holds where the directivity is one number.
HWY_INLINE void SetAir(const AirRows& rows, Via via, V metres, V gain, int image, std::size_t i, Terms& terms) {
    const F f;
    const V position = hn::Mul(ArcSinh(hn::Mul(metres, Number(1.0f / kAirKnee))), Number(kAirRows));
    const Between2 at = BetweenRows(position, rows.rows - 2);
    const VI start = hn::Set(I(), static_cast<int>(via) * rows.via_floats);
    const VI offset = hn::Add(Times(at.row, rows.row_floats), start);
    hn::Store(offset, I(), &terms.air_at[image][i]);
    hn::Store(hn::Add(Times(hn::NearestInt(hn::Add(hn::ConvertTo(f, at.row), at.share)), rows.row_floats), start), I(),
              &terms.near_at[image][i]);
    hn::Store(hn::Sub(Number(1.0f), at.share), f, &terms.air[0][image][i]);
    hn::Store(at.share, f, &terms.air[1][image][i]);
    hn::Store(hn::Mul(gain, hn::Sub(Number(1.0f), at.share)), f, &terms.high[0][image][i]);
    hn::Store(hn::Mul(gain, at.share), f, &terms.high[1][image][i]);
}

/// All terms of one image.
inline void SetImage(const FixedEnd& end, const CellEnd& cell, const AirRows& air, int image_index, const Tile& tile,
                     Terms& terms, Scratch::Space& space) {
    const F f;
    const Image& image = end.images[static_cast<std::size_t>(image_index)];
    const int axis = MirroredAxis(image.via);
    const Frame mirrored{Flipped(end.frame.forward, axis), Flipped(end.frame.right, axis), Flipped(end.frame.up, axis)};
    MarkPresent(end, image, tile, space.there);
    SetDistances(end, image_index, tile, terms, space);
    for (std::size_t i = 0; i < kTile; i += hn::Lanes(f)) {
        const V fixed = DotFixed(space.unit, i, mirrored.forward), moving = DotCell(space.unit, i, space.axes.forward);
        const Seen seen =
            cell.sounds ? Seen{moving, DotCell(space.unit, i, space.axes.right), DotCell(space.unit, i, space.axes.up)}
                        : Seen{fixed, DotFixed(space.unit, i, mirrored.right), DotFixed(space.unit, i, mirrored.up)};
        const V x = hn::Load(f, &space.unit[0][i]), y = hn::Load(f, &space.unit[1][i]),
                z = hn::Load(f, &space.unit[2][i]);
        const V unit_square = hn::MulAdd(z, z, hn::MulAdd(y, y, hn::Mul(x, x)));
        const V hears = SetPattern(end, cell.sounds ? fixed : moving, unit_square, image_index, i, terms);
        const V metres = hn::Load(f, &terms.metres[image_index][i]);
        const V gain = hn::Mul(hn::Load(f, &space.there[i]), hn::Div(hears, metres));
        hn::Store(gain, f, &terms.gain[image_index][i]);
        const V high = SetDirectivity(*end.directivity, seen, gain, image_index, i, terms);
        SetAir(air, image.via, metres, high, image_index, i, terms);
    }
}

inline void SetTerms(const FixedEnd& end, const CellEnd& cell, const AirRows& air, const Tile& tile, Terms& terms,
                     Scratch::Space& space) {
    for (int image = 0; image < end.image_count; ++image) SetImage(end, cell, air, image, tile, terms, space);
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#endif
