// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include <cmath>
#include <iterator>

#include "core/maps/maps.h"

namespace howlmap {
std::string map_csv(const MapGrid& grid) {
    std::string text = "x_m,y_m,value,worst_hz\n";
    const auto out = std::back_inserter(text);
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column) {
            const std::size_t at = grid.index(column, row);
            if (!grid.inside[at]) continue;
            fmt::format_to(out, "{},{},", grid.x(column) + 0.0, grid.y(row) + 0.0);
            if (std::isfinite(grid.value[at])) fmt::format_to(out, "{}", grid.value[at]);
            text += ',';
            if (std::isfinite(grid.worst_hz[at])) fmt::format_to(out, "{}", grid.worst_hz[at]);
            text += '\n';
        }
    return text;
}

}  // namespace howlmap
