// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lesson/figures.h"

#include <tbb/blocked_range.h>
#include <tbb/parallel_for.h>
#include <tbb/parallel_invoke.h>

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
    std::vector<Complex> round(2 + static_cast<std::size_t>((kCombTo - kCombFrom) / step));
    const auto hz_of = [step](std::size_t k) { return kCombFrom + step * static_cast<double>(k); };
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, round.size(), 128), [&](const auto& part) {
        for (std::size_t k = part.begin(); k != part.end(); ++k) round[k] = loop_at(model, hz_of(k));
    });
    std::vector<Fit> out;
    for (std::size_t k = 0; k + 1 < round.size(); ++k) {
        const Complex last = round[k], next = round[k + 1];
        if ((last.imag() > 0.0) == (next.imag() > 0.0) || last.real() + next.real() <= 0.0) continue;
        const double at = in_step_between(model, hz_of(k), hz_of(k + 1));
        const Note note = note_of(at);
        out.push_back({at, decibels(std::abs(loop_at(model, at))), note.name, note.cents});
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
        transfer({legs.front()}, slice, model.inputs()[0].receiver.pattern, {model.surroundings(), out.hz});
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

namespace {
/// What depends on the frequency that is looked at.
LessonFigures at_frequency(const Bench& bench, const LoopModel& model) {
    LessonFigures out;
    out.hz = bench.hz;
    out.speed = speed_of_sound(bench.show.air.temperature_c);
    add_geometry(out, bench);
    add_fans(out, bench);
    if (!model.empty()) add_phasors(out, model);
    return out;
}
}  // namespace

LessonFigures figures_of(const Bench& bench) {
    const LoopModel model(bench.show);
    LessonFigures out = at_frequency(bench, model);
    out.tone_cost_db = tone_cost(bench.show.mixes.front());
    if (model.empty()) return out;
    Stability stability;
    tbb::parallel_invoke([&] { out.comb = comb_of(model); }, [&] { stability = stability_of(bench.show, true); });
    out.margin_db = stability.margin_db;
    if (!stability.rings.empty()) out.ring_hz = stability.rings.front().hz;
    return out;
}

LessonFigures figures_at_other_frequency(const Bench& bench, const LessonFigures& before) {
    LessonFigures out = at_frequency(bench, LoopModel(bench.show));
    out.tone_cost_db = before.tone_cost_db;
    out.comb = before.comb;
    out.margin_db = before.margin_db;
    out.ring_hz = before.ring_hz;
    return out;
}

}  // namespace howlmap
