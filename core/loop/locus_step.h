// SPDX-License-Identifier: GPL-3.0-or-later
// One step of all eigenloci from a frequency to the next: who is who, whether that is sure, and which pass the positive
// real axis.
#pragma once
#include <algorithm>
#include <cmath>
#include <vector>

#include "core/units/complex.h"

namespace howlmap {

/// One locus at both ends, the common delay taken out.
struct LocusStep {
    Complex from, to;
    double turn() const { return std::arg(to * std::conj(from)); }
    /// Whether it has at least this modulus at either end. Given: 0 or more.
    bool reaches(double size) const { return std::max(std::norm(from), std::norm(to)) >= size * size; }
};

/// From where to where a step goes, and the delay that all loci share.
struct StepSpan {
    double low_hz, high_hz, common_s;
};

/// Pairs the eigenvalues of two frequencies, nearest first. Both lists have the same length.
std::vector<LocusStep> paired(const std::vector<Complex>& low, const std::vector<Complex>& high);

/// Whether every locus of a modulus of at least `least` turns by less than 45 deg, changes by less than a factor of 2,
/// and cannot have been taken for a neighbour with another number of crossings as the result.
bool is_clear(const std::vector<LocusStep>& steps, const StepSpan& span, double least);

/// Where the angle of lambda, followed from the low end, passes whole turns.
struct Passing {
    double turns;  ///< the whole number (negative with delay)
    double hz;     ///< by interpolation
    double size;   ///< |lambda| there, by interpolation
};

/// Angle of lambda at the low end and how far it turns, delay included, rad.
struct Turning {
    double start, turn;
    /// Whole turns n with 2 pi n in (start, start + turn], or in [start + turn, start): a crossing belongs to one step
    /// only.
    double first() const;
    double last() const;
};
Turning turning(const LocusStep& step, const StepSpan& span);

/// Calls found(Passing) for every passing of a step.
template <class Found>
void for_each_passing(const LocusStep& step, const StepSpan& span, Found found) {
    const Turning t = turning(step, span);
    const double last = t.last();
    for (double n = t.first(); n <= last; ++n) {
        const double along = std::clamp((n * 6.283185307179586 - t.start) / t.turn, 0.0, 1.0);
        found(Passing{n, span.low_hz + (span.high_hz - span.low_hz) * along,
                      std::pow(std::abs(step.from), 1.0 - along) * std::pow(std::abs(step.to), along)});
    }
}

}  // namespace howlmap
