// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lesson/bench.h"

#include <algorithm>
#include <cmath>

#include "core/loop/filter.h"

namespace howlmap {
namespace {

constexpr std::array<KnobRange, kKnobs> kRanges{{{"hz", 50, 8000, 1},
                                                 {"distance_m", 0.2, 5, 0.01},
                                                 {"height_m", 0.1, 2.2, 0.01},
                                                 {"speaker_height_m", 0.1, 2.2, 0.01},
                                                 {"aim_deg", -180, 180, 1},
                                                 {"tilt_deg", -30, 90, 1},
                                                 {"level_db", 50, 125, 0.5},
                                                 {"source_db", 70, 120, 0.5},
                                                 {"latency_ms", 0, 30, 0.1},
                                                 {"polarity", 0, 1, 1},
                                                 {"floor", 0, 1, 1},
                                                 {"pattern", 0, 5, 1},
                                                 {"body", 0, 1, 1},
                                                 {"covered", 0, 1, 1},
                                                 {"cut_hz", 50, 8000, 1},
                                                 {"band_cut_db", -12, 0, 0.5},
                                                 {"middle_cut_db", -12, 0, 0.5},
                                                 {"in_ears", 0, 1, 1}}};
constexpr int kMiddleFirst = 14, kMiddleLast = 20;  // third-octave bands 500 Hz .. 2 kHz
constexpr double kHardFloor = 0.1, kFreeAir = 1.0;  // absorption coefficients

Loudspeaker& speaker(Bench& bench) { return bench.show.loudspeakers.front(); }
Input& input(Bench& bench) { return bench.show.inputs.front(); }

// Horizontal unit vector from the loudspeaker to the microphone: the plane of the side view.
Vec2 outward(const Bench& bench) {
    const Vec2 way = input_of(bench).position.xy() - loudspeaker_of(bench).position.xy();
    const double far = length(way);
    return far > 1e-9 ? way * (1.0 / far) : Vec2{0.0, 1.0};
}

// Angle of an aim within the side view, the horizontal given.
double angle_in_plane(const Aim& aim, Vec2 ahead) {
    const Vec3 f = frame_of(aim).forward;
    return degrees(std::atan2(f.z, f.x * ahead.x + f.y * ahead.y));
}
Aim aim_in_plane(double angle_deg, Vec2 ahead) {
    const double level = std::cos(radians(angle_deg)), up = std::sin(radians(angle_deg));
    return aim_towards({}, {ahead.x * level, ahead.y * level, up});
}

PeakFilter* pulled_band(Bench& bench) {
    auto& notches = bench.show.mixes.front().notches;
    const auto found = std::find_if(notches.begin(), notches.end(), [](const auto& n) { return n.q == kGraphicBandQ; });
    return found == notches.end() ? nullptr : &*found;
}
PeakFilter& need_band(Bench& bench) {
    if (PeakFilter* band = pulled_band(bench)) return *band;
    PeakFilter band;
    band.hz = 1000.0, band.q = kGraphicBandQ;
    return bench.show.mixes.front().notches.emplace_back(band);
}

// A violin's first modes: cavity A0 and the two body modes B1. Common figures of its acoustics (near 275, 450 and
// 540 Hz), levels and qualities estimated.
Pickup violin_pickup() {
    const auto mode = [](double hz, double q, double gain, bool air) {
        BodyMode out;
        out.hz = hz, out.q = q, out.gain_db = gain, out.air = air;
        return out;
    };
    Pickup out;
    out.modes = {mode(275, 15, 4, true), mode(450, 28, -8, false), mode(540, 30, -7, false)};
    return out;
}

int pattern_number(const Microphone& microphone) {
    if (const auto* name = std::get_if<PatternName>(&microphone.pattern)) return static_cast<int>(*name);
    return static_cast<int>(PatternName::cardioid);
}

void set_body(Bench& bench, bool body) {
    if (body == (pickup_of(input(bench)) != nullptr)) return;
    if (body)
        input(bench).transducer = violin_pickup();
    else
        input(bench).transducer = Microphone{};
    input(bench).spectrum = body ? SpectrumName::strings : SpectrumName::voice;
}

void set_floor(Bench& bench, bool reflects) {
    if (reflects != (value_of(bench, Knob::floor) > 0.5))
        bench.show.stage.surfaces.floor.absorption = reflects ? kHardFloor : kFreeAir;
}

void set_middle(Bench& bench, double db) {
    for (int band = kMiddleFirst; band <= kMiddleLast; ++band) {
        bench.show.mixes.front().graphic_eq.erase(band);
        if (db < 0.0) bench.show.mixes.front().graphic_eq[band] = db;
    }
}

void set_place(Bench& bench, Knob knob, double value) {
    const Vec2 out = outward(bench), from = speaker(bench).position.xy();
    Vec3& at = input(bench).position;
    if (knob == Knob::distance) at = {from.x + out.x * value, from.y + out.y * value, at.z};
    if (knob == Knob::height) at.z = value;
    if (knob == Knob::speaker_height) speaker(bench).position.z = value;
    if (knob == Knob::aim) input(bench).aim = aim_in_plane(value, out * -1.0);
    if (knob == Knob::tilt) speaker(bench).aim = aim_in_plane(value, out);
}

void set_switch(Bench& bench, Knob knob, bool on) {
    if (knob == Knob::polarity) input(bench).polarity = on ? Polarity::inverted : Polarity::normal;
    if (knob == Knob::floor) set_floor(bench, on);
    if (knob == Knob::body) set_body(bench, on);
    if (auto* pickup = std::get_if<Pickup>(&input(bench).transducer); pickup && knob == Knob::covered)
        pickup->holes_covered = on;
    if (knob == Knob::in_ears) {
        auto& fed = bench.show.mixes.front().loudspeakers;
        fed.clear();
        if (!on) fed.push_back(bench.loudspeaker);
    }
}

void set_number(Bench& bench, Knob knob, double value) {
    if (knob == Knob::hz) bench.hz = value;
    if (knob == Knob::level) bench.show.mixes.front().sends.front().level_db = value;
    if (knob == Knob::source) input(bench).source_spl_db = value;
    if (knob == Knob::latency) bench.show.system.latency_ms = value;
    if (knob == Knob::cut_hz) need_band(bench).hz = value;
    if (knob == Knob::band_cut) need_band(bench).gain_db = value;
    if (knob == Knob::middle_cut) set_middle(bench, value);
    if (auto* microphone = std::get_if<Microphone>(&input(bench).transducer); microphone && knob == Knob::pattern)
        microphone->pattern = static_cast<PatternName>(std::lround(value));
}

double place_value(const Bench& bench, Knob knob) {
    const Vec2 out = outward(bench);
    const Vec3 from = loudspeaker_of(bench).position, at = input_of(bench).position;
    if (knob == Knob::distance) return length(at.xy() - from.xy());
    if (knob == Knob::height) return at.z;
    if (knob == Knob::speaker_height) return from.z;
    return knob == Knob::aim ? angle_in_plane(input_of(bench).aim, out * -1.0)
                             : angle_in_plane(loudspeaker_of(bench).aim, out);
}

double switch_value(const Bench& bench, Knob knob) {
    const Input& in = input_of(bench);
    if (knob == Knob::polarity) return in.polarity == Polarity::inverted ? 1.0 : 0.0;
    if (knob == Knob::body) return pickup_of(in) ? 1.0 : 0.0;
    if (knob == Knob::covered) return pickup_of(in) && pickup_of(in)->holes_covered ? 1.0 : 0.0;
    if (knob == Knob::in_ears) return bench.show.mixes.front().loudspeakers.empty() ? 1.0 : 0.0;
    const auto* one = std::get_if<double>(&bench.show.stage.surfaces.floor.absorption);
    return one && *one >= kFreeAir ? 0.0 : 1.0;
}

}  // namespace

const KnobRange& range_of(Knob knob) { return kRanges[static_cast<std::size_t>(knob)]; }

std::optional<Knob> knob_named(std::string_view key) {
    for (int k = 0; k < kKnobs; ++k)
        if (key == kRanges[static_cast<std::size_t>(k)].key) return static_cast<Knob>(k);
    return std::nullopt;
}

bool is_switch(Knob knob) {
    return knob == Knob::polarity || knob == Knob::floor || knob == Knob::body || knob == Knob::covered ||
           knob == Knob::in_ears;
}

Bench plain_bench() {
    Bench bench;
    Loudspeaker l;
    l.id = bench.loudspeaker = "loudspeaker", l.position = {0.0, 0.0, 0.3}, l.aim = {180.0, 30.0, 0.0};
    l.directivity = Coverage{}, l.response.low_hz = 70.0;
    Input i;
    i.id = "microphone", i.position = {0.0, 1.2, 1.4}, i.aim = {180.0, 0.0, 0.0}, i.spectrum = SpectrumName::voice;
    Send send;
    send.input = i.id, send.level_db = 90.0;
    Mix mix;
    mix.id = "mix", mix.loudspeakers = {l.id}, mix.sends = {send};
    bench.show.loudspeakers = {l}, bench.show.inputs = {i}, bench.show.mixes = {mix};
    return bench;
}

double value_of(const Bench& bench, Knob knob) {
    const Mix& mix = bench.show.mixes.front();
    const PeakFilter* band = pulled_band(const_cast<Bench&>(bench));
    const auto middle = mix.graphic_eq.find(kMiddleFirst);
    switch (knob) {
        case Knob::hz:
            return bench.hz;
        case Knob::distance:
        case Knob::height:
        case Knob::speaker_height:
        case Knob::aim:
        case Knob::tilt:
            return place_value(bench, knob);
        case Knob::level:
            return mix.sends.front().level_db;
        case Knob::source:
            return input_of(bench).source_spl_db;
        case Knob::latency:
            return bench.show.system.latency_ms;
        case Knob::pattern:
            return microphone_of(input_of(bench)) ? pattern_number(*microphone_of(input_of(bench))) : 0.0;
        case Knob::cut_hz:
            return band ? band->hz : 1000.0;
        case Knob::band_cut:
            return band ? band->gain_db : 0.0;
        case Knob::middle_cut:
            return middle == mix.graphic_eq.end() ? 0.0 : middle->second;
        default:
            return switch_value(bench, knob);
    }
}

void turn(Bench& bench, Knob knob, double value) {
    if (!std::isfinite(value)) return;
    const KnobRange& range = range_of(knob);
    value = std::clamp(value, range.least, range.most);
    set_place(bench, knob, value);
    if (is_switch(knob))
        set_switch(bench, knob, value > 0.5);
    else
        set_number(bench, knob, value);
}

const Loudspeaker& loudspeaker_of(const Bench& bench) { return bench.show.loudspeakers.front(); }
const Input& input_of(const Bench& bench) { return bench.show.inputs.front(); }

}  // namespace howlmap
