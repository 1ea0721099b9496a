// SPDX-License-Identifier: GPL-3.0-or-later
// Values as the JSON reports write them.
#pragma once
#include <nlohmann/json_fwd.hpp>
#include <optional>

namespace howlmap {

using Json = nlohmann::ordered_json;

/// null where there is no finite number: JSON knows no infinity.
Json number(double value);
Json number(const std::optional<double>& value);

}  // namespace howlmap
