// SPDX-License-Identifier: GPL-3.0-or-later
// What the inspector shows when nothing is selected: the show, its air, its tolerances, its stage.
#include "app/panels/inspector/field_builder.h"

namespace howlmap::app {
namespace {

constexpr Range kSeed{0.0, 9e15};  ///< whole numbers that a double tells apart

Show* find_show(Show& show, const std::string&) { return &show; }

/// One of the surfaces beside the floor: its place (empty: not there) and how much it takes up.
void add_surface(Fields& fields, const char* label, const char* absorbs, std::optional<Surface> Surfaces::*surface) {
    FieldBuilder build(fields, find_show);
    build.group("Surfaces");
    Field& at = build.add(
        label, FieldKind::length,
        [surface](Show& s) {
            const auto& plane = s.stage.surfaces.*surface;
            return plane ? QVariant(plane->at) : QVariant();
        },
        [surface](Show& s, const QVariant& value) {
            auto& plane = s.stage.surfaces.*surface;
            if (!value.isValid()) return plane.reset();
            if (!plane) plane.emplace();
            plane->at = value.toDouble();
        });
    at.range = limits::kPosition;
    at.decimals = 2;
    at.step = 0.1;
    at.may_be_absent = true;
    at.tip = inspector_text("Where the surface stands; empty: there is none");
    FieldBuilder there(fields, [surface](Show& s, const std::string&) -> double* {
        auto& plane = s.stage.surfaces.*surface;
        return plane ? std::get_if<double>(&plane->absorption) : nullptr;
    });
    there.group("Surfaces");
    there.number(absorbs, "", limits::kAbsorption, 2, 0.05, [](double& a) -> double& { return a; });
}

void add_room(Fields& fields) {
    FieldBuilder build(fields, find_show);
    build.group("Room");
    const auto member = [&](const char* label, const char* unit, Range range, int decimals, double step,
                            double Room::*value) {
        Field& field = build.add(
            label, FieldKind::number,
            [value](Show& s) { return s.stage.room ? QVariant((*s.stage.room).*value) : QVariant(); },
            [value](Show& s, const QVariant& given) {
                if (!given.isValid()) return s.stage.room.reset();
                if (!s.stage.room) s.stage.room.emplace();
                (*s.stage.room).*value = given.toDouble();
            });
        field.unit = inspector_text(unit);
        field.range = range;
        field.decimals = decimals;
        field.step = step;
        field.may_be_absent = true;
        field.tip = inspector_text("Volume and reverberation time; empty: open air");
    };
    member("Volume", "m³", limits::kVolume, 0, 50.0, &Room::volume_m3);
    member("Reverberation", "s", limits::kRt60, 2, 0.1, &Room::rt60_s);
}

void add_texts(FieldBuilder<Show* (*)(Show&, const std::string&)>& build) {
    build.group("Show");
    build.text(
        "Title", [](auto& s) -> auto& { return s.title; });
    build.text(
        "Act", [](auto& s) -> auto& { return s.act; });
    build.text(
        "Venue", [](auto& s) -> auto& { return s.venue; });
    build
        .text(
            "Date", [](auto& s) -> auto& { return s.date; })
        .tip = inspector_text("Year-month-day, e.g. 2031-05-14");
    build.text(
        "Contact", [](auto& s) -> auto& { return s.contact.name; });
    build.text(
        "Phone", [](auto& s) -> auto& { return s.contact.phone; });
    build.text(
        "E-mail", [](auto& s) -> auto& { return s.contact.email; });
    build.text(
        "Notes", [](auto& s) -> auto& { return s.notes; }, FieldKind::paragraph);
    build.choice(
        "Lengths in", {inspector_text("metres"), inspector_text("feet and inches")},
        [](auto& s) -> auto& { return s.display.units; });
}

void add_system(FieldBuilder<Show* (*)(Show&, const std::string&)>& build) {
    build.group("System");
    build
        .number(
            "Latency", "ms", limits::kMilliseconds, 2, 0.1, [](auto& s) -> auto& { return s.system.latency_ms; })
        .tip = inspector_text("Converters and processing, from microphone to loudspeaker");
    build.number(
        "Target margin", "dB", limits::kGain, 1, 0.5, [](auto& s) -> auto& { return s.system.target_margin_db; });
    build.number(
        "Front-of-house target", "dBA", limits::kLevel, 0, 1.0,
        [](auto& s) -> auto& { return s.system.house_target_dba; });
    build.group("Air");
    build.number(
        "Temperature", "°C", limits::kTemperature, 0, 1.0, [](auto& s) -> auto& { return s.air.temperature_c; });
    build.number(
        "Humidity", "%", limits::kHumidity, 0, 5.0, [](auto& s) -> auto& { return s.air.humidity_pct; });
    build.number(
        "Pressure", "kPa", limits::kPressure, 1, 0.5, [](auto& s) -> auto& { return s.air.pressure_kpa; });
}

void add_tolerance(FieldBuilder<Show* (*)(Show&, const std::string&)>& build) {
    build.group("What may be off");
    build
        .whole(
            "Draws", "", limits::kDraws, [](auto& s) -> auto& { return s.tolerance.draws; })
        .tip = inspector_text("How many stages, each a little off, the margin to count on is drawn from");
    build
        .whole(
            "Seed", "", kSeed, [](auto& s) -> auto& { return s.tolerance.seed; })
        .tip = inspector_text("Another number draws other stages; the same one always draws the same");
    build.length(
        "Places, ±", limits::kSpreadPosition, [](auto& s) -> auto& { return s.tolerance.position_m; });
    build.number(
        "Aims, ±", "°", limits::kSpreadAngle, 0, 1.0, [](auto& s) -> auto& { return s.tolerance.aim_deg; });
    build.number(
        "Sends, ±", "dB", limits::kSpreadGain, 1, 0.5, [](auto& s) -> auto& { return s.tolerance.send_db; });
    build.number(
        "Temperature, ±", "°C", limits::kSpreadTemperature, 0, 1.0,
        [](auto& s) -> auto& { return s.tolerance.temperature_c; });
    build.number(
        "Loudspeaker phase, ±", "°", limits::kSpreadAngle, 0, 5.0,
        [](auto& s) -> auto& { return s.tolerance.phase_deg; });
}

}  // namespace

Fields show_fields() {
    Fields fields;
    FieldBuilder<Show* (*)(Show&, const std::string&)> build(fields, find_show);
    add_texts(build);
    add_system(build);
    add_tolerance(build);
    FieldBuilder floor(
        fields, [](Show& s, const std::string&) { return std::get_if<double>(&s.stage.surfaces.floor.absorption); });
    floor.group("Surfaces");
    floor.number("Floor absorbs", "", limits::kAbsorption, 2, 0.05, [](double& a) -> double& { return a; }).tip =
        inspector_text("0 reflects everything, 1 is free air");
    add_surface(fields, "Back wall", "Back wall absorbs", &Surfaces::back);
    add_surface(fields, "Front wall", "Front wall absorbs", &Surfaces::front);
    add_surface(fields, "Left wall", "Left wall absorbs", &Surfaces::left);
    add_surface(fields, "Right wall", "Right wall absorbs", &Surfaces::right);
    add_surface(fields, "Ceiling", "Ceiling absorbs", &Surfaces::ceiling);
    add_room(fields);
    return fields;
}

}  // namespace howlmap::app
