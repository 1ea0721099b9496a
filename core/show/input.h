// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/geometry/pose.h"
#include "core/show/directivity.h"
#include "core/show/filter.h"

namespace howlmap {

enum class PatternName { omni, subcardioid, cardioid, supercardioid, hypercardioid, figure_8 };

/// A named first-order pattern, its number a (0..1) in a + (1 - a) cos, or a measured table.
using Pattern = std::variant<PatternName, double, DirectivityTable>;

/// a of a named pattern: 1, 0.7, 0.5, 0.37, 0.25, 0.
double first_order_a(PatternName name);

struct Microphone {
    Pattern pattern = PatternName::cardioid;
    bool cupped = false;  ///< a hand around the grille
    Response response;
    Extras extras;
    friend bool operator==(const Microphone&, const Microphone&) = default;
};

/// One mode of an instrument's body. hz 1..100000, q above 0..1000, gain_db -60..60.
struct BodyMode {
    double hz = 275.0, q = 15.0, gain_db = 0.0;
    bool air = false;  ///< lives in the sound holes, so covering them takes it away
    std::string name;
    Extras extras;
    friend bool operator==(const BodyMode&, const BodyMode&) = default;
};

struct Pickup {
    double isolation_db = 15.0;
    double baseline_db = -12.0;
    bool holes_covered = false;
    double cover_db = 10.0;
    std::vector<BodyMode> modes;
    Extras extras;
    friend bool operator==(const Pickup&, const Pickup&) = default;
};

/// Keys, playback: no loop and no position of its own.
struct Line {
    friend bool operator==(const Line&, const Line&) = default;
};

using Transducer = std::variant<Microphone, Pickup, Line>;

enum class SpectrumName { pink, voice, strings, plucked, bass };

/// A named shape, or dB by third-octave band index 0..30 (bands not given: no energy).
using Spectrum = std::variant<SpectrumName, std::map<int, double>>;

struct Input {
    std::string id;
    int channel = 1;  ///< 1..
    std::string name;
    Transducer transducer = Microphone{};
    Vec3 position;
    bool has_position = true;  ///< a line input may have none
    Aim aim;                   ///< roll is not used
    double source_spl_db = 94.0;
    std::string performer;  ///< id, may be empty
    Polarity polarity = Polarity::normal;
    std::optional<HighPass> high_pass;
    std::vector<PeakFilter> equaliser;
    Spectrum spectrum = SpectrumName::pink;
    std::string stand;
    bool phantom = false, di = false;
    std::string notes;
    Extras extras;
    friend bool operator==(const Input&, const Input&) = default;
};

inline bool is_line(const Input& input) { return std::holds_alternative<Line>(input.transducer); }
inline const Microphone* microphone_of(const Input& input) { return std::get_if<Microphone>(&input.transducer); }
inline const Pickup* pickup_of(const Input& input) { return std::get_if<Pickup>(&input.transducer); }

}  // namespace howlmap
