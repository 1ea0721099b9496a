// SPDX-License-Identifier: GPL-3.0-or-later
// What the analysis of all loops together finds. Margins in dB; absent means that nothing rings above -60 dB.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace howlmap {

/// Part of a ring that one loudspeaker-to-microphone path carries; shares of a ring sum to 1 (they may be negative).
struct Share {
    std::string input;        ///< the one that hears
    std::string loudspeaker;  ///< the one that speaks
    double share = 0.0;
};

/// A frequency at which the stage would ring if every send were raised by `margin_db`.
struct Ring {
    double hz = 0.0;
    double band_hz = 0.0;  ///< nominal third-octave value
    std::string note;
    double cents = 0.0;
    double margin_db = 0.0;
    double build_up_db_per_s = 0.0;  ///< positive: it grows; negative: it dies away
    double whole_waves = 0.0;        ///< r f / c of the strongest direct path
    double turns = 0.0;              ///< the rest of that loop, in turns of phase
    std::string strongest_input, strongest_loudspeaker, strongest_source,
        strongest_mix;          ///< the strongest (c', l, c, m)
    std::vector<Share> shares;  ///< largest first, from 0.005 up in size
};

/// One send through one loudspeaker of its mix back into the input.
struct PairFigure {
    std::string input, loudspeaker, mix;
    double distance_m = 0.0;
    std::optional<double> microphone_angle_deg;  ///< absent for a pickup
    double loudspeaker_angle_deg = 0.0;
    double worst_hz = 0.0;
    double loop_gain_db = 0.0;
};

/// A third-octave in which a stage may ring first, and what rings there in the draws that do.
struct BandProbability {
    double band_hz = 0.0;  ///< nominal value
    double probability = 0.0;
    double hz = 0.0;                      ///< median of the frequencies at which it rings first
    std::string input, loudspeaker, mix;  ///< the way round that carries most of it
    struct MixShare {
        std::string mix;
        double share = 0.0;  ///< part of the ring that goes through this mix, 0..1; all together 1
    };
    std::vector<MixShare> mixes;  ///< largest first
};

struct ToleranceFigures {
    int draws = 0;
    std::uint64_t seed = 0;
    std::optional<double> margin_p05_db, margin_p50_db, margin_p95_db;  ///< the 5th percentile is the one to count on
    std::vector<BandProbability> first_ring;                            ///< by falling probability: the ring-out list
};

}  // namespace howlmap
