// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/lists.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/report/translated.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/units/bands.h"

namespace howlmap::report {
namespace {

std::vector<const Input*> by_channel(const Show& show) {
    std::vector<const Input*> inputs;
    for (const Input& input : show.inputs) inputs.push_back(&input);
    std::stable_sort(inputs.begin(), inputs.end(), [](auto a, auto b) { return a->channel < b->channel; });
    return inputs;
}

std::vector<const Mix*> by_number(const Show& show) {
    std::vector<const Mix*> mixes;
    for (const Mix& mix : show.mixes) mixes.push_back(&mix);
    std::stable_sort(mixes.begin(), mixes.end(), [](auto a, auto b) { return a->number < b->number; });
    return mixes;
}

std::string joined(const std::vector<std::string>& parts, const char* separator = "; ") {
    return fmt::format("{}", fmt::join(parts, separator));
}

std::string input_notes(const Input& input) {
    std::vector<std::string> parts;
    if (!input.notes.empty()) parts.push_back(input.notes);
    if (input.polarity == Polarity::inverted) parts.push_back(t("polarity inverted"));
    if (input.high_pass) parts.push_back(high_pass_words(*input.high_pass));
    for (const PeakFilter& filter : input.equaliser) parts.push_back(peak_words(filter));
    return joined(parts);
}

std::string performer_name(const Show& show, const std::string& id) {
    const Performer* performer = find_by_id(show.performers, id);
    return performer ? name_of(*performer) : std::string();
}

/// Steps of loudness that one can ask for in words; the limits are common practice, no source.
std::string amount_words(double below_strongest_db) {
    if (below_strongest_db < 0.5) return t("most");
    if (below_strongest_db < 4.0) return t("strong");
    if (below_strongest_db < 10.0) return t("medium");
    return t("a little");
}

std::vector<SendLine> send_lines(const Show& show, const Mix& mix) {
    std::vector<SendLine> lines;
    for (const Send& send : mix.sends)
        if (const Input* input = find_by_id(show.inputs, send.input))
            lines.push_back({name_of(*input), input->channel, send.level_db, {}});
    std::stable_sort(lines.begin(), lines.end(), [](auto& a, auto& b) { return a.level_db > b.level_db; });
    for (SendLine& line : lines) line.amount = amount_words(lines.front().level_db - line.level_db);
    return lines;
}

std::vector<std::string> mix_settings(const Mix& mix) {
    std::vector<std::string> parts;
    if (mix.polarity == Polarity::inverted) parts.push_back(t("polarity inverted"));
    if (mix.high_pass) parts.push_back(high_pass_words(*mix.high_pass));
    for (const PeakFilter& notch : mix.notches) parts.push_back(peak_words(notch));
    if (mix.delay_ms > 0.0) parts.push_back(f("delay {:.1f} ms", mix.delay_ms));
    return parts;
}

MixSheet mix_sheet(const Show& show, const Mix& mix) {
    MixSheet sheet;
    sheet.mix = &mix;
    for (const std::string& id : mix.loudspeakers)
        if (const Loudspeaker* speaker = find_by_id(show.loudspeakers, id)) {
            const std::string name = name_of(*speaker), kind = kind_words(speaker->kind);
            sheet.outlets.push_back(name.find(kind) == std::string::npos ? fmt::format("{} ({})", name, kind) : name);
        }
    for (const Performer& performer : show.performers) {
        if (performer.mix != mix.id || performer.hears == Hears::acoustic) continue;
        sheet.who.push_back(name_of(performer));
        if (performer.hears == Hears::in_ear) sheet.outlets.push_back(f("in-ears of {}", name_of(performer)));
    }
    sheet.sends = send_lines(show, mix);
    sheet.settings = mix_settings(mix);
    return sheet;
}

std::string cut_now(const Show& show, int band) {
    std::vector<std::string> parts;
    for (const Mix* mix : by_number(show)) {
        const auto found = mix->graphic_eq.find(band);
        if (found != mix->graphic_eq.end() && found->second != 0.0)
            parts.push_back(f("mix {}: {:+g} dB", mix->number, found->second));
    }
    return joined(parts, ", ");
}

std::string percent_words(double share) { return share < 0.01 ? "< 1 %" : fmt::format("{:.0f} %", 100.0 * share); }

/// The loop that most likely makes a band ring, as the engineer looks for it: "mix 2: Wedge 2 to Ada fiddle".
std::string loop_words(const Show& show, const BandProbability& band) {
    const Mix* mix = find_by_id(show.mixes, band.mix);
    const Loudspeaker* speaker = find_by_id(show.loudspeakers, band.loudspeaker);
    const Input* input = find_by_id(show.inputs, band.input);
    if (!mix || !speaker || !input) return t("not known: no loop as drawn reaches it");
    return f("mix {}: {} to {}", mix->number, name_of(*speaker), name_of(*input));
}

}  // namespace

Table input_list(const Show& show) {
    Table table{t("Input list"),
                {t("Ch"), t("Source"), t("Transducer"), t("Stand"), t("48 V"), t("DI"), t("Player"), t("Notes")},
                {}};
    for (const Input* input : by_channel(show))
        table.rows.push_back({std::to_string(input->channel), name_of(*input), transducer_words(*input), input->stand,
                              input->phantom ? t("yes") : std::string(), input->di ? t("yes") : std::string(),
                              performer_name(show, input->performer), input_notes(*input)});
    return table;
}

Table notes_list(const Show& show) {
    Table table{t("Notes"), {t("What"), t("Which"), t("Note")}, {}};
    const auto add = [&](const std::string& what, const auto& items) {
        for (const auto& item : items)
            if (!item.notes.empty()) table.rows.push_back({what, name_of(item), item.notes});
    };
    add(t("player"), show.performers);
    add(t("loudspeaker"), show.loudspeakers);
    add(t("backline"), show.backline);
    return table;
}

std::vector<MixSheet> mix_sheets(const Show& show) {
    std::vector<MixSheet> sheets;
    for (const Mix* mix : by_number(show)) sheets.push_back(mix_sheet(show, *mix));
    return sheets;
}

Table mix_list(const Show& show) {
    Table table{t("Mixes"),
                {t("Mix"), t("Name"), t("For"), t("Outlets"), t("Ch"), t("Input"), t("Level at 1 m"), t("Amount"),
                 t("Settings")},
                {}};
    for (const MixSheet& sheet : mix_sheets(show)) {
        const std::vector<std::string> head{std::to_string(sheet.mix->number), name_of(*sheet.mix), listed(sheet.who),
                                            listed(sheet.outlets)};
        for (const SendLine& send : sheet.sends)
            table.rows.push_back({head[0], head[1], head[2], head[3], std::to_string(send.channel), send.input,
                                  level_words(send.level_db), send.amount, joined(sheet.settings)});
        if (sheet.sends.empty())
            table.rows.push_back({head[0], head[1], head[2], head[3], {}, {}, {}, {}, joined(sheet.settings)});
    }
    return table;
}

Table send_matrix(const Show& show) {
    Table table{t("Sends, dB SPL at 1 m"), {t("Ch"), t("Input")}, {}};
    const auto mixes = by_number(show);
    for (const Mix* mix : mixes) table.columns.push_back(fmt::format("{} {}", mix->number, name_of(*mix)));
    for (const Input* input : by_channel(show)) {
        std::vector<std::string> row{std::to_string(input->channel), name_of(*input)};
        for (const Mix* mix : mixes) {
            const Send* send = find_send(*mix, input->id);
            row.push_back(send ? localised("{:g}", send->level_db) : std::string());
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table ring_out_list(const Show& show, const std::vector<BandProbability>& bands) {
    Table table{t("Ring-out list"),
                {t("Band"), t("Near"), t("First to ring, share of set-ups"), t("Likely loop"), t("Cut now")},
                {}};
    for (const BandProbability& band : bands)
        table.rows.push_back({band_words(band.band_hz), hz_words(band.hz), percent_words(band.probability),
                              loop_words(show, band), cut_now(show, third_octave_of(band.band_hz))});
    return table;
}

Table soundcheck_list(const Show& show) {
    Table table{t("Found at the soundcheck"), {t("Heard"), t("Band"), t("Mix"), t("Done"), t("Cut"), t("Note")}, {}};
    for (const SoundcheckEntry& entry : show.soundcheck) {
        const Mix* mix = find_by_id(show.mixes, entry.mix);
        table.rows.push_back({hz_words(entry.hz), band_words(entry.band), mix ? name_of(*mix) : entry.mix, entry.action,
                              entry.gain_db == 0.0 ? std::string() : localised("{:g} dB", entry.gain_db), entry.note});
    }
    return table;
}

std::vector<NamedTable> all_lists(const Show& show, const std::vector<BandProbability>& ring_out) {
    std::vector<NamedTable> lists{
        {"inputs.csv", input_list(show)}, {"mixes.csv", mix_list(show)}, {"sends.csv", send_matrix(show)}};
    const auto add = [&](const char* file, Table table) {
        if (!table.rows.empty()) lists.push_back({file, std::move(table)});
    };
    add("notes.csv", notes_list(show));
    add("ring-out.csv", ring_out_list(show, ring_out));
    add("soundcheck.csv", soundcheck_list(show));
    return lists;
}

}  // namespace howlmap::report
