// SPDX-License-Identifier: GPL-3.0-or-later
// Filters and bodies at the frequencies of a block, one frequency a lane; the best instruction set of the machine is
// chosen at run time.
#pragma once
#include "core/loop/blocks/lanes.h"
#include "core/loop/chain.h"

namespace howlmap {

/// `value` times the response of each section at frequencies low_hz + i step_hz.
void pass_sections(const Section* sections, std::size_t count, double low_hz, double step_hz, Lanes& value);

/// The same as Filter::at and InputResponse::at at those frequencies, to rounding.
Lanes response_in_block(const Filter& filter, double low_hz, double step_hz);
Lanes response_in_block(const InputResponse& response, double low_hz, double step_hz);

}  // namespace howlmap
