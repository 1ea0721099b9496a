// SPDX-License-Identifier: GPL-3.0-or-later
// Whole valid shows at random.
#pragma once
#include <rapidcheck.h>

#include <cstdint>

#include "core/show/show.h"

namespace howlmap::test {

struct RandomShowOptions {
    /// Anything a file may hold, to the ends of every range; else what a stage could look like: everything inside the
    /// outline, 0.3 m and more apart, levels of a gig, at least one loop.
    bool anything = true;
    bool unknown_keys = true;  ///< only with `anything`
    int most_inputs = 6, most_loudspeakers = 4, most_mixes = 3, most_others = 4;
    bool walls = true, room = true, lines = true;
};

/// The same seed and options give the same show on every machine.
Show random_show(std::uint64_t seed, const RandomShowOptions& options = {});

/// Options for tests of the acoustics.
inline RandomShowOptions stage_like() {
    RandomShowOptions options;
    options.anything = options.unknown_keys = false;
    return options;
}

/// The same as a rapidcheck generator; shrinks towards fewer objects.
rc::Gen<Show> random_shows(const RandomShowOptions& options = {});

}  // namespace howlmap::test
