// SPDX-License-Identifier: GPL-3.0-or-later
// Eight inputs, eight mixes, all images: how much faster than real time the loops sound, on one thread.
#include <benchmark/benchmark.h>

#include <chrono>

#include "core/audio/loop_sound.h"

namespace {

using namespace howlmap;

Surface surface(double at, double absorption) {
    Surface out;
    out.at = at, out.absorption = absorption;
    return out;
}

PeakFilter peak(double hz, double q, double gain_db) {
    PeakFilter out;
    out.hz = hz, out.q = q, out.gain_db = gain_db;
    return out;
}

Show eight_loops() {
    Show show;
    show.stage.surfaces.back = surface(4.0, 0.3), show.stage.surfaces.front = surface(-9.0, 0.4);
    show.stage.surfaces.left = surface(5.0, 0.2), show.stage.surfaces.right = surface(-5.0, 0.2);
    show.stage.surfaces.ceiling = surface(5.0, 0.5);
    for (int k = 0; k < 8; ++k) {
        const double x = -3.5 + k;
        Loudspeaker l;
        l.id = "w" + std::to_string(k), l.position = {x, 0.5, 0.2}, l.aim = {180.0, 40.0, 0.0};
        l.directivity = Coverage{}, l.response.low_hz = 70.0;
        show.loudspeakers.push_back(l);
        Input i;
        i.id = "m" + std::to_string(k), i.position = {x, 1.7, 1.5}, i.high_pass = HighPass{};
        i.equaliser = {peak(400.0, 2.0, -3.0), peak(3000.0, 1.0, 2.0)};
        show.inputs.push_back(i);
        Mix m;
        m.id = "x" + std::to_string(k), m.loudspeakers = {l.id}, m.graphic_eq = {{15, -4.0}, {20, -6.0}};
        for (int c = 0; c < 8; ++c) {
            Send s;
            s.input = "m" + std::to_string(c), s.level_db = c == k ? 92.0 : 82.0;
            m.sends.push_back(s);
        }
        show.mixes.push_back(m);
    }
    return show;
}

void hear_eight_loops(benchmark::State& state) {
    auto sound = LoopSound::prepare(eight_loops(), {});
    std::vector<float> second(48000);
    double spent = 0.0;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        sound->play(second);
        benchmark::DoNotOptimize(second.data());
        spent += std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    }
    state.counters["times_real_time"] = static_cast<double>(state.iterations()) / spent;
}

void hear_prepare(benchmark::State& state) {
    const Show show = eight_loops();
    for (auto _ : state) benchmark::DoNotOptimize(LoopSound::prepare(show, {}));
}

}  // namespace

BENCHMARK(hear_eight_loops)->Unit(benchmark::kMillisecond)->Iterations(10);
BENCHMARK(hear_prepare)->Unit(benchmark::kMillisecond)->Iterations(2);
