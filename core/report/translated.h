// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences of the reports in the user's language.
#pragma once
#include <fmt/format.h>

#include <string>

#include "core/units/translate.h"

namespace howlmap::report {

/// The text in the user's language.
inline std::string t(const char* english) { return translate("report", english); }

/// The same with its placeholders filled, as by fmt::format.
template <class... Args>
std::string f(const char* english, const Args&... args) {
    return fmt::format(fmt::runtime(t(english)), args...);
}

}  // namespace howlmap::report
