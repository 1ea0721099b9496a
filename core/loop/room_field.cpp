// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/room_field.h"

#include <algorithm>
#include <cmath>

#include "core/air/air.h"
#include "core/units/bands.h"

namespace howlmap {

double knot_spacing_hz(const Room& room) { return std::min(2.2 / room.rt60_s, 1e9); }

RoomField::RoomField(const Show& show)
    : spacing_hz_(howlmap::knot_spacing_hz(*show.stage.room)),
      mean_square_(diffuse_mean_square(*show.stage.room, 1.0)),
      knots_(static_cast<std::uint64_t>(std::ceil(kHighestHz * show.stage.room->rt60_s / 2.2)) + 2) {
    int place = 0;
    for (const Input& input : show.inputs) {
        order_.push_back(is_line(input) ? -1 : place++);
        efficiencies_.push_back(random_energy_efficiencies(ReceiverPattern(input)));
    }
    const double speed = speed_of_sound(show.air.temperature_c);
    for (const Loudspeaker& unit : show.loudspeakers) factors_.push_back(directivity_factors(unit.directivity, speed));
}

double RoomField::rms(int input, int loudspeaker, double hz) const {
    const double efficiency = interpolate(efficiencies_[static_cast<std::size_t>(input)], hz);
    return std::sqrt(mean_square_ * efficiency / interpolate(factors_[static_cast<std::size_t>(loudspeaker)], hz));
}

std::uint64_t RoomField::place(std::uint64_t first, int input, int loudspeaker, std::uint64_t k) const {
    const auto order = static_cast<std::uint64_t>(order_[static_cast<std::size_t>(input)]);
    const auto pair = order * factors_.size() + static_cast<std::uint64_t>(loudspeaker);
    return first + 2 * (pair * knots_ + k);
}

Complex RoomField::knot(const DrawNumbers& numbers, std::uint64_t first, int input, int loudspeaker,
                        std::uint64_t k) const {
    const std::uint64_t i = place(first, input, loudspeaker, k);
    return std::polar(std::sqrt(-std::log1p(-numbers.unit(i))), 2.0 * kPi * numbers.unit(i + 1));
}

Complex RoomField::value(const DrawNumbers& numbers, std::uint64_t first, int input, int loudspeaker, double hz) const {
    const double x = hz / knot_spacing_hz(), k = std::floor(x), t = x - k;
    const auto low = static_cast<std::uint64_t>(k);
    const Complex z = (1.0 - t) * knot(numbers, first, input, loudspeaker, low) +
                      t * knot(numbers, first, input, loudspeaker, low + 1);
    return rms(input, loudspeaker, hz) * z / std::sqrt((1.0 - t) * (1.0 - t) + t * t);
}

}  // namespace howlmap
