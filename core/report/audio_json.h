// SPDX-License-Identifier: GPL-3.0-or-later
// What the ear-work verbs say to machines: JSON in a stable key order with a newline at the end.
#pragma once
#include <string>
#include <vector>

#include "core/audio/hear.h"
#include "core/audio/ring_recording.h"
#include "core/audio/suspects.h"
#include "core/audio/tap.h"

namespace howlmap {

/// Suspects of each howl, in the order of the howls; empty without a show.
using SuspectLists = std::vector<std::vector<LoopSuspect>>;

std::string ring_json(const RingFindings& findings, const SuspectLists& suspects = {});  ///< "howlmap-ring", version 1
std::string tap_json(const TapFindings& findings);                                       ///< "howlmap-tap", version 1
std::string hear_json(const HearResult& result);                                         ///< "howlmap-hear", version 1

}  // namespace howlmap
