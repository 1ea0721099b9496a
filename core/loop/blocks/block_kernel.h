// SPDX-License-Identifier: GPL-3.0-or-later
// Inner loops over blocks of frequencies, one frequency a lane; the best instruction set of the machine is chosen at
// run time.
#pragma once
#include <cstdint>
#include <vector>

#include "core/loop/blocks/lanes.h"

namespace howlmap {

/// A path's contribution within a block: (gain + i slope) exp(-2 pi j (turns + i turns_step)) at point i, or
/// by_point[i] times the phasor.
struct LegInBlock {
    double turns, turns_step;
    double gain, slope;
    const double* by_point;  ///< null: gain and slope
};
/// Sum of legs at all points, phases to 1e-9.
void sum_legs(const LegInBlock* legs, std::size_t count, Lanes& sum);

/// Gains of one leg at many frequencies: scale[i] exp(-air[i] metres) times, where `square` is not null,
/// exp(depth expm1(decay square[i] stretch)): the coverage model's fall off axis. In single precision: to 10^-5 dB.
/// Arrays hold whole vectors of 16.
struct LegGains {
    const float* scale;  ///< reflection factor by frequency; null: 1
    const float* air;    ///< Np/m
    float metres, factor;
    const float* across;  ///< 1 / half-angle^2 by frequency; null: no coverage
    const float* above;
    float across_weight, above_weight;  ///< th^2 cos^2 psi, th^2 sin^2 psi
    float depth, decay;
};
void leg_gains(const LegGains& leg, std::size_t count, float* gains);

/// Complex Gaussian numbers of unit variance: sqrt(-ln(1 - u1)) exp(2 pi j u2), u1 and u2 being two neighbouring
/// outputs of SplitMix64. Given: the generator's states before u1, without `offset`. Arrays hold whole vectors of 8.
void gaussian_knots(const std::uint64_t* states, std::uint64_t offset, std::size_t count, double* re, double* im);

/// sum += scale (sum over k of (re[k stride], im[k stride]) weights[k]) (rms + i rise): a room term at the points of a
/// block.
void add_room(const double* re, const double* im, std::size_t stride, std::size_t knots, const RealLanes* weights,
              Complex scale, double rms, double rise, Lanes& sum);

/// How the loop matrix is put together from its factors.
struct Wiring {
    struct Slot {
        std::size_t bus, speaker;
    };
    std::size_t inputs = 0, buses = 0, speakers = 0;
    std::vector<Slot> slots;    ///< loudspeakers of the buses
    std::vector<double> sends;  ///< S by bus, then input

    bool by_inputs() const { return buses >= inputs; }                 ///< which of the two forms is the smaller
    std::size_t size() const { return by_inputs() ? inputs : buses; }  ///< rows of the smaller matrix
};
/// The smaller loop matrix, row by row. Given: H by input, then speaker; B P by input; R E exp(-jw tau) by slot;
/// scratch for inputs x buses values.
void loop_matrix(const Wiring& wiring, const Lanes* h, const Lanes* hears, const Lanes* speaks, Lanes* scratch,
                 Lanes* matrix);

/// Magnitudes of the elements of B A S P, inputs x inputs, row by row. Given: the scratch that loop_matrix filled.
/// Returns an upper bound of their Perron root: the largest row sum or the largest column sum.
RealLanes loop_sizes(const Wiring& wiring, const Lanes* heard, RealLanes* sizes);

/// Product of two n x n matrices stored row by row.
void multiply_matrices(const Lanes* a, const Lanes* b, std::size_t n, Lanes* product);
/// Square of the Frobenius norm.
RealLanes frobenius_square(const Lanes* matrix, std::size_t n);
/// Smallest over k of squares[k]^(1 / (2 (k + 1))): bounds of the spectral radius from the norms of powers of a matrix.
RealLanes bounds_from_squares(const RealLanes* squares, std::size_t count);
/// Trace of the product of two n x n matrices.
void trace_of_product(const Lanes* a, const Lanes* b, std::size_t n, Lanes& trace);

/// Roots of the polynomial with the power sums p_1 .. p_n of its roots (Newton's identities, then the simultaneous
/// iteration of Aberth, Math. Comp. 27, 339-344, 1973). Given: n 1..kMostRoots, roots of modulus 1 at most, of which
/// those above 0.1 come out to about 1e-8.
inline constexpr std::size_t kMostRoots = 24;
/// Returned: the square of how far any of those moved last; above 1e-12 the iteration has not come to an end.
RealLanes roots_from_power_sums(const Lanes* sums, std::size_t n, Lanes* roots);

}  // namespace howlmap
