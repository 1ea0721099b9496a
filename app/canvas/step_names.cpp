// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/step_names.h"

#include <QCoreApplication>

#include "core/show/placed.h"

namespace howlmap::app {

QString step_name(const QString& verb, const Show& show, const Ids& ids) {
    if (ids.size() != 1) return QCoreApplication::translate("Plan", "%1 %2 objects").arg(verb).arg(ids.size());
    const auto object = placed_object(show, ids.front());
    const QString name = object ? QString::fromStdString(object->name.empty() ? object->id : object->name) : QString();
    return QStringLiteral("%1 %2").arg(verb, name);
}

}  // namespace howlmap::app
