// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/directivity/table.h"

#include <algorithm>
#include <cmath>

namespace howlmap {

Between between(const std::vector<double>& rising, double x) {
    const std::size_t last = rising.size() - 1;
    if (!(x > rising.front())) return {0, 0, 0.0};
    if (x >= rising.back()) return {last, last, 0.0};
    const auto high = static_cast<std::size_t>(std::upper_bound(rising.begin(), rising.end(), x) - rising.begin());
    return {high - 1, high, (x - rising[high - 1]) / (rising[high] - rising[high - 1])};
}

Between between_log(const std::vector<double>& rising_hz, double hz) {
    Between place = between(rising_hz, hz);
    if (place.low != place.high)
        place.t = std::log(hz / rising_hz[place.low]) / std::log(rising_hz[place.high] / rising_hz[place.low]);
    return place;
}

double table_db(const DirectivityTable& table, const Between& frequency, double off_axis_deg) {
    const Between angle = between(table.angles_deg, off_axis_deg);
    const auto row = [&](std::size_t i) {
        return table.db[i][angle.low] * (1.0 - angle.t) + table.db[i][angle.high] * angle.t;
    };
    if (frequency.low == frequency.high) return row(frequency.low);
    return row(frequency.low) * (1.0 - frequency.t) + row(frequency.high) * frequency.t;
}

}  // namespace howlmap
