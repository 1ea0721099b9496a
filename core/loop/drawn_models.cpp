// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/drawn_models.h"

namespace howlmap {

DrawnModels::DrawnModels(const Show& show) : show_(show), layout_(show) {
    if (show.stage.room) room_.emplace(show);
}

void DrawnModels::with(std::uint64_t draw, const std::function<void(const LoopModel&)>& use) const {
    const DrawNumbers numbers(show_.tolerance.seed, draw);
    const DrawnShow drawn = draw_show(show_, layout_, numbers);
    LoopExtras extras;
    extras.phases = drawn.phases;
    extras.floor_z = [&](int input, int loudspeaker) {  // risers as drawn on the plan, not as disturbed
        return common_riser_height(show_.stage, show_.inputs[static_cast<std::size_t>(input)].position.xy(),
                                   show_.loudspeakers[static_cast<std::size_t>(loudspeaker)].position.xy());
    };
    if (room_) {
        extras.most_hz = room_->knot_spacing_hz() / 12.0;
        extras.room = [&](int input, int loudspeaker, double hz) {
            return room_->value(numbers, layout_.room, input, loudspeaker, hz);
        };
    }
    use(LoopModel(drawn.show, extras));
}

}  // namespace howlmap
