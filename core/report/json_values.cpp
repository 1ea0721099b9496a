// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/json_values.h"

#include <cmath>
#include <nlohmann/json.hpp>

namespace howlmap {

Json number(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }
Json number(const std::optional<double>& value) { return value ? number(*value) : Json(nullptr); }

}  // namespace howlmap
