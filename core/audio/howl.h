// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace howlmap {

/// A howl found in a recording.
struct Howl {
    double hz = 0.0;
    double from_s = 0.0;           ///< when it first stood out
    double to_s = 0.0;             ///< when it had fallen 20 dB below its loudest, or was no longer found
    double growth_db_per_s = 0.0;  ///< slope of its straight rise; 0 if it was there from the start and held its level
    double level_dbfs = 0.0;       ///< at its loudest, re a full-scale sine
};

}  // namespace howlmap
