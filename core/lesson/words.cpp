// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lesson/words.h"

#include <cmath>

#include "core/report/words.h"
#include "core/units/lengths.h"
#include "core/units/localised.h"
#include "core/units/notes.h"

namespace howlmap {
namespace {

template <class... Args>
std::string said(const char* english, const Args&... args) {
    return localised(translate("lesson", english), args...);
}

std::string metres(const Bench& bench, double value) {
    return length_text(value, bench.show.display.units == Units::metric ? LengthUnit::metres : LengthUnit::feet);
}
std::string hz_and_note(double hz) { return said("{} ({})", report::hz_words(hz), note_of(hz).name); }

std::string level_part(const LessonFigures& was, const LessonFigures& is) {
    if (!was.loop_gain_db || !is.loop_gain_db) return {};
    const double change = *is.loop_gain_db - *was.loop_gain_db;
    if (std::abs(change) < 0.05) return translate("lesson", "the level there stays as it was");
    return change > 0.0 ? said("the level there rises by {:.1f} dB", change)
                        : said("the level there falls by {:.1f} dB", -change);
}

std::string margin_part(const LessonFigures& was, const LessonFigures& is) {
    if (!is.margin_db) return translate("lesson", "Nothing comes back: no loop, no ring.");
    if (!was.margin_db) return said("Margin {}.", report::margin_words(is.margin_db));
    return said("Margin {} before, {} now.", report::margin_words(was.margin_db), report::margin_words(is.margin_db));
}

std::string ring_part(const LessonFigures& was, const LessonFigures& is) {
    if (!was.ring_hz || !is.ring_hz) return {};
    if (std::abs(*is.ring_hz / *was.ring_hz - 1.0) < 0.001)
        return said("The first ring stays at {}.", hz_and_note(*is.ring_hz));
    return said("The first ring moves from {} to {}.", hz_and_note(*was.ring_hz), hz_and_note(*is.ring_hz));
}

std::string moved(const Bench& before, const LessonFigures& was, const Bench& after, const LessonFigures& is) {
    const std::string head =
        said("At {} {} fits {:.1f} times; at {} {:.1f} times", metres(before, was.distance_m), report::hz_words(is.hz),
             was.whole_waves, metres(after, is.distance_m), is.whole_waves);
    const std::string level = level_part(was, is);
    if (level.empty()) return head + ".";
    return said("{}: other frequencies fit, and {}.", head, level);
}

/// " 1.07 waves in the air - 0.07 on the rest of the way = 1.00.": why what does not fit in the air may yet be in step.
std::string rest_of_the_way(const LessonFigures& is) {
    const auto hundredths = [](double waves) { return std::round(100.0 * waves) / 100.0; };
    const double misses = -std::arg(is.sum) / (2.0 * kPi), air = hundredths(is.whole_waves);
    const double round = hundredths(is.whole_waves + std::remainder(misses - is.whole_waves, 1.0)), rest = round - air;
    if (std::abs(rest) < 0.005) return {};
    return " " + said("{:.2f} waves in the air {} {:.2f} on the rest of the way (filters, floor, polarity) = {:.2f}.",
                      air, rest > 0.0 ? "+" : "-", std::abs(rest), round);
}

std::string looked_at(const Bench& bench, const LessonFigures& is) {
    std::string head = said("{} is a wave of {}; from loudspeaker to microphone it fits {:.2f} times.",
                            hz_and_note(is.hz), metres(bench, is.speed / is.hz), is.whole_waves);
    if (!is.loop_gain_db) return head;
    const std::string rest = rest_of_the_way(is);
    const char* step = is.misfit < 0.05  ? "It comes back in step: it feeds itself."
                       : is.misfit > 0.4 ? "It comes back against itself: it can not ring here."
                                         : "It comes back out of step.";
    return head + rest + " " + translate("lesson", step);
}

std::string switched(Knob knob, bool on) {
    switch (knob) {
        case Knob::polarity:
            return translate("lesson",
                             on ? "Polarity turned: the frequencies that fit move half-way to their neighbours."
                                : "Polarity as before: the frequencies that fit move back.");
        case Knob::floor:
            return translate("lesson", on ? "The floor reflects: a second way, now with the first, now against it."
                                          : "The floor is gone: one way is left.");
        case Knob::body:
            return translate("lesson", on ? "An instrument with a pickup: its body hears, most where it rings itself."
                                          : "A microphone hears the air.");
        case Knob::covered:
            return translate("lesson", on ? "Sound holes covered: the air in the body is still." : "Sound holes open.");
        default:
            return translate("lesson", on ? "In-ears: the loudspeaker is silent." : "The loudspeaker plays.");
    }
}

std::string turned(Knob knob, const Bench& before, const Bench& after) {
    const double from = value_of(before, knob), to = value_of(after, knob);
    switch (knob) {
        case Knob::aim:
            return said("The microphone turns from {:.0f} to {:.0f} deg.", from, to);
        case Knob::tilt:
            return said("The loudspeaker turns from {:.0f} to {:.0f} deg.", from, to);
        case Knob::level:
            return said("The loudspeaker plays {:.1f} dB SPL at 1 m instead of {:.1f}.", to, from);
        case Knob::source:
            return said(
                "At the microphone the player makes {:.1f} dB SPL instead of {:.1f}; the loudspeaker stays as "
                "loud.",
                to, from);
        case Knob::latency:
            return said("Latency {:.1f} ms instead of {:.1f}: more time on the way, more frequencies fit.", to, from);
        case Knob::pattern:
            return said("The microphone is now: {}.", report::transducer_words(input_of(after)));
        case Knob::middle_cut:
            return said("The middle is cut by {:.1f} dB instead of {:.1f}.", -to, -from);
        default:
            return said("The band at {} is pulled by {:.1f} dB.", report::hz_words(value_of(after, Knob::cut_hz)),
                        -value_of(after, Knob::band_cut));
    }
}

}  // namespace

std::string where_it_stands(const Bench& bench, const LessonFigures& is) {
    std::string out = looked_at(bench, is) + " " +
                      (is.margin_db ? said("Margin {}.", report::margin_words(is.margin_db)) : margin_part(is, is));
    if (is.ring_hz) out += " " + said("First ring {}.", hz_and_note(*is.ring_hz));
    return out;
}

std::string what_changed(Knob knob, const Bench& before, const LessonFigures& was, const Bench& after,
                         const LessonFigures& is) {
    if (knob == Knob::hz) return looked_at(after, is);
    const bool place = knob == Knob::distance || knob == Knob::height || knob == Knob::speaker_height;
    std::string out = place             ? moved(before, was, after, is)
                      : is_switch(knob) ? switched(knob, value_of(after, knob) > 0.5)
                                        : turned(knob, before, after);
    out += " " + margin_part(was, is);
    if (const std::string ring = ring_part(was, is); !place && !ring.empty()) out += " " + ring;
    return out;
}

}  // namespace howlmap
