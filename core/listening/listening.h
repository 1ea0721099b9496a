// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of the ears and of the house. Levels in dBA, third-octave energies added without phase.
#pragma once
#include <vector>

#include "core/listening/figures.h"
#include "core/show/show.h"

namespace howlmap {

/// One a performer, in the order of the show: what she hears, own against others, and the permitted minutes
/// (NIOSH 98-126 and 29 CFR 1910.95; an estimate for planning).
std::vector<PerformerFigure> performer_figures(const Show& show);

/// One a listening place: the wash of all stage loudspeakers there, against the show's front-of-house target.
std::vector<HouseFigure> house_figures(const Show& show);

}  // namespace howlmap
