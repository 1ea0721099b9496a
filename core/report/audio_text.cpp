// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/audio_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

#include "core/report/check_text.h"
#include "core/report/translated.h"
#include "core/report/words.h"
#include "core/units/bands.h"
#include "core/units/notes.h"

namespace howlmap::report {
namespace {

constexpr std::size_t kSuspects = 4;  // the likeliest; further ones are far from ringing

// "1:02:03.4": where to look in the recording.
std::string clock(double seconds) {
    const auto tenths = static_cast<long>(std::lround(10.0 * std::max(0.0, seconds)));
    const long whole = tenths / 10, hours = whole / 3600, minutes = whole / 60 % 60;
    const std::string rest = fmt::format("{:02}:{:02}.{}", minutes, whole % 60, tenths % 10);
    return hours > 0 ? fmt::format("{}:{}", hours, rest) : rest;
}

std::string note_text(double hz) {
    const Note note = note_of(hz);
    return localised("{} {:+.0f} c", note.name, note.cents + 0.0);
}

std::string band_of(double hz) {
    return band_words(kNominalThirdOctaves[static_cast<std::size_t>(third_octave_of(hz))]);
}

// Figures of a measurement: 0.1 Hz below 1 kHz, four figures above.
std::string measured_hz(double hz) {
    return hz < 1000.0 ? localised("{:.1f} Hz", hz) : localised("{:.3f} kHz", hz / 1000.0);
}

std::string growth_text(double db_per_s) { return db_per_s > 0.0 ? localised("{:+.1f} dB/s", db_per_s) : t("held"); }

std::string suspect_lines(const std::vector<LoopSuspect>& suspects, const Show& show) {
    if (suspects.empty()) return "      " + t("no loop of the show comes near this frequency") + "\n";
    std::string text;
    for (const LoopSuspect& s : std::span(suspects).first(std::min(kSuspects, suspects.size())))
        text += "      " +
                f("could be {} > {}: rings at {} as drawn, margin {}", object_name(show, s.loudspeaker),
                  object_name(show, s.input), hz_words(s.hz), margin_words(s.margin_db)) +
                "\n";
    if (suspects.size() > kSuspects)
        text += "    " + f("  and {} more; --json lists them\n", suspects.size() - kSuspects);
    return text;
}

}  // namespace

std::string ring_text(const RingFindings& findings, const SuspectLists& suspects, const Show* show) {
    const std::size_t count = findings.howls.size();
    if (count == 0) return f("No howl was found in {}.\n", clock(findings.duration_s));
    std::string text = count == 1 ? f("One howl in {}.\n\n", clock(findings.duration_s))
                                  : f("{} howls in {}.\n\n", count, clock(findings.duration_s));
    text += fmt::format("  {:<11}{:<11}{:<12}{:<12}{:<12}{:<13}{}\n", t("From"), t("To"), t("Frequency"), t("Note"),
                        t("Pull band"), t("Grew"), t("Loudest"));
    for (std::size_t i = 0; i < count; ++i) {
        const Howl& h = findings.howls[i];
        text +=
            localised("  {:<11}{:<11}{:<12}{:<12}{:<12}{:<13}{:.1f} dBFS\n", clock(h.from_s), clock(h.to_s),
                      measured_hz(h.hz), note_text(h.hz), band_of(h.hz), growth_text(h.growth_db_per_s), h.level_dbfs);
        if (show && i < suspects.size()) text += suspect_lines(suspects[i], *show);
    }
    text += "\n" + t("Pull 3 dB first and listen; a notch at the frequency itself costs less tone than a band.") + "\n";
    return text;
}

std::string tap_text(const TapFindings& findings) {
    std::string text = findings.taps == 1 ? t("One tap.\n\n") : f("{} taps, averaged.\n\n", findings.taps);
    text +=
        fmt::format("  {:<12}{:<12}{:<8}{:<10}{}\n", t("Frequency"), t("Note"), "Q", t("Level"), t("Falls 60 dB in"));
    for (const TapMode& m : findings.modes)
        text += localised("  {:<12}{:<12}{:<8.1f}{:<10}{:.2f} s\n", measured_hz(m.hz), note_text(m.hz), m.q,
                          localised("{:.1f} dB", m.level_db + 0.0), std::log(1000.0) * m.q / (std::numbers::pi * m.hz));
    return text;
}

std::string hear_text(const HearResult& result, const Show& show) {
    std::string text =
        f("Margin as drawn: {}; all sends raised by {:g} dB.\n", margin_words(result.margin_db), result.raised_db);
    text += f("{:.1f} s of sound; the source plays into {}.\n", result.seconds, object_name(show, result.input));
    if (!result.dominant_hz || !result.growth_db_per_s) return text + t("Nothing comes back round a loop.\n");
    const auto named = [](double hz) { return measured_hz(hz) + " (" + note_text(hz) + ")"; };
    const double growth = *result.growth_db_per_s;
    text += growth > 0.0 ? f("{} howls: it grows by {:.1f} dB/s until the amplifier holds it.\n",
                             named(*result.dominant_hz), growth)
                         : f("No howl: what comes back dies away by {:.1f} dB/s.\n", -growth);
    const double left = result.margin_db.value_or(0.0) - result.raised_db;
    if (growth <= 0.0 && left > 0.0 && result.first_ring_hz)
        text += f("First to howl would be {}, with {:.1f} dB more.\n", named(*result.first_ring_hz), left);
    return text + t("Turn the volume down before you listen: howling hurts.\n");
}

}  // namespace howlmap::report
