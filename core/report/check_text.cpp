// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/check_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/listening/headroom.h"
#include "core/listening/masking.h"
#include "core/listening/wash.h"
#include "core/report/loudness_text.h"
#include "core/report/translated.h"
#include "core/report/words.h"
#include "core/show/find.h"

namespace howlmap::report {
namespace {

constexpr std::size_t kRings = 6, kPairs = 6, kBands = 5, kShares = 3;
constexpr double kToldShare = 0.1;  // of the wash

std::string heading(const std::string& words) { return fmt::format("\n{}\n", words); }

std::string verdict_line(const Show& show, const AnalysisResult& result) {
    const double target = show.system.target_margin_db;
    if (!result.margin_db)
        return t("HOLDS: no loudspeaker reaches an open microphone or pickup, so nothing can ring.\n");
    const double count_on =
        result.tolerance && result.tolerance->margin_p05_db ? *result.tolerance->margin_p05_db : *result.margin_db;
    switch (result.verdict) {
        case Verdict::rings:
            return f("RINGS: count on {:.1f} dB; a stage set up from this drawing may howl as it is set.\n", count_on);
        case Verdict::tight:
            return f("TIGHT: count on {:.1f} dB, {:.1f} dB short of the target of {:g} dB.\n", count_on,
                     target - count_on, target);
        case Verdict::holds:
            break;
    }
    return f("HOLDS: count on {:.1f} dB; the target is {:g} dB.\n", count_on, target);
}

std::string margins(const AnalysisResult& result) {
    std::string text = fmt::format("\n  {:<22}{:<22}{}\n", t("To count on"), t("As drawn"), t("At the worst phases"));
    const std::string count_on = margin_words(result.tolerance ? result.tolerance->margin_p05_db : std::nullopt);
    text += fmt::format("  {:<22}{:<22}{}\n", count_on, margin_words(result.margin_db),
                        margin_words(result.worst_phase_margin_db));
    if (result.tolerance)
        text += f("  (to count on: 95 of 100 stages set up by hand from this drawing have at least this; {} draws)\n",
                  result.tolerance->draws);
    return text;
}

std::string who(const Show& show, const Ring& ring) {
    std::string text;
    for (const Share& share : ring.shares) {
        if (&share - ring.shares.data() == kShares) break;
        if (!text.empty()) text += ", ";
        text += localised("{} > {} {:.0f} %", object_name(show, share.loudspeaker), object_name(show, share.input),
                          100.0 * share.share + 0.0);
    }
    return text;
}

std::string more(std::size_t all, std::size_t shown) {
    return all > shown ? f("  and {} more; --json lists them\n", all - shown) : std::string();
}

std::string rings(const Show& show, const AnalysisResult& result) {
    if (result.rings.empty()) return {};
    std::string text = heading(t("First rings as drawn, worst first"));
    text += fmt::format("  {:<10}{:<12}{:<10}{:<10}{:<22}{}\n", t("Frequency"), t("Note"), t("Band"), t("Margin"),
                        t("At this margin"), t("Who: loudspeaker > input"));
    for (std::size_t i = 0; i < std::min(kRings, result.rings.size()); ++i) {
        const Ring& ring = result.rings[i];
        text += fmt::format("  {:<10}{:<12}{:<10}{:<10}{:<22}{}\n", hz_words(ring.hz), note_words(ring),
                            band_words(ring.band_hz), margin_words(ring.margin_db),
                            build_up_words(ring.build_up_db_per_s), who(show, ring));
    }
    text += more(result.rings.size(), kRings);
    return text + fmt::format("  {}.\n", ring_words(show, result.rings.front()));
}

std::string first_bands(const AnalysisResult& result) {
    if (!result.tolerance || result.tolerance->first_ring.empty()) return {};
    std::string text = heading(t("Where to listen first when ringing out")) + " ";
    const auto& bands = result.tolerance->first_ring;
    for (std::size_t i = 0; i < std::min(kBands, bands.size()); ++i)
        text += localised("{} {} {:.0f} %", i ? "," : "", band_words(bands[i].band_hz), 100.0 * bands[i].probability);
    return text + "\n";
}

std::string pairs(const Show& show, const AnalysisResult& result) {
    if (result.pairs.empty()) return {};
    std::string text =
        heading(t("Pairs to worry about: loop gain at the worst frequency of each, distance, angle off each axis"));
    for (std::size_t i = 0; i < std::min(kPairs, result.pairs.size()); ++i) {
        const PairFigure& pair = result.pairs[i];
        const std::string angle = pair.microphone_angle_deg ? localised("{:.0f}°", *pair.microphone_angle_deg) : "-";
        text += fmt::format("  {:<10}{:<10}{:<9}{:>5} {:>5}  {} > {} ({})\n",
                            localised("{:.1f} dB", pair.loop_gain_db + 0.0), hz_words(pair.worst_hz),
                            distance_words(pair.distance_m, show.display.units), angle,
                            localised("{:.0f}°", pair.loudspeaker_angle_deg), object_name(show, pair.loudspeaker),
                            object_name(show, pair.input), object_name(show, pair.mix));
    }
    return text + more(result.pairs.size(), kPairs);
}

std::string dba(const std::optional<double>& level) { return level ? localised("{:.0f} dBA", *level) : t("silent"); }

std::string minutes(const std::optional<double>& value) {
    if (!value) return "-";
    constexpr double kDay = 24.0 * 60.0;
    if (*value >= kDay) return t("a day or more");
    return *value < 10.0 ? localised("{:.1f} min", *value) : localised("{:.0f} min", *value);
}

/// Where in the spectrum players cannot hear themselves, each in a sentence to her.
std::string masked(const Show& show) {
    std::string text;
    for (const EarSpectrum& spectrum : ear_spectra(show))
        for (const MaskedRange& range : spectrum.masked)
            text += fmt::format("  {}: {}\n", object_name(show, spectrum.performer), range.sentence);
    return text;
}

std::string ears(const Show& show, const AnalysisResult& result) {
    if (result.performers.empty()) return {};
    std::string text = heading(t("Ears (estimates for planning, no hearing-safety measurement)"));
    text += fmt::format("  {:<24}{:<10}{:<10}{:<18}{:<16}{}\n", t("Player"), t("Own"), t("Others"),
                        t("Own over others"), t("NIOSH"), t("OSHA"));
    for (const PerformerFigure& figure : result.performers) {
        const std::string over = figure.hear_margin_db ? localised("{:+.0f} dB", *figure.hear_margin_db + 0.0) : "-";
        text += fmt::format("  {:<24}{:<10}{:<10}{:<18}{:<16}{}\n", object_name(show, figure.id), dba(figure.own_dba),
                            dba(figure.others_dba), over, minutes(figure.niosh_minutes), minutes(figure.osha_minutes));
    }
    return text + masked(show);
}

/// Who makes a tenth or more of the wash at a place.
std::string makers(const Show& show, const std::string& place) {
    const Listener* listener = find_by_id(show.listeners, place);
    if (!listener) return {};
    std::string text;
    for (const WashShare& share : wash_shares(show, listener->position))
        if (share.share >= kToldShare)
            text += localised("{}{} {:.0f} %", text.empty() ? "" : ", ", object_name(show, share.loudspeaker),
                              100.0 * share.share);
    return text;
}

std::string house(const Show& show, const AnalysisResult& result) {
    if (result.house.empty()) return {};
    std::string text = heading(f("House: what spills from the stage, target {:g} dBA", show.system.house_target_dba));
    for (const HouseFigure& figure : result.house) {
        const std::string against =
            figure.against_target_db ? f("{:+.0f} dB against the target", *figure.against_target_db + 0.0) : "";
        text += fmt::format("  {:<24}{:<10}{}\n", object_name(show, figure.id), dba(figure.wash_dba), against);
        if (const std::string who = makers(show, figure.id); !who.empty()) text += f("    from {}\n", who);
    }
    return text;
}

/// The loudspeaker that is nearest to what it can do; those beyond it are warned of.
std::string headroom(const Show& show) {
    const LoudspeakerLoad* least = nullptr;
    const auto loads = loudspeaker_loads(show);
    for (const LoudspeakerLoad& load : loads)
        if (load.headroom_db && (!least || *load.headroom_db < *least->headroom_db)) least = &load;
    if (!least || *least->headroom_db < 0.0) return {};
    return heading(t("Loudspeakers")) +
           f("  {} has least left: it is asked for {:.0f} dB at 1 m and can do {:.0f} more.\n",
             object_name(show, least->id), *least->level_db, *least->headroom_db);
}

std::string warnings(const AnalysisResult& result) {
    if (result.warnings.empty()) return {};
    std::string text = heading(t("Look at this"));
    for (const std::string& warning : result.warnings) text += fmt::format("  - {}\n", warning);
    return text;
}

std::string trimmed_lines(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '\n') out.erase(out.find_last_not_of(' ') + 1);
        out += c;
    }
    return out;
}

}  // namespace

std::string check_text(const Show& show, const AnalysisResult& result) {
    std::string text = show.title.empty() ? std::string() : fmt::format("{}\n\n", show.title);
    text += verdict_line(show, result);
    if (result.margin_db || result.worst_phase_margin_db) text += margins(result);
    text += rings(show, result) + first_bands(result) + pairs(show, result) + ears(show, result) + house(show, result) +
            headroom(show) + loudness_text(show) + warnings(result);
    text += heading(t("Ring out at low level, hands on the fader, ears protected."));
    return trimmed_lines(text);
}

}  // namespace howlmap::report
