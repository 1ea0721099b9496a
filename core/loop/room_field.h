// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/random.h"
#include "core/propagation/diffuse_field.h"
#include "core/show/show.h"
#include "core/units/complex.h"

namespace howlmap {

/// Hz between independent values of the room term: 2.2/RT60, held where no frequency comes near the first of them.
double knot_spacing_hz(const Room& room);

/// Statistics of the reverberant field between every loudspeaker and every microphone or pickup of a show with a room:
/// a complex Gaussian over frequency whose values 2.2/RT60 apart are independent. Source: Schroeder, Acustica 4, 1954
/// (English: J. Audio Eng. Soc. 35, 299-306, 1987).
class RoomField {
  public:
    /// Given: a show with a room.
    explicit RoomField(const Show& show);

    /// Hz between independent values.
    double knot_spacing_hz() const { return spacing_hz_; }
    /// Knots of one pair: ceil(20000 RT60 / 2.2) + 2.
    std::uint64_t knots() const { return knots_; }
    /// Root mean square of the room term for input and loudspeaker by index in the show.
    double rms(int input, int loudspeaker, double hz) const;
    /// Place of the first of the two numbers of a knot.
    std::uint64_t place(std::uint64_t first, int input, int loudspeaker, std::uint64_t k) const;
    /// z_k of a pair: unit variance. `first` is the place of the draw's first room number (1, 2, ..).
    Complex knot(const DrawNumbers& numbers, std::uint64_t first, int input, int loudspeaker, std::uint64_t k) const;
    /// The room term itself, between knots by weights that keep the variance.
    Complex value(const DrawNumbers& numbers, std::uint64_t first, int input, int loudspeaker, double hz) const;

  private:
    double spacing_hz_;
    double mean_square_;  // for Q = 1
    std::uint64_t knots_;
    std::vector<int> order_;  // of an input among microphones and pickups; -1 for a line
    std::vector<ThirdOctaveValues> factors_, efficiencies_;
};

}  // namespace howlmap
