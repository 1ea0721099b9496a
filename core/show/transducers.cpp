// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/show/transducers.h"

#include <utility>

#include "core/geometry/polygon.h"
#include "core/show/find.h"

namespace howlmap {
namespace {
constexpr double kHeldAt = 1.0;  ///< metres: about where an instrument is
}

void set_transducer(const Show& show, Input& input, Transducer transducer) {
    input.transducer = std::move(transducer);
    if (is_line(input) || input.has_position) return;
    const Performer* player = find_by_id(show.performers, input.performer);
    const Box2 stage = bounds_of(show.stage.outline);
    const Vec2 at = player ? player->position : (stage.low + stage.high) * 0.5;
    input.position = {at.x, at.y, kHeldAt};
    input.has_position = true;
}

}  // namespace howlmap
