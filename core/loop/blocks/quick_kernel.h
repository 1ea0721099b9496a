// SPDX-License-Identifier: GPL-3.0-or-later
// Inner loops over blocks of frequencies in single precision: to throw out quickly what cannot be the first ring, and
// to about 1e-5 what is left. The best instruction set of the machine is chosen at run time.
#pragma once
#include <cstdint>
#include <vector>

#include "core/loop/blocks/block_kernel.h"
#include "core/loop/blocks/lanes.h"

namespace howlmap {

/// Arrays by leg hold whole vectors: a multiple of this many.
inline constexpr std::size_t kQuickPad = 16;

/// steps[leg] = exp(-2 pi j step_hz delay i) at point i. Given: count a multiple of kQuickPad.
void quick_steps(const double* delays, std::size_t count, double step_hz, QuickLanes* steps);

/// Values between two nodes: at[i] = low[i] + t (high[i] - low[i]), rise[i] = step (high[i] - low[i]). Given: count a
/// multiple of kQuickPad.
void quick_between(const float* low, const float* high, std::size_t count, float t, float step, float* at, float* rise);

/// Contributions of the legs at the first point of a block, and how their sizes rise from point to point.
struct QuickStarts {
    std::vector<float> re, im, rise_re, rise_im;
    void resize(std::size_t legs);
};
/// Given: delays in s, gains and rises by leg, frequency of the first point in Hz.
void quick_starts(const double* delays, const float* gains, const float* rises, std::size_t count, double low_hz,
                  QuickStarts& starts);
/// h[pair] = sum over its legs [first[pair], first[pair + 1]) of (start + i rise) step.
void quick_paths(const std::uint32_t* first, std::size_t pairs, const QuickLanes* steps, const QuickStarts& starts,
                 QuickLanes* h);

/// h[pair] += (rms + i rise) z, with a number of its own at each point: see gaussian_knots. Given: states of the
/// generator by pair, offset to the first point's.
void quick_room_at_knots(const std::uint64_t* states, std::uint64_t offset, std::size_t pairs, const float* rms,
                         const float* rise, QuickLanes* h);
/// Gaussian numbers of one knot for many pairs. Given: count a multiple of kQuickPad.
void quick_gaussians(const std::uint64_t* states, std::uint64_t offset, std::size_t count, float* re, float* im);
/// h[pair] += (rms + i rise) sum over k of (re, im)[k stride + pair] weights[k].
void quick_room(const float* re, const float* im, std::size_t stride, std::size_t knots, const QuickRealLanes* weights,
                std::size_t pairs, const float* rms, const float* rise, QuickLanes* h);

/// The sends that are not 0, by bus or, where the matrix is one of inputs, by input.
struct QuickSends {
    struct Send {
        std::uint32_t other;  ///< the input, or the bus
        float gain;
    };
    std::vector<Send> sends;
    std::vector<std::uint32_t> first;  ///< of each bus or input, and the end
    /// Given: S by bus, then input; what to divide it by.
    void set(const Wiring& wiring, const std::vector<double>& gains, double scale);
};
/// The smaller loop matrix, row by row: as loop_matrix, with sends and phases of the loudspeakers of its own.
/// Given: phases by loudspeaker as complex numbers of size 1; a factor for each element, row by row; scratch for inputs
/// x buses values and one a slot.
void quick_matrix(const Wiring& wiring, const QuickSends& sends, const QuickLanes* h, const QuickLanes* hears,
                  const QuickLanes* speaks, const std::complex<float>* phases, const float* factors, QuickLanes* heard,
                  QuickLanes* matrix);

/// Upper bounds of the spectral radius from the norms of the matrix, its 2nd, 4th and 8th power, as far as they are
/// needed to bring all below `enough`; whether any is not below. Given: scratch for 2 n n values.
bool quick_bounds(const QuickLanes* matrix, std::size_t n, float enough, QuickLanes* scratch, QuickRealLanes& bounds);

}  // namespace howlmap
