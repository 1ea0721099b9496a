// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lesson/figures.h"

#include <algorithm>
#include <cmath>

#include "core/loop/loop_model.h"
#include "core/loop/stability.h"
#include "core/units/bands.h"
#include "core/units/level.h"
#include "core/units/notes.h"

namespace howlmap {
namespace {

constexpr double kCombFrom = 50.0, kCombTo = 8000.0, kCombExact = 0.005;  // Hz
constexpr double kStepsPerTurn = 24.0;
constexpr double kFilterDelay_s = 0.002;  // more than filters of a desk turn the phase at any place

double decibels(double ratio) { return ratio > 1e-10 ? ratio_to_db(ratio) : -200.0; }

Complex loop_at(const LoopModel& model, double hz) { return model.loop_matrix(model.factors(hz))(0, 0); }

// Narrows a sign change of the imaginary part.
double in_step_between(const LoopModel& model, double low, double high) {
    bool low_above = loop_at(model, low).imag() > 0.0;
    while (high - low > kCombExact) {
        const double middle = 0.5 * (low + high);
        (loop_at(model, middle).imag() > 0.0) == low_above ? low = middle : high = middle;
    }
    return 0.5 * (low + high);
}

std::vector<Fit> comb_of(const LoopModel& model) {
    double longest = 0.0;
    for (const Leg& leg : model.legs(0, 0)) longest = std::max(longest, leg.held_m);
    const Mix& mix = model.show().mixes.front();
    const double late = longest / model.surroundings().speed + model.latency_s() + mix.delay_ms / 1000.0 +
                        model.show().loudspeakers.front().delay_ms / 1000.0;
    const double step = 1.0 / (kStepsPerTurn * (late + kFilterDelay_s));
    std::vector<Fit> out;
    Complex last = loop_at(model, kCombFrom);
    for (double hz = kCombFrom; hz < kCombTo; hz += step) {
        const Complex next = loop_at(model, hz + step);
        if ((last.imag() > 0.0) != (next.imag() > 0.0) && last.real() + next.real() > 0.0) {
            const double at = in_step_between(model, hz, hz + step);
            const Note note = note_of(at);
            out.push_back({at, decibels(std::abs(loop_at(model, at))), note.name, note.cents});
        }
        last = next;
    }
    return out;
}

void add_phasors(LessonFigures& out, const LoopModel& model) {
    const LoopFactors factors = model.factors(out.hz);
    out.sum = model.loop_matrix(factors)(0, 0);
    const Complex whole = factors.h(0, 0);
    const std::vector<Leg>& legs = model.legs(0, 0);
    const LoudspeakerSlice slice(*model.speakers()[0].emitter.directivity, out.hz, out.speed);
    const Complex direct =
        transfer({legs.front()}, out.hz, slice, model.inputs()[0].receiver.pattern, model.surroundings());
    const Complex chain = std::abs(whole) > 1e-15 ? out.sum / whole : Complex(0.0);
    out.direct = direct * chain;
    out.bounce = out.sum - out.direct;
    out.loop_gain_db = decibels(std::abs(out.sum));
    out.misfit = std::abs(out.sum) > 1e-15 ? std::abs(std::arg(out.sum)) / (2.0 * kPi) : 0.5;
}

double tone_cost(const Mix& mix) {
    const Filter chain = mix_chain(mix);
    double sum = 0.0;
    for (int band = 0; band < kThirdOctaves; ++band) {
        const double db = decibels(chain.magnitude(third_octave_centre(band)));
        sum += db * db;
    }
    return std::sqrt(sum / kThirdOctaves);
}

void add_geometry(LessonFigures& out, const Bench& bench) {
    const Emitter emitter = emitter_of(loudspeaker_of(bench));
    const Receiver receiver = receiver_of(input_of(bench));
    const Planes planes = planes_between(bench.show.stage, emitter.position, receiver.position);
    const std::vector<Leg> legs = legs_between(emitter, receiver, planes);
    out.distance_m = length(receiver.position - emitter.position);
    out.whole_waves = legs.front().held_m * out.hz / out.speed;
    out.microphone_angle_deg = degrees(legs.front().in_angle);
    out.loudspeaker_angle_deg = degrees(legs.front().out.off_axis);
    out.pattern_db = decibels(std::abs(receiver.pattern.gain(legs.front().in_angle, out.hz)));
    if (legs.size() > 1 && value_of(bench, Knob::floor) > 0.5) out.bounce_m = legs[1].held_m;
}

void add_fans(LessonFigures& out, const Bench& bench) {
    const Emitter emitter = emitter_of(loudspeaker_of(bench));
    const Receiver receiver = receiver_of(input_of(bench));
    const Vec2 way = receiver.position.xy() - emitter.position.xy();
    const double far = length(way);
    const Vec2 ahead = far > 1e-9 ? way * (1.0 / far) : Vec2{0.0, 1.0};
    const LoudspeakerSlice slice(*emitter.directivity, out.hz, out.speed);
    for (int k = 0; k < kFan; ++k) {
        const double level = std::cos(2.0 * kPi * k / kFan), up = std::sin(2.0 * kPi * k / kFan);
        const Vec3 leaving{ahead.x * level, ahead.y * level, up}, arriving{-ahead.x * level, -ahead.y * level, up};
        out.speaker_fan.push_back(slice.gain(local_angles(emitter.frame, leaving)));
        out.microphone_fan.push_back(receiver.pattern.gain(local_angles(receiver.frame, arriving).off_axis, out.hz));
    }
}

}  // namespace

LessonFigures figures_of(const Bench& bench) {
    LessonFigures out;
    out.hz = bench.hz;
    out.speed = speed_of_sound(bench.show.air.temperature_c);
    add_geometry(out, bench);
    add_fans(out, bench);
    out.tone_cost_db = tone_cost(bench.show.mixes.front());
    const LoopModel model(bench.show);
    if (model.empty()) return out;
    add_phasors(out, model);
    out.comb = comb_of(model);
    const Stability stability = stability_of(bench.show, true);
    out.margin_db = stability.margin_db;
    if (!stability.rings.empty()) out.ring_hz = stability.rings.front().hz;
    return out;
}

}  // namespace howlmap
