// SPDX-License-Identifier: GPL-3.0-or-later
// fmt::format for sentences and figures that people read: numbers get the user's decimal mark.
#pragma once
#include <fmt/format.h>

#include <algorithm>
#include <concepts>
#include <iterator>
#include <string>
#include <string_view>

#include "core/units/translate.h"

namespace howlmap {

/// A number that is written with the user's decimal mark; takes the format specifications of double.
struct Figure {
    double value = 0.0;
};

template <class T>
decltype(auto) as_figure(const T& value) {
    if constexpr (std::floating_point<T>)
        return Figure{static_cast<double>(value)};
    else
        return (value);
}

/// The format (fmt's, known at run time as translations are) filled with texts and numbers. Throws fmt::format_error
/// where the format does not suit what it is filled with.
template <class... Args>
std::string localised(std::string_view format, const Args&... args) {
    return fmt::format(fmt::runtime(format), as_figure(args)...);
}

}  // namespace howlmap

template <>
struct fmt::formatter<howlmap::Figure> : fmt::formatter<double> {
    template <class Context>
    auto format(howlmap::Figure figure, Context& context) const {
        fmt::memory_buffer buffer;
        Context plain(fmt::appender(buffer), context.args(), context.locale());
        fmt::formatter<double>::format(figure.value, plain);
        std::replace(buffer.begin(), buffer.end(), '.', howlmap::decimal_mark());
        return std::copy(buffer.begin(), buffer.end(), context.out());
    }
};
