// SPDX-License-Identifier: GPL-3.0-or-later
// Field maps: how much faster than the plain loop, and how near the machine's peak. Every ratio comes from this run.
#include <benchmark/benchmark.h>
#include <tbb/global_control.h>

#include <chrono>
#include <cmath>
#include <cstdio>

#include "core/maps/kernel/kernel.h"
#include "core/maps/run.h"
#include "hwy/targets.h"
#include "tests/bench/maps/scene.h"
#include "tests/bench/support/peak.h"

using namespace howlmap;
using namespace howlmap::bench;

namespace {
constexpr std::size_t kPlainCells = 64;

template <class Work>
double seconds(Work work) {
    const auto before = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - before).count();
}

/// Best of several runs: what the machine can do when nothing disturbs it.
template <class Work>
double best_seconds(int runs, Work work) {
    double best = 1e9;
    for (int i = 0; i < runs; ++i) best = std::min(best, seconds(work));
    return best;
}

/// Seconds that a plain loop would take for the whole map, from some of its cells.
template <class Real>
double plain_seconds() {
    static const double taken = [] {
        const auto field = scene().plain<Real>(kPlainCells);
        const double some = best_seconds(5, [&] { benchmark::DoNotOptimize(plain_peaks(field, kPlainCells)); });
        return some * static_cast<double>(scene().cells.index.size()) / static_cast<double>(kPlainCells);
    }();
    return taken;
}

double draw(Scene& s, const maps::Field& field, const maps::CellList& cells, MapGrid& grid, int threads) {
    const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, static_cast<std::size_t>(threads));
    return seconds([&] { maps::run_field(field, cells, s.speed, {}, grid, {}); });
}

double largest_difference(Scene& s) {
    const auto field = s.plain<double>(kPlainCells);
    const auto plain = plain_peaks(field, kPlainCells);
    double worst = 0.0;
    for (std::size_t i = 0; i < plain.size(); ++i)
        worst = std::max(worst, std::abs(plain[i].db - static_cast<double>(s.grid.value[s.cells.index[i]])));
    return worst;
}

void report(benchmark::State& state, double best, int threads) {
    state.counters["best_ms"] = 1e3 * best;
    state.counters["x_plain_double"] = plain_seconds<double>() / best;
    state.counters["x_plain_fast_float"] = plain_seconds<float>() / best;
    state.counters["of_peak"] = kernel_flops(scene()) / best / (threads * multiply_add_peak());
}

void choose(std::int64_t target) {
    hwy::SetSupportedTargetsForTest(target);
    hwy::GetChosenTarget().Update(hwy::SupportedTargets());
}

void full_map(benchmark::State& state, int threads, std::int64_t target, bool refine) {
    Scene& s = scene();
    choose(target);
    maps::Field field = s.driven->field;
    field.refine = refine;
    double best = 1e9;
    for (auto _ : state) best = std::min(best, draw(s, field, s.cells, s.grid, threads));
    report(state, best, threads);
    if (!refine) state.counters["db_off_plain"] = largest_difference(s);
    choose(0);
}

void coarse_map(benchmark::State& state, int threads) {
    Scene& s = scene();
    double best = 1e9;
    for (auto _ : state) best = std::min(best, draw(s, s.coarse->field, s.coarse_cells, s.coarse_grid, threads));
    state.counters["best_ms"] = 1e3 * best;
}

void tables(benchmark::State& state) {
    Scene& s = scene();
    for (auto _ : state)
        benchmark::DoNotOptimize(maps::directivity_rows(s.show.loudspeakers[0].directivity, maps::kSwept, s.speed));
}

void register_all() {
    using benchmark::RegisterBenchmark;
    const auto ms = benchmark::kMillisecond;
    for (const int threads : {1, 2})
        for (const std::int64_t target : hwy::SupportedAndGeneratedTargets()) {
            const std::string name =
                std::string("full_map/") + hwy::TargetName(target) + "/threads:" + std::to_string(threads);
            RegisterBenchmark(name.c_str(), full_map, threads, target, false)->Unit(ms)->UseRealTime();
        }
    RegisterBenchmark("full_map_refined/threads:2", full_map, 2, std::int64_t{0}, true)->Unit(ms)->UseRealTime();
    RegisterBenchmark("coarse_map/threads:2", coarse_map, 2)->Unit(ms)->UseRealTime();
    RegisterBenchmark("directivity_tables", tables)->Unit(ms);
}
}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    std::printf("38,400 cells x 8 loudspeakers x 7 paths x 479 frequencies\n");
    std::printf("multiply-add peak, one thread (%s): %.0f GFLOP/s\n", maps::kernel_target(), multiply_add_peak() / 1e9);
    std::printf("plain loop, std::complex<double>, -O3, one thread: %.1f s\n", plain_seconds<double>());
    std::printf("plain loop, single precision, -march=native -ffast-math, one thread: %.2f s\n",
                plain_seconds<float>());
    register_all();
    benchmark::RunSpecifiedBenchmarks();
}
