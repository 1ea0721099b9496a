// SPDX-License-Identifier: GPL-3.0-or-later
// A quick, cautious stand-in for the margin to count on, for searching only; whatever is reported comes from the full
// analysis. Magnitudes alone, loops of different pairs added by chance, paths whose phases the tolerance
// scrambles added in full, the nulls of microphones blunted by the tolerance of their aim, the room at its likely
// strongest.
#pragma once
#include <memory>
#include <vector>

#include "core/show/show.h"

namespace howlmap::cures {

/// Part of the loop gain at one frequency, by positions in the lists of the show. Parts sum to 1.
struct LoopPart {
    int heard = 0;  ///< input that hears
    int loudspeaker = 0;
    int mix = 0;
    int source = 0;  ///< input that is sent
    double share = 0.0;
};

class Guard {
  public:
    explicit Guard(const Show& show);
    /// The same for a changed show with the same items in the same order (mixes and sends may differ in any way).
    /// Computes only what differs.
    Guard changed(const Show& after) const;

    /// Frequencies looked at, Hz, rising: twelve an octave and the modes of bodies.
    const std::vector<double>& hz() const;
    /// Loop gain in dB at each of them; -200 where there is none.
    const std::vector<double>& gains_db() const { return gains_db_; }
    /// What is left at the strongest frequency, dB; 200 without a loop.
    double margin_db() const;
    std::size_t strongest() const;
    /// Like margin_db, but every frequency counts a little, so that lowering the second peak is seen too.
    double soft_margin_db() const;
    /// Who makes the loop gain at a frequency, largest first.
    std::vector<LoopPart> parts(std::size_t at) const;

  private:
    struct Surround;
    using Curve = std::shared_ptr<const std::vector<double>>;
    Guard() = default;
    void compute(const Guard* before);
    struct Beam;
    void find_beams(const Guard* before);
    void compute_gains();
    Curve path_curve(std::size_t input, std::size_t loudspeaker) const;
    struct Slice;
    Slice slice(std::size_t at) const;
    double part(std::size_t at, std::size_t heard, std::size_t loudspeaker, std::size_t mix, std::size_t source) const;

    std::shared_ptr<const Show> show_;
    std::shared_ptr<const Surround> surround_;
    std::vector<std::shared_ptr<const Beam>> beams_;  // by loudspeaker; no cure changes them
    // All of these are amplitudes raised to one power, see kPower.
    std::vector<Curve> paths_;  // by input, then loudspeaker; null for line inputs
    std::vector<Curve> bodies_, chains_, responses_, mixes_;
    std::vector<std::vector<double>> sends_;  // by mix, then input
    std::vector<std::vector<int>> fed_;       // loudspeakers of each mix
    std::vector<double> gains_db_;
};

}  // namespace howlmap::cures
