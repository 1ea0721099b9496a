// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/show/show.h"

namespace howlmap {

/// A show without what its loops do not depend on: people, backline, listeners, marks, names, notes, targets. Shows
/// with equal parts have the same margins, rings, pairs and draws.
Show loop_part(const Show& show);

}  // namespace howlmap
