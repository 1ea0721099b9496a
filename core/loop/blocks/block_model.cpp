// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/block_model.h"

namespace howlmap {
namespace {
/// Points a turn of the most delayed path against the common delay; most paths turn far less between two points. 0: one
/// block between two nodes, whatever turns in it.
double steps_a_turn(Purpose purpose) {
    if (purpose == Purpose::curve) return 0.0;
    return purpose == Purpose::as_drawn ? 16.0 : 8.0;
}

/// Knots of the room term, where there is one.
std::optional<double> knot_spacing(const Show& show, Purpose purpose) {
    if (purpose != Purpose::draws || !show.stage.room) return std::nullopt;
    return knot_spacing_hz(*show.stage.room);
}
}  // namespace

BlockModel::BlockModel(const Show& show, Purpose purpose)
    : purpose_(purpose),
      model_(show),
      plan_(model_),
      timing_(timing_of(model_)),
      grid_(block_grid(model_, timing_, steps_a_turn(purpose), knot_spacing(show, purpose))),
      wiring_(wiring_of(model_)),
      tables_(model_, grid_.nodes),
      chains_(model_, wiring_, timing_.common_s, grid_) {
    const auto spacing = knot_spacing(show, purpose);
    if (!spacing) return;
    room_.emplace(model_, grid_.nodes);
    survey_ = survey_of(grid_, timing_, steps_a_turn(purpose), *spacing);
    survey_chains_.emplace(model_, wiring_, timing_.common_s, survey_.grid);
    part_of_.assign(grid_.blocks.size(), -1);
    for (std::size_t part = 0; part < survey_.parts.size(); ++part)
        for (std::size_t b = survey_.parts[part].first; b < survey_.parts[part].last; ++b)
            part_of_[b] = static_cast<int>(part);
}

}  // namespace howlmap
