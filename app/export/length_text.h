// SPDX-License-Identifier: GPL-3.0-or-later
// Lengths as people say them. For the eye only: files are always metric.
#pragma once
#include <QString>

#include "core/show/show.h"

namespace howlmap::app {

/// "1.25 m" or "4' 1\"", rounded to 0.01 m or half an inch.
QString length_text(double metres, Units units);
/// The same to 0.05 m or an inch: no more digits than are known.
QString coarse_length_text(double metres, Units units);

}  // namespace howlmap::app
