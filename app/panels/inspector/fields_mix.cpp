// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "app/panels/inspector/field_builder.h"
#include "core/report/words.h"

namespace howlmap::app {
namespace {

QStringList loudspeakers_of(const Show& show, const Mix& mix) {
    QStringList ids;
    for (const Loudspeaker& speaker : show.loudspeakers)
        if (std::count(mix.loudspeakers.begin(), mix.loudspeakers.end(), speaker.id))
            ids.append(QString::fromStdString(speaker.id));
    return ids;
}

/// Those that stay keep their order, new ones come behind them.
void set_loudspeakers(Mix& mix, const QStringList& wanted) {
    std::erase_if(mix.loudspeakers,
                  [&](const std::string& id) { return !wanted.contains(QString::fromStdString(id)); });
    for (const QString& id : wanted)
        if (!std::count(mix.loudspeakers.begin(), mix.loudspeakers.end(), id.toStdString()))
            mix.loudspeakers.push_back(id.toStdString());
}

/// What plays the mix; the same as "Mixes" of a loudspeaker, from the other side.
Field loudspeakers_field() {
    Field field;
    field.group = inspector_text("Mix");
    field.label = inspector_text("Loudspeakers");
    field.tip = inspector_text("The loudspeakers that play this mix");
    field.kind = FieldKind::members;
    field.choices = [](const Show& show) {
        QList<Choice> choices;
        for (const Loudspeaker& speaker : show.loudspeakers)
            choices.append({QString::fromStdString(report::name_of(speaker)), QString::fromStdString(speaker.id)});
        return choices;
    };
    field.get = [](const Show& show, const std::string& id) -> std::optional<QVariant> {
        const Mix* mix = find_by_id(show.mixes, id);
        return mix ? std::optional<QVariant>(loudspeakers_of(show, *mix)) : std::nullopt;
    };
    field.set = [](Show& show, const std::string& id, const QVariant& value) {
        if (Mix* mix = find_by_id(show.mixes, id)) set_loudspeakers(*mix, value.toStringList());
    };
    return field;
}

}  // namespace

QList<Choice> mix_choices(const Show& show) {
    QList<Choice> choices{{inspector_text("none"), QString()}};
    for (const Mix& mix : show.mixes)
        choices.append({QStringLiteral("%1  %2").arg(mix.number).arg(QString::fromStdString(report::name_of(mix))),
                        QString::fromStdString(mix.id)});
    return choices;
}

Fields mix_fields() {
    Fields fields;
    FieldBuilder build(fields, [](Show& show, const std::string& id) { return find_by_id(show.mixes, id); });
    build.group("Mix");
    build.text(
        "Name", [](auto& i) -> auto& { return i.name; });
    build.whole(
        "Number", "", limits::kNumber, [](auto& i) -> auto& { return i.number; });
    fields.append(loudspeakers_field());
    build.choice(
        "Polarity", polarity_labels(), [](auto& i) -> auto& { return i.polarity; });
    build.number(
        "Delay", "ms", limits::kMilliseconds, 2, 0.1, [](auto& i) -> auto& { return i.delay_ms; });
    add_high_pass(
        build, [](auto& i) -> auto& { return i.high_pass; });
    return fields;
}

}  // namespace howlmap::app
