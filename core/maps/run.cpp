// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/run.h"

#include <tbb/enumerable_thread_specific.h>
#include <tbb/parallel_for.h>

#include <atomic>
#include <cmath>

#include "core/maps/kernel/kernel.h"

namespace howlmap::maps {
namespace {
constexpr std::size_t kTilesATask = 8;

/// Calls work(tile, scratch) for every tile on all cores until the job is cancelled.
template <class Work>
bool for_each_tile(const CellList& cells, const Job& job, Work work) {
    tbb::enumerable_thread_specific<Scratch> scratches;
    std::atomic<std::size_t> done{0};
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, cells.tiles.size(), kTilesATask), [&](const auto& part) {
        if (job.cancelled()) return;
        Scratch& scratch = scratches.local();
        for (std::size_t t = part.begin(); t != part.end(); ++t) work(cells.tiles[t], scratch);
        const std::size_t now = done += part.size();
        job.report(static_cast<double>(now) / static_cast<double>(cells.tiles.size()));
    });
    return !job.cancelled();
}
}  // namespace

bool run_field(const Field& field, const CellList& cells, double speed, const std::vector<float>& factors,
               MapGrid& grid, const Job& job) {
    return for_each_tile(cells, job, [&](const Tile& tile, Scratch& scratch) {
        Peaks peaks;
        field_peaks(field, tile, scratch, peaks);
        for (std::size_t i = 0; i < static_cast<std::size_t>(tile.cells); ++i) {
            const std::size_t cell = static_cast<std::size_t>(tile.first) + i;
            const float square = factors.empty() ? peaks.square[i] : peaks.square[i] * factors[cell];
            if (!(square > 0.0f)) continue;
            grid.value[cells.index[cell]] = -10.0f * std::log10(square);
            grid.worst_hz[cells.index[cell]] = static_cast<float>(static_cast<double>(peaks.waves[i]) * speed);
        }
    });
}

std::vector<float> run_energies(const EnergyField& field, const CellList& cells, const Job& job) {
    std::vector<float> energies(cells.index.size(), 0.0f);
    for_each_tile(cells, job, [&](const Tile& tile, Scratch& scratch) {
        std::array<float, kTile> of_tile;
        field_energies(field, tile, scratch, of_tile);
        for (std::size_t i = 0; i < static_cast<std::size_t>(tile.cells); ++i)
            energies[static_cast<std::size_t>(tile.first) + i] = of_tile[i];
    });
    return energies;
}

}  // namespace howlmap::maps
