// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/audio/howl.h"
#include "core/audio/recording.h"
#include "core/units/job.h"

namespace howlmap {

struct RingFindings {
    double duration_s = 0.0;
    std::vector<Howl>
        howls;  ///< by begin; a howl that several channels hold is named once, as the loudest of them has it
};

/// Searches a whole recording, a block at a time and its channels side by side: an hour of stereo takes seconds and a
/// few MB. Error: one sentence; "cancelled" when the job was.
tl::expected<RingFindings, std::string> find_howls(RecordingReader reader, const Job& job = {});

/// The same howl heard on several channels (within 0.5 % and overlapping in time) becomes one.
std::vector<Howl> merge_howls(std::vector<Howl> howls);

}  // namespace howlmap
