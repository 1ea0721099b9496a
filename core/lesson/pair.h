// SPDX-License-Identifier: GPL-3.0-or-later
// From a show to the bench and back.
#pragma once
#include <optional>
#include <string>

#include "core/lesson/bench.h"

namespace howlmap {

/// One loudspeaker and one input of a show as a bench: what stands on a riser stands on the floor of the bench, and of
/// the surfaces the floor alone is kept. Absent when there is no such loudspeaker or input, when the input is a line,
/// or when no mix (an empty id: any) sends the one to the other.
std::optional<Bench> bench_of(const Show& show, const std::string& input, const std::string& loudspeaker,
                              const std::string& mix = {});

/// Puts into a show what was turned on the bench since `before`; everything else stays. Objects that are gone are
/// passed over. In-ears on the bench take the loudspeaker out of the mix.
void put_back(Show& show, const Bench& before, const Bench& after);

}  // namespace howlmap
