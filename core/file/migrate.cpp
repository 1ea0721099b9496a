// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/migrate.h"

#include <array>

namespace howlmap::file {
namespace {
// Version 1 is the first. A version 2 adds a function here, a schema in resources/schema and a sample in tests/shows.
constexpr std::array<Step, kVersion - 1> kSteps{};
}  // namespace

std::span<const Step> steps() { return kSteps; }

void migrate(Value& root, int version, std::span<const Step> steps) {
    for (auto step = static_cast<std::size_t>(version - 1); step < steps.size(); ++step) steps[step](root);
}

}  // namespace howlmap::file
