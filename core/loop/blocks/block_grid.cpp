// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/block_grid.h"

#include <algorithm>
#include <cmath>

#include "core/units/bands.h"

namespace howlmap {
namespace {
constexpr double kIntervals = kBlockPoints - 1.0;

void add_kinks(std::vector<double>& nodes, const Directivity& directivity) {
    if (const auto* coverage = std::get_if<Coverage>(&directivity)) {
        nodes.push_back(control_hz(coverage->horizontal_deg, coverage->width_m));
        nodes.push_back(control_hz(coverage->vertical_deg, coverage->height_m));
    }
    if (const auto* table = std::get_if<DirectivityTable>(&directivity))
        nodes.insert(nodes.end(), table->hz.begin(), table->hz.end());
}

void add_kinks(std::vector<double>& nodes, const Absorption& absorption) {
    if (!std::holds_alternative<double>(absorption))
        for (int octave = 0; octave < kOctaves; ++octave) nodes.push_back(octave_centre(octave));
}
}  // namespace

std::vector<double> gain_nodes(const LoopModel& model) {
    std::vector<double> nodes{kLowestHz, kHighestHz};
    for (double hz = kLowestHz; hz < kHighestHz; hz *= hz < 200.0 ? std::exp2(1.0 / 6.0) : std::exp2(1.0 / 14.0))
        nodes.push_back(hz);
    const Surfaces& surfaces = *model.surroundings().surfaces;
    add_kinks(nodes, surfaces.floor.absorption);
    for (const auto* surface : {&surfaces.back, &surfaces.front, &surfaces.left, &surfaces.right, &surfaces.ceiling})
        if (*surface) add_kinks(nodes, (*surface)->absorption);
    for (const LoopModel::Speaker& speaker : model.speakers()) add_kinks(nodes, *speaker.emitter.directivity);
    for (const LoopModel::In& in : model.inputs())
        if (const DirectivityTable* table = in.receiver.pattern.table())
            nodes.insert(nodes.end(), table->hz.begin(), table->hz.end());
    std::sort(nodes.begin(), nodes.end());
    std::erase_if(nodes, [](double hz) { return hz < kLowestHz || hz > kHighestHz; });
    // Nodes that all but coincide are one.
    nodes.erase(std::unique(nodes.begin(), nodes.end(), [](double a, double b) { return b < a * 1.0005; }),
                nodes.end());
    nodes.back() = kHighestHz;
    return nodes;
}

namespace {
/// Largest group delay in s of any one resonance within a stretch.
double sharpest(const LoopTiming& timing, double low, double high) {
    double delay = 0.0;
    for (const auto& resonance : timing.resonances)
        delay = std::max(delay, resonance.group_delay(std::clamp(resonance.hz, low, high)));
    return delay;
}

/// Width of a block that begins at `low`: wide enough to go on, narrow enough for everything in it.
double block_width(const LoopTiming& timing, double steps, double low, double most) {
    double width = most;
    for (int i = 0; i < 40; ++i) {
        const double allowed = kIntervals / (steps * (timing.spread_s + sharpest(timing, low, low + width)));
        if (allowed >= width) break;
        width = std::max(allowed, 0.5 * width);
    }
    return width;
}

Block block_at(const std::vector<double>& nodes, std::size_t node, double low, double high) {
    const double span = nodes[node + 1] - nodes[node];
    return {low, (high - low) / kIntervals, node, (low - nodes[node]) / span, (high - low) / kIntervals / span};
}

void fill_stretch(BlockGrid& grid, const LoopTiming& timing, double steps, std::size_t node) {
    const double high = grid.nodes[node + 1];
    double low = grid.nodes[node];
    while (low < high) {
        double width = block_width(timing, steps, low, high - low);
        const double left = (high - low) / width;
        if (left < 8.0) width = (high - low) / std::ceil(left - 1e-9);  // even ones rather than a sliver at the end
        const double next = high - low - width < 1e-6 * high ? high : low + width;
        grid.blocks.push_back(block_at(grid.nodes, node, low, next));
        low = next;
    }
}

/// The stretch between two nodes that a frequency lies in.
std::size_t stretch_of(const std::vector<double>& nodes, double hz) {
    const auto above = std::upper_bound(nodes.begin() + 1, nodes.end() - 1, hz);
    return static_cast<std::size_t>(above - nodes.begin()) - 1;
}

/// Blocks on a raster: three knot spacings each, or a part of one, so that no path turns too far and none is wider than
/// the stretch whose gains it takes.
void fill_raster(BlockGrid& grid, const LoopTiming& timing, double steps, double spacing) {
    const std::vector<double>& nodes = grid.nodes;
    const double turns = kIntervals / (steps * (timing.spread_s + 1e-9));
    const auto width_at = [&](double low) {
        const std::size_t stretch = stretch_of(nodes, low);
        const double most = std::min(turns, nodes[stretch + 1] - nodes[stretch]);
        // Knots stand at ends of blocks, or at points of those that hold three.
        const auto on_raster = [&](double width) {
            const double place = low / std::min(width, spacing);
            return std::abs(place - std::round(place)) < 1e-3;
        };
        double width = 3.0 * spacing;
        while (width > most || !on_raster(width)) width /= width > 2.0 * spacing ? 3.0 : 2.0;
        return width;
    };
    for (double low = std::floor(kLowestHz / spacing) * spacing, width = 0.0; low < kHighestHz; low += width) {
        width = width_at(low);
        const double from = std::max(low, kLowestHz), to = std::min(low + width, kHighestHz);
        if (to - from < 1e-6) continue;
        grid.blocks.push_back(block_at(nodes, stretch_of(nodes, 0.5 * (from + to)), from, to));
    }
}
}  // namespace

BlockGrid block_grid(const LoopModel& model, const LoopTiming& timing, double steps, std::optional<double> spacing) {
    BlockGrid grid{gain_nodes(model), {}};
    if (model.empty()) return grid;  // no path, so that no width would ever be narrow enough
    if (spacing) {
        fill_raster(grid, timing, steps, *spacing);
    } else {
        for (std::size_t node = 0; node + 1 < grid.nodes.size(); ++node) fill_stretch(grid, timing, steps, node);
    }
    return grid;
}

Survey survey_of(const BlockGrid& grid, const LoopTiming& timing, double steps, double spacing) {
    Survey survey{{grid.nodes, {}}, {}};
    const double width = kIntervals * spacing;
    for (std::size_t b = 0; b < grid.blocks.size();) {
        const Block& first = grid.blocks[b];
        const double low = first.low_hz, high = low + width, knot = std::round(low / spacing) * spacing;
        std::size_t last = b;
        while (last < grid.blocks.size() && grid.blocks[last].low_hz < high - 0.5 * spacing) ++last;
        const bool on_knot = std::abs(low - knot) < 1e-6 * low;
        const bool smooth = steps * spacing * (timing.spread_s + sharpest(timing, low, high)) <= 1.0;
        if (on_knot && smooth && high < kHighestHz && grid.blocks[last - 1].node <= first.node + 1) {
            survey.grid.blocks.push_back(block_at(grid.nodes, first.node, low, high));
            survey.parts.push_back({b, last});
            b = last;
        } else {
            ++b;
        }
    }
    return survey;
}

Block between_points(const Block& block, std::size_t i) {
    return {block.hz(i), block.step_hz / kIntervals, block.node, block.at + block.rise * static_cast<double>(i),
            block.rise / kIntervals};
}

}  // namespace howlmap
