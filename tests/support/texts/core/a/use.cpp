// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/a/translated.h"
constexpr const char* marked(const char* english) { return translatable("gamma", english); }
const char* kind(bool a) { if (a) return "by a function"; return "by its other return"; }
std::string all(bool on) {
    const char* step = on ? "by a variable" : "by its branch";
    const auto add = [&](double, const char* plus, const char* minus) { t(on ? plus : minus); };
    add(1.0, "by a lambda {}", "by its second place");
    const auto label = marked("by a mark");
    return f("by a template {}", 1) + t(step) + t(kind(on)) + declared("by a declaration")
         + translate("delta", on ? "by a condition" : "by " "two pieces") + tt("not a helper's");
}
