// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/kernel/rows.h"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>

#include "core/directivity/cap_on_sphere.h"
#include "core/directivity/coverage.h"
#include "core/units/level.h"

namespace howlmap::maps {
namespace {
constexpr double kRowsPerDegree = 2.0;
constexpr double kCapRowsPerDegree = 4.0;  // a cap that is large against the wave has lobes of a few degrees

Rows empty_rows(const Sweep& sweep, int octaves, int last) {
    Rows rows;
    rows.last = last;
    rows.octaves = octaves;
    rows.column_floats = octaves * kBlock;
    rows.row_floats = sweep.columns * rows.column_floats;
    rows.data.assign(static_cast<std::size_t>(rows.row_floats) * static_cast<std::size_t>(last + 2), 0.0f);
    return rows;
}

/// Calls fill(hz, place of that frequency within a row) for every frequency of some rows.
template <class Fill>
void for_each_frequency(const Sweep& sweep, int octaves, Fill fill) {
    for (int c = 0; c < sweep.columns; ++c)
        for (int o = 0; o < octaves; ++o)
            for (int lane = 0; lane < kBlock; ++lane)
                fill(sweep.hz(c, o, lane), static_cast<std::size_t>((c * octaves + o) * kBlock + lane));
}

/// Fills a column of numbers, one a row: value(row). The row after the last repeats it.
template <class Value>
void fill_rows(Rows& rows, std::size_t place, Value value) {
    for (int row = 0; row <= rows.last + 1; ++row)
        rows.data[static_cast<std::size_t>(row * rows.row_floats) + place] =
            static_cast<float>(value(std::min(row, rows.last)));
}

DirectivityRows radial(const Sweep& sweep, double rows_per_degree) {
    DirectivityRows rows;
    rows.kind = DirectivityRows::Kind::radial;
    rows.octaves = sweep.octaves;
    rows.rows_per_radian = static_cast<float>(degrees(1.0) * rows_per_degree);
    rows.low = empty_rows(sweep, sweep.octaves, static_cast<int>(180.0 * rows_per_degree));
    return rows;
}

DirectivityRows table_rows(const DirectivityTable& table, const Sweep& sweep) {
    DirectivityRows rows = radial(sweep, kRowsPerDegree);
    for_each_frequency(sweep, sweep.octaves, [&](double hz, std::size_t place) {
        const Between frequency = between_log(table.hz, hz);
        fill_rows(rows.low, place,
                  [&](int row) { return db_to_ratio(table_db(table, frequency, row / kRowsPerDegree)); });
    });
    return rows;
}

/// Sizes of a cap's field at a frequency over its size on axis, by row.
std::vector<double> cap_sizes(const CapSlice& slice, int last) {
    std::vector<double> sizes;
    for (int row = 0; row <= last; ++row) sizes.push_back(std::abs(slice.field(std::cos(kPi * row / last))));
    return sizes;
}

/// Row r of the table is row r - 1 of the angle, so that the four rows around any angle are there; beyond 0 and 180
/// degrees the field is that of the mirrored angle.
DirectivityRows cap_rows(const CapOnSphere& cap, const Sweep& sweep, double speed) {
    DirectivityRows rows = radial(sweep, kCapRowsPerDegree);
    rows.kind = DirectivityRows::Kind::cap;
    const int last = rows.low.last;
    rows.low = empty_rows(sweep, sweep.octaves, last + 2);
    rows.low.last = last;
    rows.axis.resize(static_cast<std::size_t>(sweep.blocks() * kBlock));
    std::vector<std::pair<double, std::size_t>> work;
    for_each_frequency(sweep, sweep.octaves, [&](double hz, std::size_t place) { work.emplace_back(hz, place); });
    tbb::parallel_for(std::size_t{0}, work.size(), [&](std::size_t i) {
        const CapSlice slice(cap, 2.0 * kPi * work[i].first / speed);
        const std::vector<double> sizes = cap_sizes(slice, last);
        rows.axis[work[i].second] = static_cast<float>(slice.size_on_axis());
        for (int row = -1; row <= last + 2; ++row) {
            const int mirrored = row > last ? 2 * last - row : std::abs(row);
            rows.low.data[static_cast<std::size_t>((row + 1) * rows.low.row_floats) + work[i].second] =
                static_cast<float>(sizes[static_cast<std::size_t>(mirrored)]);
        }
    });
    return rows;
}

/// A coverage pattern by q.
struct CoverageGain {
    double depth, decay;
    double operator()(double q) const { return std::exp(depth * std::expm1(decay * q)); }
};

/// (min(1, f / control))^2
double control_square(double hz, double control) { return std::min(1.0, hz / control) * std::min(1.0, hz / control); }

double coordinate(double i) { return kAngleKnee * std::sinh(i / kAngleRows); }

/// Value and slopes of a node over half a step to each side; the value lies between its own and the mean of its
/// neighbours, which halves the largest error. `at` is asked by (coordinate, share), both in steps.
template <class At>
std::array<double, 3> node_of(const At& at, double i, double j, double last_share) {
    const double middle = at(i, j), before = at(std::max(i - 0.5, 0.0), j), after = at(i + 0.5, j);
    const double lower = at(i, std::max(j - 0.5, 0.0)), upper = at(i, std::min(j + 0.5, last_share));
    std::array<double, 3> node{middle, i > 0.0 ? after - before : 2.0 * (after - middle), upper - lower};
    if (i > 0.0) node[0] += 0.25 * (after + before - 2.0 * middle);
    if (j == 0.0 || j == last_share)
        node[2] *= 2.0;
    else
        node[0] += 0.25 * (upper + lower - 2.0 * middle);
    return node;
}

/// Nodes of one lane of a block between the control frequencies.
struct LaneOfBlock {
    double across, above;  // A and B at this frequency over those in the middle of the block
    CoverageGain gain;
    double operator()(double i, double j) const {
        const double share = j / (DirectivityRows::kShareNodes - 1), square = coordinate(i) * coordinate(i);
        return gain(square * (share * across + (1.0 - share) * above));
    }
};

struct Controls {
    double across, above;
    explicit Controls(const Coverage& coverage)
        : across(of(coverage.horizontal_deg, coverage.width_m)), above(of(coverage.vertical_deg, coverage.height_m)) {}
    /// Held where it is as good as infinite.
    static double of(double angle_deg, double size_m) { return std::min(1e12, control_hz(held(angle_deg), size_m)); }
    static double held(double angle_deg) { return std::max(angle_deg, kNarrowestAngleDeg); }
    double lower() const { return std::min(across, above); }
    double upper() const { return std::max(across, above); }
};

OctaveSplit split_for(const Controls& controls) {
    for (const OctaveSplit& split : kSplits)
        if (bin_hz(split.low * kBinsPerOctave) <= controls.lower() &&
            bin_hz(split.high * kBinsPerOctave) >= controls.upper())
            return split;
    return {0, kOctavesSwept};
}

void add_nodes(DirectivityRows& rows, const Controls& controls, const CoverageGain& gain) {
    rows.nodes.resize(static_cast<std::size_t>((rows.octaves - rows.low.octaves) * kColumns * rows.block_floats()));
    for (int o = rows.low.octaves; o < rows.octaves; ++o)
        for (int c = 0; c < kColumns; ++c) {
            const int block = (o - rows.low.octaves) * kColumns + c;
            const double middle = bin_hz(bin_of(c, o, kBlock / 2));
            const double across = control_square(middle, controls.across),
                         above = control_square(middle, controls.above);
            rows.middles[static_cast<std::size_t>(block)] = {static_cast<float>(across), static_cast<float>(above)};
            for (int lane = 0; lane < kBlock; ++lane) {
                const double hz = bin_hz(bin_of(c, o, lane));
                const LaneOfBlock at{control_square(hz, controls.across) / across,
                                     control_square(hz, controls.above) / above, gain};
                float* to = rows.nodes.data() + static_cast<std::size_t>(block * rows.block_floats() + lane);
                for (int j = 0; j < DirectivityRows::kShareNodes; ++j)
                    for (int i = 0; i <= rows.last_node; ++i, to += rows.node_floats()) {
                        const auto node = node_of(at, i, j, DirectivityRows::kShareNodes - 1);
                        for (int k = 0; k < 3; ++k)
                            to[k * kBlock] = static_cast<float>(node[static_cast<std::size_t>(k)]);
                    }
            }
        }
}

void add_control(DirectivityRows& rows, const Controls& controls, const Sweep& sweep) {
    rows.control.resize(static_cast<std::size_t>(sweep.columns * 2 * kBlock));
    for (int c = 0; c < sweep.columns; ++c)
        for (int lane = 0; lane < kBlock; ++lane) {
            const auto at = static_cast<std::size_t>(c * 2 * kBlock + lane);
            rows.control[at] = static_cast<float>(control_square(sweep.hz(c, 0, lane), controls.across));
            rows.control[at + kBlock] = static_cast<float>(control_square(sweep.hz(c, 0, lane), controls.above));
        }
}

DirectivityRows coverage_rows(const Coverage& coverage, const Sweep& sweep) {
    DirectivityRows rows;
    rows.kind = DirectivityRows::Kind::coverage;
    const double half_h = radians(Controls::held(coverage.horizontal_deg) / 2.0),
                 half_v = radians(Controls::held(coverage.vertical_deg) / 2.0);
    const CoverageGain gain{coverage.floor_db * std::log(10.0) / 20.0, std::log1p(-6.0 / coverage.floor_db)};
    const Controls controls(coverage);
    rows.across = static_cast<float>(1.0 / (half_h * half_h));
    rows.above = static_cast<float>(1.0 / (half_v * half_v));
    rows.depth = static_cast<float>(gain.depth);
    rows.decay = static_cast<float>(gain.decay);
    if (sweep.octaves != kOctavesSwept) {
        add_control(rows, controls, sweep);
        return rows;
    }
    const OctaveSplit split = split_for(controls);
    const double widest = kPi * std::max(1.0 / half_h, 1.0 / half_v);
    rows.last_node = static_cast<int>(std::ceil(kAngleRows * std::asinh(widest / kAngleKnee)));
    rows.octaves = split.high;
    rows.low = empty_rows(sweep, split.low, rows.last_node);
    rows.low_across = static_cast<float>(std::pow(controls.lower() / controls.across, 2.0));
    rows.low_above = static_cast<float>(std::pow(controls.lower() / controls.above, 2.0));
    for_each_frequency(sweep, split.low, [&](double hz, std::size_t place) {
        const double below = control_square(hz, controls.lower());
        fill_rows(rows.low, place, [&](int row) { return gain(below * coordinate(row) * coordinate(row)); });
    });
    add_nodes(rows, controls, gain);
    return rows;
}
}  // namespace

DirectivityRows directivity_rows(const Directivity& directivity, const Sweep& sweep, double speed) {
    if (std::holds_alternative<Omni>(directivity)) return {};
    if (const auto* coverage = std::get_if<Coverage>(&directivity)) return coverage_rows(*coverage, sweep);
    if (const auto* cap = std::get_if<CapOnSphere>(&directivity)) return cap_rows(*cap, sweep, speed);
    return table_rows(std::get<DirectivityTable>(directivity), sweep);
}

Floats cap_axis(const CapOnSphere& cap, const std::vector<double>& hz, double speed) {
    Floats axis;
    for (const double f : hz)
        axis.push_back(static_cast<float>(1.0 / std::max(CapSlice(cap, 2.0 * kPi * f / speed).size_on_axis(), 1e-30)));
    return axis;
}

DirectivityRows pattern_rows(const ReceiverPattern& pattern, const Sweep& sweep) {
    if (!pattern.is_table()) return {};
    return table_rows(*pattern.table(), sweep);
}

AirRows air_rows(const Surroundings& surroundings, const Sweep& sweep, double farthest_m) {
    AirRows rows;
    rows.rows = static_cast<int>(std::ceil(kAirRows * std::asinh(farthest_m / kAirKnee))) + 2;
    rows.row_floats = sweep.octaves * kBlock;
    rows.column_floats = rows.rows * rows.row_floats;
    rows.via_floats = sweep.columns * rows.column_floats;
    rows.data.resize(static_cast<std::size_t>(rows.via_floats * kVias));
    for (int c = 0; c < sweep.columns; ++c)
        for (int i = 0; i < rows.row_floats; ++i) {
            const double hz = sweep.hz(c, i / kBlock, i % kBlock);
            const auto reflections = surroundings.reflections(hz);
            const double loss = surroundings.air.db_per_m(hz);
            for (int row = 0; row < rows.rows; ++row) {
                const double left = db_to_ratio(-loss * kAirKnee * std::sinh(static_cast<double>(row) / kAirRows));
                for (int via = 0; via < kVias; ++via)
                    rows.data[static_cast<std::size_t>(via * rows.via_floats + c * rows.column_floats +
                                                       row * rows.row_floats + i)] =
                        static_cast<float>(reflections[static_cast<std::size_t>(via)] * left);
            }
        }
    return rows;
}

}  // namespace howlmap::maps
