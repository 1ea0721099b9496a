// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string_view>
#include <vector>

#include "app/canvas/tools/snap.h"
#include "core/show/edits.h"

namespace howlmap::app {

/// Edges of the stage and of the risers that stay, and the standing walls as far as the stage reaches beside them.
/// The empty id among those that change stands for the stage.
std::vector<SnapEdge> snap_edges(const Show& show, const Ids& changing);
/// The sides of a riser, a loudspeaker or an item of backline as seen from its place; nothing else has any: a player or
/// a stand is where it is.
Box2 snap_sides(const Show& show, const std::string& id);

}  // namespace howlmap::app
