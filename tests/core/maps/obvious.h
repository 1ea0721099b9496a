// SPDX-License-Identifier: GPL-3.0-or-later
// The maps worked out the long way round: the show with the thing moved, its whole loop matrix in double precision, and
// the gain of one opened loop from it. Nothing of the kernels, tables or drives is used.
#pragma once
#include <memory>
#include <string>

#include "core/show/show.h"

namespace howlmap {
class LoopModel;
}

namespace howlmap::test {

/// dB of margin that an input has left at a frequency with its transducer at a place and all other channels closed.
/// From the loop matrix over inputs: -20 log10 |L_cc + L_co (I - L_oo)^-1 L_oc|.
class ObviousFeedback {
  public:
    ObviousFeedback(const Show& show, const std::string& input, Vec2 place);
    double margin_db(double hz) const;

  private:
    std::shared_ptr<Show> show_;
    std::shared_ptr<const LoopModel> model_;  // of the show as it is now
    int input_;
};

/// The same for the mix that the listener of a loudspeaker hears, with the loudspeaker at a place, aimed at her ear and
/// as loud there as before. From the loops seen from the buses.
class ObviousLoudspeaker {
  public:
    ObviousLoudspeaker(const Show& show, const std::string& loudspeaker, const std::string& performer, Vec2 place);
    double margin_db(double hz) const;

  private:
    std::shared_ptr<Show> show_;
    std::shared_ptr<const LoopModel> model_;
    int mix_;
};

struct Peak {
    double margin_db, hz;
};
/// Smallest margin over 20 Hz .. 20 kHz: a grid of `per_octave` frequencies, and a search around its 12 lowest points.
template <class Obvious>
Peak smallest_margin(const Obvious& map, int per_octave);

/// Level of a mix at a place at ear height, dBA or one band in dB.
double obvious_level(const Show& show, const std::string& mix, Vec2 place, int band = -1);
/// Wash of the stage loudspeakers at a place at ear height, dBA.
double obvious_wash(const Show& show, Vec2 place);

}  // namespace howlmap::test
