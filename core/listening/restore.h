// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <vector>

#include "core/listening/send_model.h"

namespace howlmap {

/// One performer's wish for the fixed point: own >= ratio * others at her ear, by a factor on her own sends.
struct HearWish {
    std::size_t ear = 0;  ///< row of the model
    double ratio = 1.0;   ///< of energies
    double lowest = 0.0;  ///< factor of energy that must not be gone below
};

struct Restored {
    bool settles = true;           ///< false: each answer called for another until a factor passed the limit
    std::vector<double> factors;   ///< of energy, one a wish
    std::vector<double> energies;  ///< of all sends
};

/// The lowest own sends with which all wishes hold at once: start as low as allowed and let everyone answer in turn.
/// Monotone, so it meets the lowest solution or passes +60 dB when there is none (R. D. Yates, IEEE J. Sel. Areas
/// Commun. 13, 1995).
Restored restore_hearing(const SendModel& model, const std::vector<double>& energies,
                         const std::vector<HearWish>& wishes);

}  // namespace howlmap
