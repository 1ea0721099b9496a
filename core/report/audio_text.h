// SPDX-License-Identifier: GPL-3.0-or-later
// The same in words, for the terminal and the soundcheck panel.
#pragma once
#include "core/report/audio_json.h"

namespace howlmap::report {

/// What howled, when, how fast it came and what to pull; with a show which loops could have made it.
std::string ring_text(const RingFindings& findings, const SuspectLists& suspects = {}, const Show* show = nullptr);
/// Modes, strongest first, with note and decay time.
std::string tap_text(const TapFindings& findings);
/// What the sound written is: at which margin, what grows or dies in it.
std::string hear_text(const HearResult& result, const Show& show);

}  // namespace howlmap::report
