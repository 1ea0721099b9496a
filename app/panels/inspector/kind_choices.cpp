// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/kind_choices.h"

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
}  // namespace

QList<Choice> kind_choices(const QString& list, const QStringList& used) {
    static const QList<Part> parts = load_parts();  // asked for whenever the inspector looks at a mark anew
    QList<Choice> choices;
    for (const Part& part : parts) {
        const QJsonObject preset = QJsonDocument::fromJson(part.preset).object();
        const QString kind = preset[QStringLiteral("item")].toObject()[QStringLiteral("kind")].toString();
        if (preset[QStringLiteral("list")] == list) add_name(choices, kind, part.name);
    }
    for (const QString& kind : used)
        if (!choice_of(choices, kind)) choices.append({kind, kind});
    return choices;
}

}  // namespace howlmap::app
