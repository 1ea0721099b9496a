// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/differences.h"

#include <fmt/format.h>

#include <cmath>
#include <set>

#include "core/report/translated.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/units/bands.h"

namespace howlmap::report {
namespace {

constexpr double kCentre = 0.005;  ///< metres; nearer is on the line

/// Collects the rows; equal texts are no change.
class Rows {
  public:
    explicit Rows(Table& table, Units units) : table_(table), units_(units) {}
    void text(const std::string& what, const std::string& which, const std::string& before, const std::string& after) {
        if (before != after) table_.rows.push_back({what, which, before, after});
    }
    void moved(const std::string& which, Vec3 before, Vec3 after) {
        if (length(after - before) > kMoveWorthTelling) text(t("position"), which, place(before), place(after));
    }
    void turned(const std::string& which, double before, double after) {
        if (std::abs(turn_degrees(before, after)) > kTurnWorthTelling)
            text(t("aim"), which, fmt::format("{:.0f}°", before), fmt::format("{:.0f}°", after));
    }

  private:
    /// As one paces it out: "0.80 m stage right, 1.55 m from the edge, 1.47 m high".
    std::string place(Vec3 p) const {
        const auto far = [&](double metres) { return distance_words(std::abs(metres), units_); };
        std::string text = std::abs(p.x) < kCentre ? t("on the centre line")
                                                   : f(p.x > 0.0 ? "{} stage left" : "{} stage right", far(p.x));
        text += ", " + f(p.y < 0.0 ? "{} in front of the edge" : "{} from the edge", far(p.y));
        return p.z == 0.0 ? text : text + ", " + f("{} high", far(p.z));
    }
    Table& table_;
    Units units_;
};

std::string polarity_words(Polarity polarity) { return polarity == Polarity::inverted ? t("inverted") : t("normal"); }

std::string filters_words(const std::vector<PeakFilter>& filters) {
    std::vector<std::string> parts;
    for (const PeakFilter& filter : filters) parts.push_back(peak_words(filter));
    return fmt::format("{}", fmt::join(parts, ", "));
}

std::string high_pass_or_none(const std::optional<HighPass>& filter) {
    return filter ? high_pass_words(*filter) : t("none");
}

std::string yes_no(bool value) { return value ? t("yes") : t("no"); }

void compare(Rows& rows, const Input& a, const Input& b) {
    const std::string which = name_of(b);
    rows.text(t("name"), which, a.name, b.name);
    rows.text(t("channel"), which, std::to_string(a.channel), std::to_string(b.channel));
    rows.text(t("transducer"), which, transducer_words(a), transducer_words(b));
    rows.text(t("stand"), which, a.stand, b.stand);
    rows.text(t("48 V"), which, yes_no(a.phantom), yes_no(b.phantom));
    rows.text(t("DI"), which, yes_no(a.di), yes_no(b.di));
    rows.text(t("notes"), which, a.notes, b.notes);
    rows.text(t("polarity"), which, polarity_words(a.polarity), polarity_words(b.polarity));
    rows.text(t("high-pass"), which, high_pass_or_none(a.high_pass), high_pass_or_none(b.high_pass));
    rows.text(t("equaliser"), which, filters_words(a.equaliser), filters_words(b.equaliser));
    if (is_line(a) || is_line(b)) return;
    rows.moved(which, a.position, b.position);
    rows.turned(which, a.aim.yaw_deg, b.aim.yaw_deg);
}

void compare(Rows& rows, const Loudspeaker& a, const Loudspeaker& b) {
    const std::string which = name_of(b);
    rows.text(t("name"), which, a.name, b.name);
    rows.text(t("kind"), which, kind_words(a.kind), kind_words(b.kind));
    rows.text(t("polarity"), which, polarity_words(a.polarity), polarity_words(b.polarity));
    rows.moved(which, a.position, b.position);
    rows.turned(which, a.aim.yaw_deg, b.aim.yaw_deg);
    rows.turned(which, a.aim.pitch_deg, b.aim.pitch_deg);
}

std::string hears_words(const Performer& performer) {
    switch (performer.hears) {
        case Hears::loudspeakers:
            return t("loudspeakers");
        case Hears::in_ear:
            return t("in-ears");
        case Hears::acoustic:
            return t("no monitor");
    }
    return {};
}

void compare(Rows& rows, const Performer& a, const Performer& b) {
    const std::string which = name_of(b);
    rows.text(t("name"), which, a.name, b.name);
    rows.text(t("hears by"), which, hears_words(a), hears_words(b));
    rows.text(t("mix"), which, a.mix, b.mix);
    rows.moved(which, {a.position.x, a.position.y, 0.0}, {b.position.x, b.position.y, 0.0});
}

std::string band_gain(const Mix& mix, int band) {
    const auto found = mix.graphic_eq.find(band);
    const double gain_db = found == mix.graphic_eq.end() ? 0.0 : found->second;
    return localised(gain_db == 0.0 ? "{:g} dB" : "{:+g} dB", gain_db);
}

void compare_sends(Rows& rows, const Show& older, const Show& newer, const Mix& a, const Mix& b) {
    std::set<std::string> inputs;
    for (const Send& send : a.sends) inputs.insert(send.input);
    for (const Send& send : b.sends) inputs.insert(send.input);
    for (const std::string& id : inputs) {
        const Send *before = find_send(a, id), *after = find_send(b, id);
        const Input* input = find_by_id(newer.inputs, id);
        if (!input) input = find_by_id(older.inputs, id);
        rows.text(t("send"), fmt::format("{} > {}", input ? name_of(*input) : id, name_of(b)),
                  before ? level_words(before->level_db) : t("none"), after ? level_words(after->level_db) : t("none"));
    }
}

std::string outlet_words(const Show& show, const Mix& mix) {
    std::vector<std::string> names;
    for (const std::string& id : mix.loudspeakers)
        if (const Loudspeaker* speaker = find_by_id(show.loudspeakers, id)) names.push_back(name_of(*speaker));
    return listed(names);
}

void compare(Rows& rows, const Show& older, const Show& newer, const Mix& a, const Mix& b) {
    const std::string which = name_of(b);
    rows.text(t("name"), which, a.name, b.name);
    rows.text(t("number"), which, std::to_string(a.number), std::to_string(b.number));
    rows.text(t("outlets"), which, outlet_words(older, a), outlet_words(newer, b));
    compare_sends(rows, older, newer, a, b);
    for (int band = 0; band < kThirdOctaves; ++band)
        rows.text(
            fmt::format("{} {}", t("equaliser"), band_words(kNominalThirdOctaves[static_cast<std::size_t>(band)])),
            which, band_gain(a, band), band_gain(b, band));
    rows.text(t("notches"), which, filters_words(a.notches), filters_words(b.notches));
    rows.text(t("high-pass"), which, high_pass_or_none(a.high_pass), high_pass_or_none(b.high_pass));
    rows.text(t("polarity"), which, polarity_words(a.polarity), polarity_words(b.polarity));
    rows.text(t("delay"), which, localised("{:g} ms", a.delay_ms), localised("{:g} ms", b.delay_ms));
}

/// Calls `both` for items that stayed; those that came or went get a row of their own.
template <class List, class Both>
void each(Rows& rows, const std::string& what, const List& older, const List& newer, Both both) {
    for (const auto& item : older)
        if (!find_by_id(newer, item.id)) rows.text(what, name_of(item), t("there"), t("gone"));
    for (const auto& item : newer) {
        if (const auto* before = find_by_id(older, item.id))
            both(*before, item);
        else
            rows.text(what, name_of(item), {}, t("new"));
    }
}

}  // namespace

Table differences_since(const Show& older, const Show& newer) {
    Table table{t("What changed"), {t("What"), t("Which"), t("Before"), t("Now")}, {}};
    Rows rows(table, newer.display.units);
    each(rows, t("input"), older.inputs, newer.inputs, [&](const Input& a, const Input& b) { compare(rows, a, b); });
    each(rows, t("mix"), older.mixes, newer.mixes,
         [&](const Mix& a, const Mix& b) { compare(rows, older, newer, a, b); });
    each(rows, t("player"), older.performers, newer.performers,
         [&](const Performer& a, const Performer& b) { compare(rows, a, b); });
    each(rows, t("loudspeaker"), older.loudspeakers, newer.loudspeakers,
         [&](const Loudspeaker& a, const Loudspeaker& b) { compare(rows, a, b); });
    each(rows, t("backline"), older.backline, newer.backline,
         [&](const Backline& a, const Backline& b) { rows.moved(name_of(b), a.position, b.position); });
    return table;
}

}  // namespace howlmap::report
