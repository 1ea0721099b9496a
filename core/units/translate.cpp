// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/translate.h"

#include <utility>

namespace howlmap {
namespace {
std::function<std::string(const char*, const char*)>& installed() {
    static std::function<std::string(const char*, const char*)> translator;
    return translator;
}

char mark_of_people = '.';
thread_local int points_wanted = 0;
}  // namespace

std::string translate(const char* context, const char* english) {
    return installed() ? installed()(context, english) : std::string(english);
}

void set_translator(std::function<std::string(const char*, const char*)> translator) {
    installed() = std::move(translator);
}

void set_decimal_mark(char mark) { mark_of_people = mark; }

char decimal_mark() { return points_wanted > 0 ? '.' : mark_of_people; }

PointsInFigures::PointsInFigures() { ++points_wanted; }
PointsInFigures::~PointsInFigures() { --points_wanted; }

}  // namespace howlmap
