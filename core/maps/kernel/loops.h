// SPDX-License-Identifier: GPL-3.0-or-later
// Closed loops of a whole show, eight frequencies a step, in double precision; the instruction set is chosen at run
// time.
#pragma once
#include <vector>

#include "core/loop/blocks/block_kernel.h"
#include "core/maps/kernel/aligned.h"
#include "core/maps/kernel/fine.h"

namespace howlmap::maps {

using Doubles = std::vector<double, LineAllocator<double>>;

/// Complex values over frequency, whole octets of them.
struct Curve {
    Doubles re, im;
    void resize(std::size_t n) {
        re.resize(n);
        im.resize(n);
    }
};

/// A path: its delay, and its gain either at the bins (linear between them) or at every frequency of the curve.
struct Leg8 {
    double delay_s;
    const double* bin_gains;   ///< kBins of them, or null
    const double* fine_gains;  ///< as many as the curve has, or null
};
/// Adds a path to a curve over some octets.
void add_leg(const Leg8& leg, const Octet* octets, std::size_t count, Curve& curve);

/// Where to find the factors of the loops at one octet: the first of eight values, by pair (input * speakers +
/// speaker), input, speaker and bus.
struct LoopCurves {
    std::vector<const Curve*> h, b, p, r, e;
};

/// Working space of closed loops.
struct LoopScratch {
    std::vector<double, LineAllocator<double>> heard, matrix, power, square, column;
};

/// For an opened input: drives of the loudspeakers times what the input makes of their sound, B_c w, by speaker, (re,
/// im), eight frequencies. Solved from the buses' signals y: (I - G) y = E S P of the input, G what the other inputs
/// bring back. Given: index of the octet in the curves. `bound`, unless null, receives upper bounds of the largest
/// eigenvalue of G in modulus (norms of its powers), eight frequencies.
void feedback_octet(const Wiring& wiring, const LoopCurves& curves, std::size_t octet, std::size_t input,
                    LoopScratch& scratch, double* drives, double* bound);

}  // namespace howlmap::maps
