// SPDX-License-Identifier: GPL-3.0-or-later
// The first look at a feedback map, kept for a hand that moves one thing: the responses of all loudspeakers that stay
// where they are, at every cell, in half floats (good to 0.01 dB).
#pragma once
#include <vector>

#include "core/maps/grid.h"
#include "core/show/show.h"

namespace howlmap::maps {

class KeptResponses {
  public:
    /// Points the ends of a field to their responses, known ones or ones to be filled when the field is run; call
    /// filled() after it came to its end. Given: a swept field, neither refined nor divided by another, whose ends are
    /// these loudspeakers and whose cells are this grid's places for the input. A field that would take more than
    /// kMostBytes is left as it is.
    void connect(Field& field, const Show& show, const std::vector<const Loudspeaker*>& loudspeakers,
                 const Input& input, const MapGrid& grid, const CellList& cells);
    void filled();

    static constexpr std::size_t kMostBytes = std::size_t{96} << 20;

  private:
    /// What all responses depend on beside their loudspeaker.
    struct Place {
        Air air;
        Stage stage;
        double step = 0.0;
        Transducer transducer;
        Aim aim;
        double z = 0.0;
        std::array<bool, kColumns> columns{};
        friend bool operator==(const Place&, const Place&) = default;
    };
    struct Kept {
        Vec3 position;
        Aim aim;
        Directivity directivity;
        bool known = false;
        bool is_of(const Loudspeaker& loudspeaker) const;
    };

    Kept& kept_of(std::size_t end, const Loudspeaker& loudspeaker);

    Place place_;
    std::vector<Kept> kept_;                         ///< by end
    std::vector<Half, LineAllocator<Half>> values_;  ///< by tile, column, cell, end, octave, (re, im), lane
};

}  // namespace howlmap::maps
