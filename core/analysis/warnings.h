// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <vector>

#include "core/loop/loop_model.h"

namespace howlmap {

/// Oddities that the figures cannot show by themselves, one sentence each: things closer together than the model goes,
/// things on the wrong side of a surface, the findings of core/show/check, loudspeakers asked for more than they give.
std::vector<std::string> warnings_of(const Show& show, const LoopModel& model);

}  // namespace howlmap
