// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>

#include "core/lesson/figures.h"

namespace howlmap {

/// One plain sentence or two about what turning a knob did, with its numbers.
std::string what_changed(Knob knob, const Bench& before, const LessonFigures& was, const Bench& after,
                         const LessonFigures& is);
/// The same for nothing turned: where things stand.
std::string where_it_stands(const Bench& bench, const LessonFigures& is);

}  // namespace howlmap
