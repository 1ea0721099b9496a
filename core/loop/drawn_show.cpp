// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/drawn_show.h"

#include <algorithm>

namespace howlmap {
void disturb(Vec3& position, Aim& aim, const Tolerance& tolerance, const DrawNumbers& numbers, std::uint64_t& i) {
    position.x += tolerance.position_m * numbers.both_ways(i++);
    position.y += tolerance.position_m * numbers.both_ways(i++);
    position.z += tolerance.position_m * numbers.both_ways(i++);
    aim.yaw_deg += tolerance.aim_deg * numbers.both_ways(i++);
    aim.pitch_deg += tolerance.aim_deg * numbers.both_ways(i++);
}

DrawLayout::DrawLayout(const Show& show) {
    const auto heard =
        std::count_if(show.inputs.begin(), show.inputs.end(), [](const Input& i) { return !is_line(i); });
    loudspeakers = 1 + 5 * static_cast<std::uint64_t>(heard);
    sends = loudspeakers + 5 * show.loudspeakers.size();
    temperature = sends;
    for (const Mix& mix : show.mixes) temperature += mix.sends.size();
    phases = temperature + 1;
    room = phases + show.loudspeakers.size();
}

DrawnShow draw_show(const Show& show, const DrawLayout& layout, const DrawNumbers& numbers) {
    DrawnShow drawn{show, {}};
    const Tolerance& tolerance = show.tolerance;
    std::uint64_t i = 1;
    for (Input& input : drawn.show.inputs)
        if (!is_line(input)) disturb(input.position, input.aim, tolerance, numbers, i);
    for (Loudspeaker& unit : drawn.show.loudspeakers) disturb(unit.position, unit.aim, tolerance, numbers, i);
    for (Mix& mix : drawn.show.mixes)
        for (Send& send : mix.sends) send.level_db += tolerance.send_db * numbers.both_ways(i++);
    drawn.show.air.temperature_c += tolerance.temperature_c * numbers.both_ways(i++);
    for (i = layout.phases; i < layout.room; ++i)
        drawn.phases.push_back(radians(tolerance.phase_deg) * numbers.both_ways(i));
    return drawn;
}

}  // namespace howlmap
