// SPDX-License-Identifier: GPL-3.0-or-later
// A property of an object as the inspector shows it: what it is called, how it is typed, how it is read and set.
#pragma once
#include <QCoreApplication>
#include <QList>
#include <QString>
#include <QVariant>
#include <functional>
#include <optional>
#include <string>

#include "core/show/limits.h"
#include "core/show/show.h"

namespace howlmap::app {

/// `members`: several of the choices, a QStringList of their values.
enum class FieldKind { text, paragraph, number, length, whole, choice, members, flag };

struct Choice {
    QString label;
    QVariant value;
    friend bool operator==(const Choice&, const Choice&) = default;
};

struct Field {
    QString group, label, unit, tip;
    FieldKind kind = FieldKind::text;
    Range range;
    int decimals = 1;
    double step = 1.0;           ///< of the arrow keys, in the unit shown
    bool may_be_absent = false;  ///< an empty field stands for "not given"
    bool moves = false;          ///< place, aim or size: a locked object keeps it
    std::function<QList<Choice>(const Show&)> choices;
    /// Value of one object; none where the property does not apply to it. An invalid QVariant: not given.
    std::function<std::optional<QVariant>(const Show&, const std::string& id)> get;
    std::function<void(Show&, const std::string& id, const QVariant&)> set;
};

using Fields = QList<Field>;

/// Properties of the kinds of objects, and of the show as a whole (id is not used).
Fields loudspeaker_fields();
Fields input_fields();
Fields performer_fields();
Fields mix_fields();
Fields backline_fields();
Fields listener_fields();
Fields mark_fields();
Fields riser_fields();
Fields show_fields();
/// What all objects on the plan have in common: name and place.
Fields common_fields();

}  // namespace howlmap::app
