// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences of the reports in the user's language.
#pragma once
#include <string>

#include "core/units/localised.h"

namespace howlmap::report {

/// The text in the user's language.
inline std::string t(const char* english) { return translate("report", english); }

/// The same with its placeholders filled, numbers with the user's decimal mark.
template <class... Args>
std::string f(const char* english, const Args&... args) {
    return localised(t(english), args...);
}

}  // namespace howlmap::report
