// SPDX-License-Identifier: GPL-3.0-or-later
// Older files are lifted version by version before they are read. Private to core/file.
#pragma once
#include <span>

#include "core/file/json_tree.h"
#include "core/file/rules.h"

namespace howlmap::file {

/// Turns a file of version v, as parsed, into one of version v + 1. What it does not know it leaves alone.
using Step = void (*)(Value& root);

/// Step i lifts version i + 1 to i + 2; so there is one less than the version of this program.
std::span<const Step> steps();

/// Applies the steps from a version upwards.
void migrate(Value& root, int version, std::span<const Step> steps);

}  // namespace howlmap::file
