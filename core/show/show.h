// SPDX-License-Identifier: GPL-3.0-or-later
// A show: plain values, in the order of the file. Everything else in the program is computed from it or changes it.
#pragma once
#include <cstdint>
#include <string>
#include <vector>

#include "core/show/input.h"
#include "core/show/loudspeaker.h"
#include "core/show/mix.h"
#include "core/show/performer.h"
#include "core/show/stage.h"

namespace howlmap {

struct Contact {
    std::string name, phone, email;
    Extras extras;
    friend bool operator==(const Contact&, const Contact&) = default;
};

enum class Units { metric, imperial };

struct Display {
    Units units = Units::metric;
    Extras extras;
    friend bool operator==(const Display&, const Display&) = default;
};

struct Air {
    double temperature_c = 20.0;    ///< -30..60
    double humidity_pct = 50.0;     ///< 0..100
    double pressure_kpa = 101.325;  ///< 50..110
    Extras extras;
    friend bool operator==(const Air&, const Air&) = default;
};

struct System {
    double latency_ms = 0.0;  ///< converters and processing, 0..1000
    double target_margin_db = 6.0;
    double house_target_dba = 95.0;
    Extras extras;
    friend bool operator==(const System&, const System&) = default;
};

/// How far the real stage may lie from the drawing: half widths of uniform draws.
struct Tolerance {
    int draws = 1000;  ///< 1..100000
    std::uint64_t seed = 1;
    double position_m = 0.05, aim_deg = 5.0, send_db = 1.0, temperature_c = 3.0, phase_deg = 60.0;
    Extras extras;
    friend bool operator==(const Tolerance&, const Tolerance&) = default;
};

struct Backline {
    std::string id, name, kind;
    Vec3 position;
    double level_1m_dba = 0.0;
    Spectrum spectrum = SpectrumName::pink;
    std::string notes;
    Extras extras;
    friend bool operator==(const Backline&, const Backline&) = default;
};

/// A place in the house.
struct Listener {
    std::string id, name;
    Vec3 position;
    Extras extras;
    friend bool operator==(const Listener&, const Listener&) = default;
};

struct Mark {
    std::string id;
    std::string kind = "note";  ///< power, di_box, stage_box, riser_label, note, or any other word
    Vec2 position;
    double yaw_deg = 0.0;
    std::string text;
    Extras extras;
    friend bool operator==(const Mark&, const Mark&) = default;
};

/// One line of the log kept while ringing out.
struct SoundcheckEntry {
    double hz = 1000.0;
    double band = 1000.0;  ///< nominal third-octave value
    std::string input, mix, action;
    double gain_db = 0.0;
    std::string time, note;
    Extras extras;
    friend bool operator==(const SoundcheckEntry&, const SoundcheckEntry&) = default;
};

struct Show {
    std::string title, venue, date, act;
    Contact contact;
    std::string notes;
    Display display;
    Air air;
    System system;
    Tolerance tolerance;
    Stage stage;
    std::vector<Loudspeaker> loudspeakers;
    std::vector<Input> inputs;
    std::vector<Performer> performers;
    std::vector<Mix> mixes;
    std::vector<Backline> backline;
    std::vector<Listener> listeners;
    std::vector<Mark> marks;
    std::vector<SoundcheckEntry> soundcheck;
    Extras extras;
    friend bool operator==(const Show&, const Show&) = default;
};

}  // namespace howlmap
