// SPDX-License-Identifier: GPL-3.0-or-later
// All loops of a stage: the sweep as drawn on one thread, and the draws. Beside each the plain way in the same run.
#include <oneapi/tbb/global_control.h>

#include <chrono>
#include <cstdio>
#include <random>

#include "core/loop/blocks/block_scan.h"
#include "core/loop/blocks/block_sweep.h"
#include "core/loop/eigenvalues.h"
#include "core/loop/stability.h"
#include "core/loop/swift_margin.h"
#include "core/loop/tolerance.h"

using namespace howlmap;

namespace {
template <class Work>
double best_ms(int runs, Work work) {
    double best = 1e9;
    for (int i = 0; i < runs; ++i) {
        const auto before = std::chrono::steady_clock::now();
        work();
        best = std::min(best,
                        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - before).count());
    }
    return best;
}

/// Inputs in a row, a wedge before each mix, hard walls around: six images a path.
Show stage(int inputs, int mixes) {
    std::mt19937 random(4);
    std::uniform_real_distribution<double> some(-0.3, 0.3);
    Show show;
    Surfaces& surfaces = show.stage.surfaces;
    surfaces.back = Surface{6.0, 0.3, {}};
    surfaces.front = Surface{-3.0, 0.5, {}};
    surfaces.left = Surface{6.0, 0.3, {}};
    surfaces.right = Surface{-6.0, 0.3, {}};
    surfaces.ceiling = Surface{5.0, 0.4, {}};
    for (int i = 0; i < inputs; ++i) {
        Input input;
        input.id = "i" + std::to_string(i);
        input.position = {-4.0 + 8.0 * i / inputs + some(random), 2.5 + some(random), 1.5 + some(random)};
        input.aim = {180.0 + 40.0 * some(random), -10.0, 0.0};
        if (i % 3 == 2) {
            Pickup pickup;
            pickup.modes = {{104.0 + 30.0 * i, 18.0, 6.0, true, "", {}}, {460.0 + i, 25.0, 2.0, false, "", {}}};
            input.transducer = pickup;
        }
        show.inputs.push_back(input);
    }
    for (int m = 0; m < mixes; ++m) {
        Loudspeaker unit;
        unit.id = "l" + std::to_string(m);
        unit.position = {-4.0 + 8.0 * m / mixes + some(random), 1.0 + some(random), 0.3};
        unit.aim = {180.0, 40.0, 0.0};
        unit.directivity = Coverage{70.0, 50.0, 0.5, 0.35, 24.0, {}};
        unit.response.low_hz = 70.0;
        unit.response.low_order = 4;
        unit.response.high_hz = 16000.0;
        show.loudspeakers.push_back(unit);
        Mix mix;
        mix.id = "m" + std::to_string(m);
        mix.number = m + 1;
        mix.loudspeakers = {unit.id};
        for (int i = 0; i < inputs; ++i)
            if ((i + m) % 2 == 0) mix.sends.push_back({"i" + std::to_string(i), 88.0 + 20.0 * some(random), {}});
        show.mixes.push_back(mix);
    }
    show.system.latency_ms = 2.0;
    return show;
}

/// The margin alone, the model made anew each time. Given: what one frequency costs plainly, ms.
void strongest_as_drawn(const Show& show, double plain) {
    const oneapi::tbb::global_control one(oneapi::tbb::global_control::max_allowed_parallelism, 1);
    const double fast = best_ms(25, [&] { swift_margin(show); });
    const BlockModel blocks(show, Purpose::strongest);
    BlockScan scan(blocks);
    scan.as_drawn();  // fills the chains
    const double again = best_ms(25, [&] { scan.as_drawn(); });
    const auto points = static_cast<double>(blocks.grid().blocks.size() * kBlockPoints);
    std::printf(
        "  strongest crossing alone, %.0f frequencies, one thread: %.2f ms (%.2f ms for 4800), with its model made "
        "anew "
        "%.2f ms; plainly %.0f ms, %.0f times, anew %.0f times\n",
        points, again, again * 4800.0 / points, fast, plain * points, plain * points / again, plain * points / fast);
}

void sweep_as_drawn() {
    const Show show = stage(16, 8);
    const oneapi::tbb::global_control one(oneapi::tbb::global_control::max_allowed_parallelism, 1);
    const BlockModel blocks(show, Purpose::as_drawn);
    block_sweep(blocks, {});  // fills the chains
    const double fast = best_ms(9, [&] { block_sweep(blocks, {}); });
    const std::size_t points = blocks.grid().blocks.size() * kBlockPoints;
    const LoopModel model(show);
    const double plain = best_ms(1, [&] {
        for (int i = 0; i < 64; ++i) eigenvalues_of(model.small_matrix(model.factors(20.0 + 300.0 * i)));
    });
    const double slow = plain / 64.0 * static_cast<double>(points);
    std::printf(
        "16 x 8, %zu images, %zu frequencies, one thread: %.2f ms (%.2f ms for 4800); plainly %.0f ms, %.0f times\n",
        model.legs(0, 0).size(), points, fast, fast * 4800.0 / static_cast<double>(points), slow, slow / fast);
    strongest_as_drawn(show, plain / 64.0);
}

void draws() {
    Show show = stage(8, 6);
    for (const bool room : {false, true}) {
        if (room) show.stage.room = Room{1100.0, 1.0, {}};
        show.tolerance.draws = room ? 100 : 1000;
        const double fast = best_ms(3, [&] { tolerance_figures(show); }) * 1000.0 / show.tolerance.draws;
        if (room) {
            std::printf("8 x 6 in a room, 1000 draws: %.0f ms\n", fast);
            continue;
        }
        const double slow = 1000.0 * best_ms(1, [&] { drawn_margin(show, 3); });
        std::printf("8 x 6, 1000 draws: %.0f ms; plainly %.0f ms, %.0f times\n", fast, slow, slow / fast);
    }
}
}  // namespace

int main() {
    sweep_as_drawn();
    draws();
}
