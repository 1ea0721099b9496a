// SPDX-License-Identifier: GPL-3.0-or-later
// The answer of `howlmap check` in words: verdict first, then what rings, who is in it, ears, house.
#pragma once
#include <string>

#include "core/analysis/analysis.h"
#include "core/show/show.h"

namespace howlmap::report {

/// UTF-8 text, lines of at most about 100 columns. The result must be the show's own.
std::string check_text(const Show& show, const AnalysisResult& result);

/// "1.25 kHz is 5.1 whole waves from wedge 1 to the fiddle microphone": why a ring sits where it sits.
std::string ring_words(const Show& show, const Ring& ring);

/// Name of an input, a loudspeaker or anything else that is heard or hears; its id where it has none or is not in the
/// show.
std::string object_name(const Show& show, const std::string& id);

/// "doubles every 0.2 s", "halves every 1.5 s", "neither grows nor dies" from a rate in dB/s.
std::string build_up_words(double db_per_s);

/// "D#6 +8 c": note and how far above it.
std::string note_words(const Ring& ring);

}  // namespace howlmap::report
