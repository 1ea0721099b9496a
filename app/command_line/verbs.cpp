// SPDX-License-Identifier: GPL-3.0-or-later
// The table of verbs. To add one: write its file with a `const Verb xyz_verb`, declare it in verbs.h, give it a row
// here.
#include "app/command_line/verbs.h"

#include <algorithm>
#include <vector>

namespace howlmap::app {

std::span<const Verb> verbs() {
    static const std::vector<Verb> all{check_verb, cures_verb, advance_verb, map_verb,
                                       plot_verb,  ring_verb,  tap_verb,     hear_verb};
    return all;
}

const Verb* find_verb(const QString& name) {
    const auto found =
        std::ranges::find_if(verbs(), [&](const Verb& verb) { return name == QLatin1StringView(verb.name); });
    return found == verbs().end() ? nullptr : &*found;
}

}  // namespace howlmap::app
