// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/field_builder.h"
#include "app/panels/inspector/kind_choices.h"
#include "app/panels/inspector/spectrum_field.h"
#include "core/report/words.h"
#include "core/show/edits.h"

namespace howlmap::app {
namespace {

template <class List>
auto finder(List Show::*list) {
    return [list](Show& show, const std::string& id) { return find_by_id(show.*list, id); };
}

template <class Build>
void add_place(Build& build, bool height) {
    build.group("Place", true);
    build.length(
        "Stage left", limits::kPosition, [](auto& i) -> auto& { return i.position.x; });
    build.length(
        "Upstage", limits::kPosition, [](auto& i) -> auto& { return i.position.y; });
    if constexpr (requires(Build b) { b.find()(std::declval<Show&>(), std::string())->position.z; })
        if (height)
            build.length(
                "Height", limits::kPosition, [](auto& i) -> auto& { return i.position.z; });
}

}  // namespace

Fields performer_fields() {
    Fields fields;
    FieldBuilder build(fields, finder(&Show::performers));
    build.group("Player");
    build.text(
        "Name", [](auto& i) -> auto& { return i.name; });
    build.choice(
        "Hears by", {inspector_text("loudspeakers"), inspector_text("in-ears"), inspector_text("no monitor")},
        [](auto& i) -> auto& { return i.hears; });
    build.one_of(
        "Mix", mix_choices, [](auto& i) -> auto& { return i.mix; });
    build.number(
        "Seal of in-ears", "dB", limits::kGain, 0, 1.0, [](auto& i) -> auto& { return i.seal_db; });
    build
        .optional_number(
            "Own sound at the ear", "dBA", limits::kLevel, 0, 1.0, [](auto& i) -> auto& { return i.own_acoustic_dba; })
        .tip = inspector_text("Of the instrument or voice itself in loud playing; empty: none");
    add_place(build, false);
    build
        .length(
            "Ear height", limits::kPosition, [](auto& i) -> auto& { return i.ear_height_m; })
        .tip = inspector_text("Above the riser or floor under the player");
    build.number(
        "Looks", "°", limits::kAngle, 0, 5.0, [](auto& i) -> auto& { return i.yaw_deg; });
    build.group("Notes");
    build.text(
        "Notes", [](auto& i) -> auto& { return i.notes; }, FieldKind::paragraph);
    return fields;
}

namespace {
/// Kinds as their presets are called.
template <class List>
std::function<QList<Choice>(const Show&)> kinds(const char* name, List Show::*list) {
    return [name, list](const Show& show) {
        QStringList used;
        for (const auto& item : show.*list) used.append(QString::fromStdString(item.kind));
        used.removeDuplicates();
        return kind_choices(QLatin1String(name), used);
    };
}
}  // namespace

Fields backline_fields() {
    Fields fields;
    FieldBuilder build(fields, finder(&Show::backline));
    build.group("Backline");
    build.text(
        "Name", [](auto& i) -> auto& { return i.name; });
    build.one_of(
        "Kind", kinds("backline", &Show::backline), [](auto& i) -> auto& { return i.kind; });
    build.number(
        "Level at 1 m", "dBA", limits::kLevel, 0, 1.0, [](auto& i) -> auto& { return i.level_1m_dba; });
    add_spectrum(
        build, [](auto& i) -> auto& { return i.spectrum; });
    build.text(
        "Notes", [](auto& i) -> auto& { return i.notes; }, FieldKind::paragraph);
    add_place(build, true);
    return fields;
}

Fields listener_fields() {
    Fields fields;
    FieldBuilder build(fields, finder(&Show::listeners));
    build.group("Place in the house");
    build.text(
        "Name", [](auto& i) -> auto& { return i.name; });
    add_place(build, true);
    return fields;
}

Fields mark_fields() {
    Fields fields;
    FieldBuilder build(fields, finder(&Show::marks));
    build.group("Mark");
    build.text(
        "Text", [](auto& i) -> auto& { return i.text; });
    build.one_of(
        "Kind", kinds("marks", &Show::marks), [](auto& i) -> auto& { return i.kind; });
    add_place(build, false);
    build.number(
        "Yaw", "°", limits::kAngle, 0, 5.0, [](auto& i) -> auto& { return i.yaw_deg; });
    return fields;
}

Fields riser_fields() {
    Fields fields;
    FieldBuilder build(fields, [](Show& show, const std::string& id) { return find_by_id(show.stage.risers, id); });
    build.group("Riser");
    build.text(
        "Name", [](auto& i) -> auto& { return i.name; });
    build
        .length(
            "Height", limits::kPosition, [](auto& i) -> auto& { return i.height_m; })
        .moves = true;
    return fields;
}

Fields common_fields() {
    Fields fields;
    const auto coordinate = [&](const char* label, double Vec2::*axis) {
        Field field;
        field.group = inspector_text("Place");
        field.moves = true;
        field.label = inspector_text(label);
        field.kind = FieldKind::length;
        field.range = limits::kPosition;
        field.step = 0.01;
        field.decimals = 2;
        field.get = [axis](const Show& show, const std::string& id) -> std::optional<QVariant> {
            const auto object = placed_object(show, id);
            return object ? std::optional<QVariant>(object->position.*axis) : std::nullopt;
        };
        field.set = [axis](Show& show, const std::string& id, const QVariant& value) {
            const auto object = placed_object(show, id);
            if (!object) return;
            Vec2 by;
            by.*axis = value.toDouble() - object->position.*axis;
            move_by(show, {id}, by);
        };
        fields.append(field);
    };
    coordinate("Stage left", &Vec2::x);
    coordinate("Upstage", &Vec2::y);
    return fields;
}

}  // namespace howlmap::app
