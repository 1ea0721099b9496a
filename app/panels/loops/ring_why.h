// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <optional>

#include "core/loop/figures.h"
#include "core/show/show.h"

namespace howlmap::app {

/// Why a ring sits where it sits, how fast it grows, and who shares it. Rich text.
QString ring_why(const Show& show, const Ring& ring, std::optional<double> count_on_db);

}  // namespace howlmap::app
