// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/drawn_show.h"
#include "core/loop/loop_model.h"

namespace howlmap {

/// All that a draw changes about a model: where everything stands and points, the sends, the air, the phases of the
/// loudspeakers.
struct Stance {
    struct Place {
        Vec3 position;
        Frame frame;
    };
    std::vector<Place> inputs, speakers;  ///< in the order of the model
    std::vector<double> phases;           ///< turns, by speaker
    std::vector<double> sends;            ///< S by bus, then input
    Air air;
};

/// Where the numbers of a draw go in a model. Refers to the model.
class StancePlan {
  public:
    explicit StancePlan(const LoopModel& model);
    const DrawLayout& layout() const { return layout_; }
    /// The model as drawn.
    Stance as_drawn() const;
    /// The model in a draw. The same as draw_show and a new model, without building them.
    void draw(const DrawNumbers& numbers, Stance& stance) const;

  private:
    struct SendPlace {
        std::size_t cell;  // in Stance::sends
        double level_db, source_spl_db;
        std::uint64_t number;
    };
    const LoopModel* model_;
    DrawLayout layout_;
    std::vector<std::uint64_t> input_numbers_;  // first of each input of the model
    std::vector<SendPlace> sends_;
};

}  // namespace howlmap
