// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/show/filter.h"

namespace howlmap {

/// `level_db`: dB SPL at 1 m on the axis of the mix's loudspeakers that the input reaches in loud playing, before
/// equalisers.
struct Send {
    std::string input;
    double level_db = 90.0;  ///< -60..160
    Extras extras;
    friend bool operator==(const Send&, const Send&) = default;
};

struct Mix {
    std::string id;
    int number = 1;
    std::string name;
    std::vector<std::string> loudspeakers;  ///< ids
    std::vector<Send> sends;                ///< at most one an input
    std::map<int, double> graphic_eq;       ///< dB by third-octave band index 0..30; bands not given: 0 dB
    std::vector<PeakFilter> notches;
    std::optional<HighPass> high_pass;
    Polarity polarity = Polarity::normal;
    double delay_ms = 0.0;
    Extras extras;
    friend bool operator==(const Mix&, const Mix&) = default;
};

}  // namespace howlmap
