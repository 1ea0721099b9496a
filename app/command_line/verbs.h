// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <span>

#include "app/command_line/verb.h"

namespace howlmap::app {

// Each is defined in its own file, named like it.
extern const Verb check_verb;
extern const Verb advance_verb;
extern const Verb map_verb;
extern const Verb plot_verb;

/// All verbs, in the order of --help.
std::span<const Verb> verbs();
/// The verb of this name, or null.
const Verb* find_verb(const QString& name);

}  // namespace howlmap::app
