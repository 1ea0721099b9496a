// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <vector>

#include "core/show/extras.h"

namespace howlmap {

/// Butterworth high-pass. hz 1..100000, order 1..8.
struct HighPass {
    double hz = 80.0;
    int order = 2;
    Extras extras;
    friend bool operator==(const HighPass&, const HighPass&) = default;
};

/// Peaking filter (audio EQ cookbook form). hz 1..100000, q above 0..1000, gain_db -60..60. A notch has a negative
/// gain.
struct PeakFilter {
    double hz = 1000.0, q = 1.0, gain_db = 0.0;
    Extras extras;
    friend bool operator==(const PeakFilter&, const PeakFilter&) = default;
};

struct ResponsePoint {
    double hz = 1000.0, db = 0.0;
    Extras extras;
    friend bool operator==(const ResponsePoint&, const ResponsePoint&) = default;
};

/// Response of a transducer: Butterworth corners (absent: none) times a magnitude table (dB over log f, held at the
/// ends).
struct Response {
    std::optional<double> low_hz;  ///< corner of the high-pass
    int low_order = 2;
    std::optional<double> high_hz;  ///< corner of the low-pass
    int high_order = 2;
    std::vector<ResponsePoint> table;  ///< hz strictly rising
    Extras extras;
    friend bool operator==(const Response&, const Response&) = default;
};

}  // namespace howlmap
