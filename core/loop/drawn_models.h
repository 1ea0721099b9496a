// SPDX-License-Identifier: GPL-3.0-or-later
// The loops of single draws, exactly and one by one.
#pragma once
#include <cstdint>
#include <functional>
#include <optional>

#include "core/loop/drawn_show.h"
#include "core/loop/loop_model.h"
#include "core/loop/room_field.h"

namespace howlmap {

/// What all draws of a show share. Refers to the show. May be used by many threads at once.
class DrawnModels {
  public:
    explicit DrawnModels(const Show& show);
    /// Calls `use` with the model of a draw, which lives no longer.
    void with(std::uint64_t draw, const std::function<void(const LoopModel&)>& use) const;

  private:
    const Show& show_;
    DrawLayout layout_;
    std::optional<RoomField> room_;
};

}  // namespace howlmap
