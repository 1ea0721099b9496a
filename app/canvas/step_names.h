// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

#include "core/show/edits.h"

namespace howlmap::app {

/// What the undo menu says: "Move Wedge 1", "Move 3 objects".
QString step_name(const QString& verb, const Show& show, const Ids& ids);

}  // namespace howlmap::app
