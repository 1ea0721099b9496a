// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include "app/panels/inspector/field_builder.h"
#include "app/panels/inspector/spectrum_field.h"
#include "core/report/words.h"
#include "core/show/transducers.h"

namespace howlmap::app {
namespace {

Input* find_input(Show& show, const std::string& id) { return find_by_id(show.inputs, id); }
Input* find_placed(Show& show, const std::string& id) {
    Input* input = find_input(show, id);
    return input && input->has_position ? input : nullptr;
}
Input* find_line(Show& show, const std::string& id) {
    Input* input = find_input(show, id);
    return input && is_line(*input) ? input : nullptr;
}
Microphone* find_microphone(Show& show, const std::string& id) {
    Input* input = find_input(show, id);
    return input ? std::get_if<Microphone>(&input->transducer) : nullptr;
}
Pickup* find_pickup(Show& show, const std::string& id) {
    Input* input = find_input(show, id);
    return input ? std::get_if<Pickup>(&input->transducer) : nullptr;
}

constexpr int kNumberedPattern = 6, kMeasuredPattern = 7;

int pattern_index(const Pattern& pattern) {
    if (const auto* name = std::get_if<PatternName>(&pattern)) return static_cast<int>(*name);
    return std::holds_alternative<double>(pattern) ? kNumberedPattern : kMeasuredPattern;
}

void set_pattern(Microphone& microphone, int index) {
    if (pattern_index(microphone.pattern) == index) return;
    if (index < kNumberedPattern)
        microphone.pattern = static_cast<PatternName>(index);
    else if (index == kNumberedPattern)
        microphone.pattern = 0.5;
    else
        microphone.pattern = DirectivityTable{{0.0, 90.0, 180.0}, {1000.0}, {{0.0, -6.0, -24.0}}, {}};
}

QList<Choice> pattern_choices() {
    QList<Choice> choices;
    for (int i = 0; i < kNumberedPattern; ++i)
        choices.append({QString::fromStdString(report::pattern_words(static_cast<PatternName>(i))), i});
    choices.append({inspector_text("first order by number"), kNumberedPattern});
    choices.append({inspector_text("measured table"), kMeasuredPattern});
    return choices;
}

/// Microphone, pickup or line; what belongs to the kind before goes with it.
Field transducer_field() {
    Field field;
    field.group = inspector_text("Input");
    field.label = inspector_text("Kind");
    field.kind = FieldKind::choice;
    field.choices = [](const Show&) {
        return QList<Choice>{
            {inspector_text("microphone"), 0}, {inspector_text("pickup"), 1}, {inspector_text("line"), 2}};
    };
    field.get = [](const Show& show, const std::string& id) -> std::optional<QVariant> {
        const Input* input = find_by_id(show.inputs, id);
        return input ? std::optional<QVariant>(int(input->transducer.index())) : std::nullopt;
    };
    field.set = [](Show& show, const std::string& id, const QVariant& value) {
        Input* input = find_by_id(show.inputs, id);
        if (!input || int(input->transducer.index()) == value.toInt()) return;
        const std::array<Transducer, 3> fresh{Microphone{}, Pickup{}, Line{}};
        set_transducer(show, *input, fresh.at(static_cast<std::size_t>(value.toInt())));
    };
    return field;
}

void add_microphone(Fields& fields) {
    FieldBuilder build(fields, find_microphone);
    build.group("Microphone");
    Field& pattern = build.add(
        "Pattern", FieldKind::choice, [](auto& i) { return QVariant(pattern_index(i.pattern)); },
        [](auto& i, const QVariant& value) { set_pattern(i, value.toInt()); });
    pattern.choices = [](const Show&) { return pattern_choices(); };
    build
        .flag(
            "Cupped by a hand", [](auto& i) -> auto& { return i.cupped; })
        .tip = inspector_text("A hand around the grille: omni, with a peak at 1.6 kHz (common practice, no source)");
    Fields numbered;
    FieldBuilder number(numbered, [](Show& show, const std::string& id) -> double* {
        Microphone* microphone = find_microphone(show, id);
        return microphone ? std::get_if<double>(&microphone->pattern) : nullptr;
    });
    number.group("Microphone");
    number.number("a", "", limits::kPatternNumber, 2, 0.05, [](double& a) -> double& { return a; }).tip =
        inspector_text("a in a + (1 - a) cos: 1 omni, 0.5 cardioid, 0 figure-8");
    fields.append(numbered);
    FieldBuilder response(fields, find_microphone);
    add_response(
        response, [](auto& i) -> auto& { return i.response; });
}

void add_pickup(Fields& fields) {
    FieldBuilder build(fields, find_pickup);
    build.group("Pickup and body");
    build
        .number(
            "Isolation", "dB", limits::kGain, 1, 1.0, [](auto& i) -> auto& { return i.isolation_db; })
        .tip = inspector_text("How far the played signal stands above what the air makes through a mode of 0 dB");
    build.number(
        "Between modes", "dB", limits::kGain, 1, 1.0, [](auto& i) -> auto& { return i.baseline_db; });
    build
        .flag(
            "Sound holes covered", [](auto& i) -> auto& { return i.holes_covered; })
        .tip = inspector_text(
        "Tape or a plug tames the air modes. Tape can mark a finish: test first, take it off after the show.");
    build.number(
        "Cover takes", "dB", limits::kGain, 1, 1.0, [](auto& i) -> auto& { return i.cover_db; });
}

}  // namespace

QList<Choice> performer_choices(const Show& show) {
    QList<Choice> choices{{inspector_text("nobody"), QString()}};
    for (const Performer& p : show.performers)
        choices.append({QString::fromStdString(report::name_of(p)), QString::fromStdString(p.id)});
    return choices;
}

Fields input_fields() {
    Fields fields;
    FieldBuilder build(fields, find_input);
    build.group("Input");
    build.text(
        "Name", [](auto& i) -> auto& { return i.name; });
    fields.append(transducer_field());
    build.whole(
        "Channel", "", limits::kNumber, [](auto& i) -> auto& { return i.channel; });
    build.one_of(
        "Player", performer_choices, [](auto& i) -> auto& { return i.performer; });
    build
        .number(
            "Loud playing", "dB", limits::kLevel, 1, 1.0, [](auto& i) -> auto& { return i.source_spl_db; })
        .tip = inspector_text("Level at the microphone in loud playing; for a pickup the reference of its isolation");
    FieldBuilder line(fields, find_line);
    line.group("Place and aim", true);
    line.flag(
            "On the plan", [](auto& i) -> auto& { return i.has_position; })
        .tip = inspector_text("A line input makes no loop; it may stand on the plan or only in the input list");
    FieldBuilder place(fields, find_placed);
    place.group("Place and aim", true);
    place.length(
        "Stage left", limits::kPosition, [](auto& i) -> auto& { return i.position.x; });
    place.length(
        "Upstage", limits::kPosition, [](auto& i) -> auto& { return i.position.y; });
    place.length(
        "Height", limits::kPosition, [](auto& i) -> auto& { return i.position.z; });
    place.number(
        "Yaw", "°", limits::kAngle, 0, 5.0, [](auto& i) -> auto& { return i.aim.yaw_deg; });
    place.number(
        "Pitch", "°", limits::kAngle, 0, 5.0, [](auto& i) -> auto& { return i.aim.pitch_deg; });
    add_microphone(fields);
    add_pickup(fields);
    FieldBuilder signal(fields, find_input);
    signal.group("Channel settings");
    signal.choice(
        "Polarity", polarity_labels(), [](auto& i) -> auto& { return i.polarity; });
    add_high_pass(
        signal, [](auto& i) -> auto& { return i.high_pass; });
    add_spectrum(
        signal, [](auto& i) -> auto& { return i.spectrum; });
    signal.group("For the patch");
    signal.text(
        "Stand", [](auto& i) -> auto& { return i.stand; });
    signal.flag(
        "48 V phantom", [](auto& i) -> auto& { return i.phantom; });
    signal.flag(
        "DI box", [](auto& i) -> auto& { return i.di; });
    signal.text(
        "Notes", [](auto& i) -> auto& { return i.notes; }, FieldKind::paragraph);
    return fields;
}

}  // namespace howlmap::app
