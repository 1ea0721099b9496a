// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings/cure_choices.h"

#include <algorithm>
#include <limits>

#include "app/settings/preferences.h"

namespace howlmap::app {
namespace {
const auto kRuledOut = QStringLiteral("cures/ruled_out");
QString trouble_key(CureKind kind) { return QStringLiteral("cures/trouble_") + QLatin1StringView(to_string(kind)); }
}  // namespace

CureChoices CureChoices::load() {
    const auto stored = settings();
    CureChoices choices;
    const QStringList out = stored->value(kRuledOut).toStringList();
    for (const CureKind kind : all_cure_kinds()) {
        bool known = false;
        const double trouble = stored->value(trouble_key(kind)).toDouble(&known);
        if (known && trouble >= 0.0) choices.weights.set(kind, std::min(trouble, kMostTrouble));
        if (out.contains(QLatin1StringView(to_string(kind)))) choices.ruled_out.insert(kind);
    }
    return choices;
}

void CureChoices::save() const {
    const auto stored = settings();
    QStringList out;
    for (const CureKind kind : all_cure_kinds()) {
        stored->setValue(trouble_key(kind), weights.of(kind));
        if (ruled_out.contains(kind)) out << QString::fromLatin1(to_string(kind));
    }
    stored->setValue(kRuledOut, out);
}

TroubleWeights CureChoices::for_search() const {
    TroubleWeights search = weights;
    for (const CureKind kind : ruled_out) search.set(kind, std::numeric_limits<double>::infinity());
    return search;
}

}  // namespace howlmap::app
