// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/translate.h"

#include <utility>

namespace howlmap {
namespace {
std::function<std::string(const char*, const char*)>& installed() {
    static std::function<std::string(const char*, const char*)> translator;
    return translator;
}
}  // namespace

std::string translate(const char* context, const char* english) {
    return installed() ? installed()(context, english) : std::string(english);
}

void set_translator(std::function<std::string(const char*, const char*)> translator) {
    installed() = std::move(translator);
}

}  // namespace howlmap
