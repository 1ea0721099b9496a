// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/kernel/rows.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/directivity/coverage.h"
#include "core/units/level.h"

namespace howlmap::maps {
namespace {
constexpr double kRadialRowsPerDegree = 2.0;

/// Rows over the angle off axis; gain(column, octave, lane, angle) is asked once for every number.
using SliceGain = std::function<double(double hz, double angle)>;

void radial_shape(DirectivityRows& rows, const Sweep& sweep, double rows_per_degree) {
    rows.kind = DirectivityRows::Kind::radial;
    rows.octaves = sweep.octaves;
    rows.rows_per_radian = static_cast<float>(degrees(1.0) * rows_per_degree);
    rows.last_row = static_cast<int>(180.0 * rows_per_degree);
    rows.column_floats = sweep.octaves * kBlock;
    rows.row_floats = sweep.columns * rows.column_floats;
    // One row more than there are angles, so that the row after the last can be read.
    rows.data.assign(static_cast<std::size_t>(rows.row_floats) * static_cast<std::size_t>(rows.last_row + 2), 0.0f);
}

/// Calls fill(hz, index of the value within a row) for every frequency of a sweep.
template <class Fill>
void for_each_frequency(const Sweep& sweep, int column_floats, int stride, Fill fill) {
    for (int c = 0; c < sweep.columns; ++c)
        for (int o = 0; o < sweep.octaves; ++o)
            for (int lane = 0; lane < kBlock; ++lane)
                fill(sweep.hz(c, o, lane), o, static_cast<std::size_t>(c * column_floats + o * stride + lane));
}

DirectivityRows radial_rows(const Directivity& directivity, const Sweep& sweep, double speed) {
    DirectivityRows rows;
    // A cap that is large against the wave has lobes of a few degrees.
    radial_shape(rows, sweep, std::holds_alternative<CapOnSphere>(directivity) ? 4.0 : kRadialRowsPerDegree);
    for_each_frequency(sweep, rows.column_floats, kBlock, [&](double hz, int, std::size_t at) {
        const LoudspeakerSlice slice(directivity, hz, speed);
        for (int row = 0; row <= rows.last_row; ++row) {
            const double angle = kPi * row / rows.last_row;
            rows.data[static_cast<std::size_t>(row * rows.row_floats) + at] =
                static_cast<float>(slice.gain({angle, 0.0}));
        }
    });
    return rows;
}

/// Gain of a coverage pattern by (p, kappa) at one frequency.
struct CoverageGain {
    double across, above;  // (min(1, f / fH))^2, (min(1, f / fV))^2
    double depth, decay;
    double operator()(double p, double share) const {
        return std::exp(depth * std::expm1(decay * p * p * (share * across + (1.0 - share) * above)));
    }
};

/// Value and slopes of a node over half a step to each side; the value lies between its own and the mean of its
/// neighbours, which halves the largest error.
struct Node {
    double value, angle_slope, share_slope;
};
Node node_of(const CoverageGain& gain, double i, double j) {
    const auto at = [&](double ii, double jj) {
        const double p = kAngleKnee * std::sinh(std::max(ii, 0.0) / kAngleNodes);
        return gain(p, std::clamp(jj / (kShareNodes - 1), 0.0, 1.0));
    };
    const double middle = at(i, j), before = at(i - 0.5, j), after = at(i + 0.5, j);
    const double lower = at(i, j - 0.5), upper = at(i, j + 0.5);
    Node node{middle, after - before, upper - lower};
    if (i == 0.0)
        node.angle_slope = 2.0 * (after - middle);
    else
        node.value += 0.25 * (after + before - 2.0 * middle);
    if (j == 0.0)
        node.share_slope = 2.0 * (upper - middle);
    else if (j == kShareNodes - 1.0)
        node.share_slope = 2.0 * (middle - lower);
    else
        node.value += 0.25 * (upper + lower - 2.0 * middle);
    return node;
}

int covered_octaves(const Coverage& coverage, const Sweep& sweep) {
    if (sweep.octaves != kOctavesSwept) return sweep.octaves;
    const double control = std::max(control_hz(coverage.horizontal_deg, coverage.width_m),
                                    control_hz(coverage.vertical_deg, coverage.height_m));
    for (const int octaves : kCoverageOctaves)
        if (bin_hz(octaves * kBinsPerOctave) >= control) return octaves;
    return kOctavesSwept;
}

DirectivityRows coverage_rows(const Coverage& coverage, const Sweep& sweep) {
    DirectivityRows rows;
    rows.kind = DirectivityRows::Kind::coverage;
    const double half_h = radians(coverage.horizontal_deg / 2.0), half_v = radians(coverage.vertical_deg / 2.0);
    const double depth = coverage.floor_db * std::log(10.0) / 20.0, decay = std::log1p(-6.0 / coverage.floor_db);
    rows.across = static_cast<float>(1.0 / (half_h * half_h));
    rows.above = static_cast<float>(1.0 / (half_v * half_v));
    rows.depth = static_cast<float>(depth);
    rows.decay = static_cast<float>(decay);
    rows.octaves = covered_octaves(coverage, sweep);
    const double widest = kPi * std::max(1.0 / half_h, 1.0 / half_v);
    rows.angle_nodes = static_cast<int>(std::ceil(kAngleNodes * std::asinh(widest / kAngleKnee))) + 1;
    rows.share_nodes = kShareNodes;
    rows.column_floats = rows.octaves * 3 * kBlock;
    rows.row_floats = sweep.columns * rows.column_floats;
    rows.data.assign(static_cast<std::size_t>(rows.row_floats * rows.angle_nodes * rows.share_nodes), 0.0f);
    const double control_h = control_hz(coverage.horizontal_deg, coverage.width_m);
    const double control_v = control_hz(coverage.vertical_deg, coverage.height_m);
    for_each_frequency(sweep, rows.column_floats, 3 * kBlock, [&](double hz, int octave, std::size_t at) {
        if (octave >= rows.octaves) return;
        const double h = std::min(1.0, hz / control_h), v = std::min(1.0, hz / control_v);
        const CoverageGain gain{h * h, v * v, depth, decay};
        for (int j = 0; j < rows.share_nodes; ++j)
            for (int i = 0; i < rows.angle_nodes; ++i) {
                const Node node = node_of(gain, i, j);
                float* to =
                    rows.data.data() + static_cast<std::size_t>((j * rows.angle_nodes + i) * rows.row_floats) + at;
                to[0] = static_cast<float>(node.value);
                to[kBlock] = static_cast<float>(node.angle_slope);
                to[2 * kBlock] = static_cast<float>(node.share_slope);
            }
    });
    return rows;
}
}  // namespace

DirectivityRows directivity_rows(const Directivity& directivity, const Sweep& sweep, double speed) {
    if (std::holds_alternative<Omni>(directivity)) return {};
    if (const auto* coverage = std::get_if<Coverage>(&directivity)) return coverage_rows(*coverage, sweep);
    return radial_rows(directivity, sweep, speed);
}

DirectivityRows pattern_rows(const ReceiverPattern& pattern, const Sweep& sweep) {
    if (!pattern.is_table()) return {};
    DirectivityRows rows;
    radial_shape(rows, sweep, kRadialRowsPerDegree);
    for_each_frequency(sweep, rows.column_floats, kBlock, [&](double hz, int, std::size_t at) {
        for (int row = 0; row <= rows.last_row; ++row)
            rows.data[static_cast<std::size_t>(row * rows.row_floats) + at] =
                static_cast<float>(pattern.gain(kPi * row / rows.last_row, hz));
    });
    return rows;
}

AirRows air_rows(const Surroundings& surroundings, const Sweep& sweep, double farthest_m) {
    AirRows rows;
    rows.rows = static_cast<int>(std::ceil(kAirRows * std::asinh(farthest_m / kAirKnee))) + 2;
    rows.row_floats = sweep.octaves * kBlock;
    rows.column_floats = rows.rows * rows.row_floats;
    rows.via_floats = sweep.columns * rows.column_floats;
    rows.data.resize(static_cast<std::size_t>(rows.via_floats * kVias));
    for_each_frequency(sweep, rows.column_floats, kBlock, [&](double hz, int, std::size_t at) {
        const auto reflections = surroundings.reflections(hz);
        const double loss = surroundings.air.db_per_m(hz);
        for (int row = 0; row < rows.rows; ++row) {
            const double left = db_to_ratio(-loss * kAirKnee * std::sinh(static_cast<double>(row) / kAirRows));
            for (std::size_t via = 0; via < kVias; ++via)
                rows.data[via * static_cast<std::size_t>(rows.via_floats) + at +
                          static_cast<std::size_t>(row * rows.row_floats)] =
                    static_cast<float>(reflections[via] * left);
        }
    });
    return rows;
}

}  // namespace howlmap::maps
