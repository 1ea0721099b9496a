// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_text.h"

#include <array>
#include <charconv>

namespace howlmap {

std::string number_text(double value) {
    if (value == 0.0) return "0";
    std::array<char, 32> buffer;
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
    return {buffer.data(), end};
}

}  // namespace howlmap
