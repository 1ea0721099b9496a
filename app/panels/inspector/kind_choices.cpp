// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/kind_choices.h"

#include <QHash>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "app/panels/parts/part_list.h"

namespace howlmap::app {
namespace {
Choice* choice_of(QList<Choice>& choices, const QString& kind) {
    const auto found = std::ranges::find_if(choices, [&](const Choice& one) { return one.value == kind; });
    return found == choices.end() ? nullptr : &*found;
}

/// Several presets of a kind: "Guitar amplifier / Bass amplifier"; what stands behind a comma is how it is played.
void add_name(QList<Choice>& choices, const QString& kind, const QString& preset) {
    const QString name = preset.section(QLatin1Char(','), 0, 0);
    Choice* known = choice_of(choices, kind);
    if (!known)
        choices.append({name, kind});
    else if (!known->label.split(QStringLiteral(" / ")).contains(name))
        known->label += QStringLiteral(" / ") + name;
}

/// Kinds of the presets of each list, with their names.
QHash<QString, QList<Choice>> kinds_of_presets() {
    QHash<QString, QList<Choice>> kinds;
    for (const Part& part : load_parts()) {
        const QJsonObject preset = QJsonDocument::fromJson(part.preset).object();
        const QString kind = preset[QStringLiteral("item")].toObject()[QStringLiteral("kind")].toString();
        add_name(kinds[preset[QStringLiteral("list")].toString()], kind, part.name);
    }
    return kinds;
}
}  // namespace

QList<Choice> kind_choices(const QString& list, const QStringList& used) {
    static const QHash<QString, QList<Choice>> presets = kinds_of_presets();  // asked for whenever a mark moves
    QList<Choice> choices = presets.value(list);
    for (const QString& kind : used)
        if (!choice_of(choices, kind)) choices.append({kind, kind});
    return choices;
}

}  // namespace howlmap::app
