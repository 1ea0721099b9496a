// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/show/show.h"

namespace howlmap {

/// Gives an input of the show another transducer. A line input may stand nowhere; a microphone or pickup that it
/// becomes stands at its player, else in the middle of the stage, 1 m high.
void set_transducer(const Show& show, Input& input, Transducer transducer);

}  // namespace howlmap
