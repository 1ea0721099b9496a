// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "app/panels/inspector/field_builder.h"
#include "core/report/words.h"

namespace howlmap::app {
namespace {

Loudspeaker* find_speaker(Show& show, const std::string& id) { return find_by_id(show.loudspeakers, id); }
Coverage* find_coverage(Show& show, const std::string& id) {
    Loudspeaker* speaker = find_speaker(show, id);
    return speaker ? std::get_if<Coverage>(&speaker->directivity) : nullptr;
}
CapOnSphere* find_cap(Show& show, const std::string& id) {
    Loudspeaker* speaker = find_speaker(show, id);
    return speaker ? std::get_if<CapOnSphere>(&speaker->directivity) : nullptr;
}

QStringList kind_labels() {
    QStringList labels;
    for (int i = 0; i <= static_cast<int>(LoudspeakerKind::combo_amp); ++i)
        labels.append(QString::fromStdString(report::kind_words(static_cast<LoudspeakerKind>(i))));
    return labels;
}

/// An even table to start from: omni at all frequencies.
DirectivityTable blank_table() {
    return {{0.0, 90.0, 180.0}, {100.0, 1000.0, 10000.0}, {{0, 0, 0}, {0, 0, 0}, {0, 0, 0}}, {}};
}

void set_type(Loudspeaker& speaker, int type) {
    if (static_cast<int>(speaker.directivity.index()) == type) return;
    if (type == 0) speaker.directivity = Omni{};
    if (type == 1) speaker.directivity = Coverage{};
    if (type == 2) speaker.directivity = CapOnSphere{};
    if (type == 3) speaker.directivity = blank_table();
}

void add_directivity(Fields& fields) {
    FieldBuilder build(fields, find_speaker);
    build.group("Directivity");
    Field& type = build.add(
        "Type", FieldKind::choice, [](auto& i) { return QVariant(int(i.directivity.index())); },
        [](auto& i, const QVariant& value) { set_type(i, value.toInt()); });
    type.choices = [](const Show&) {
        return QList<Choice>{{inspector_text("omni"), 0},
                             {inspector_text("coverage angles"), 1},
                             {inspector_text("cap on a sphere"), 2},
                             {inspector_text("measured table"), 3}};
    };
    FieldBuilder coverage(fields, find_coverage);
    coverage.group("Directivity");
    coverage
        .number(
            "Horizontal", "°", limits::kCoverageAngle, 0, 5.0, [](auto& i) -> auto& { return i.horizontal_deg; })
        .tip = inspector_text("Full angle between the -6 dB directions");
    coverage.number(
        "Vertical", "°", limits::kCoverageAngle, 0, 5.0, [](auto& i) -> auto& { return i.vertical_deg; });
    coverage.length(
        "Cabinet width", limits::kSize, [](auto& i) -> auto& { return i.width_m; });
    coverage.length(
        "Cabinet height", limits::kSize, [](auto& i) -> auto& { return i.height_m; });
    coverage.number(
        "Depth behind", "dB", limits::kCoverageFloor, 0, 1.0, [](auto& i) -> auto& { return i.floor_db; });
    FieldBuilder cap(fields, find_cap);
    cap.group("Directivity");
    cap.length(
        "Sphere radius", limits::kSize, [](auto& i) -> auto& { return i.sphere_radius_m; });
    cap.length(
        "Cap radius", limits::kSize, [](auto& i) -> auto& { return i.cap_radius_m; });
}

QStringList mixes_of(const Show& show, const std::string& id) {
    QStringList mixes;
    for (const Mix& mix : show.mixes)
        if (std::count(mix.loudspeakers.begin(), mix.loudspeakers.end(), id))
            mixes.append(QString::fromStdString(mix.id));
    return mixes;
}

/// The mixes that feed it. Those that it stays in keep their order of loudspeakers.
Field mixes_field() {
    Field field;
    field.group = inspector_text("Loudspeaker");
    field.label = inspector_text("Mixes");
    field.tip = inspector_text("The mixes that play through it");
    field.kind = FieldKind::members;
    field.choices = [](const Show& show) { return mix_choices(show).mid(1); };
    field.get = [](const Show& show, const std::string& id) -> std::optional<QVariant> { return mixes_of(show, id); };
    field.set = [](Show& show, const std::string& id, const QVariant& value) {
        const QStringList now = mixes_of(show, id), wanted = value.toStringList();
        for (Mix& mix : show.mixes) {
            const QString name = QString::fromStdString(mix.id);
            if (now.contains(name) && !wanted.contains(name)) std::erase(mix.loudspeakers, id);
            if (!now.contains(name) && wanted.contains(name)) mix.loudspeakers.push_back(id);
        }
    };
    return field;
}

}  // namespace

Fields loudspeaker_fields() {
    Fields fields;
    FieldBuilder build(fields, find_speaker);
    build.group("Loudspeaker");
    build.text(
        "Name", [](auto& i) -> auto& { return i.name; });
    build.choice(
        "Kind", kind_labels(), [](auto& i) -> auto& { return i.kind; });
    fields.append(mixes_field());
    build.group("Place and aim", true);
    build
        .length(
            "Stage left", limits::kPosition, [](auto& i) -> auto& { return i.position.x; })
        .tip = inspector_text("From the centre line, stage left positive");
    build.length(
        "Upstage", limits::kPosition, [](auto& i) -> auto& { return i.position.y; });
    build
        .length(
            "Height", limits::kPosition, [](auto& i) -> auto& { return i.position.z; })
        .tip = inspector_text("Of the acoustic centre above the stage floor, even on a riser");
    build
        .number(
            "Yaw", "°", limits::kAngle, 0, 5.0, [](auto& i) -> auto& { return i.aim.yaw_deg; })
        .tip = inspector_text("0 faces the audience, 90 faces stage left");
    build.number(
        "Pitch", "°", limits::kAngle, 0, 5.0, [](auto& i) -> auto& { return i.aim.pitch_deg; });
    build.number(
        "Roll", "°", limits::kAngle, 0, 5.0, [](auto& i) -> auto& { return i.aim.roll_deg; });
    build.group("Signal");
    build.number(
        "Trim", "dB", limits::kGain, 1, 0.5, [](auto& i) -> auto& { return i.trim_db; });
    build.number(
        "Delay", "ms", limits::kMilliseconds, 2, 0.1, [](auto& i) -> auto& { return i.delay_ms; });
    build.choice(
        "Polarity", polarity_labels(), [](auto& i) -> auto& { return i.polarity; });
    build
        .optional_number(
            "Loudest", "dB", limits::kLevel, 0, 1.0, [](auto& i) -> auto& { return i.max_spl_db; })
        .tip = inspector_text("Highest level at 1 m on axis; empty: not known");
    add_directivity(fields);
    FieldBuilder rest(fields, find_speaker);
    add_response(
        rest, [](auto& i) -> auto& { return i.response; });
    rest.group("Notes");
    rest.text(
            "Preset", [](auto& i) -> auto& { return i.preset; })
        .tip = inspector_text("The part that its figures come from; nothing is computed from this name");
    rest.text(
        "Notes", [](auto& i) -> auto& { return i.notes; }, FieldKind::paragraph);
    return fields;
}

}  // namespace howlmap::app
