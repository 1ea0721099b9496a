// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/selection.h"

namespace howlmap::app {

void Selection::set(const QStringList& ids) {
    if (ids == ids_) return;
    ids_ = ids;
    Q_EMIT changed();
}

void Selection::toggle(const QString& id) {
    QStringList next = ids_;
    if (next.removeAll(id) == 0) next.append(id);
    set(next);
}

}  // namespace howlmap::app
