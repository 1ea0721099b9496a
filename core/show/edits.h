// SPDX-License-Identifier: GPL-3.0-or-later
// Edits of the plan as free functions on a show. Ids that are not on the plan are passed over; locked objects stay as
// they are. Lengths in metres, angles in degrees; positions are kept within +-1000 m.
#pragma once
#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "core/show/placed.h"
#include "core/show/show.h"

namespace howlmap {

using Ids = std::vector<std::string>;

/// Whether an id is among those given.
inline bool has(const Ids& ids, const std::string& id) { return std::find(ids.begin(), ids.end(), id) != ids.end(); }

/// Edge or middle to which objects are brought: seen on the page, with the audience at the bottom.
enum class AlignTo { left, centre, right, front, middle, back };
/// Direction in which objects are spread: across the stage (x) or along its depth (y).
enum class SpreadAlong { across, depth };

/// Moves objects together; what one of them cannot do (the limit of the plan) none does, so that relative offsets stay.
void move_by(Show& show, const Ids& ids, Vec2 by);
/// Turns objects together about a point, counter-clockwise seen from above: positions, yaws and riser corners.
void turn_by(Show& show, const Ids& ids, double by_deg, Vec2 about);
/// Turns each object where it stands.
void turn_each_by(Show& show, const Ids& ids, double by_deg);
/// Turns each object that has a yaw to look at a point.
void face(Show& show, const Ids& ids, Vec2 towards);
/// Mirrors objects about the line x = axis_x: sides, yaws, rolls and riser corners change over.
void mirror(Show& show, const Ids& ids, double axis_x = 0.0);
/// Brings the positions of two or more objects onto the outermost (or middle) one's line. A riser goes by the matching
/// edge of its box.
void align(Show& show, const Ids& ids, AlignTo to);
/// Spreads three or more objects evenly between the outermost two, which stay.
void spread(Show& show, const Ids& ids, SpreadAlong along);

/// Locks or unlocks objects.
void set_locked(Show& show, const Ids& ids, bool locked);

/// Removes objects (of any kind but mixes) and every reference to them.
void remove_objects(Show& show, const Ids& ids);

/// The part of a show that a selection is, as a show of its own without dangling references: the objects, and of each
/// mix that feeds, hears or serves one of them the part that concerns them.
Show extract(const Show& show, const Ids& ids);
/// Puts a part (from `extract`) into a show, moved by an offset. Ids that are taken are replaced by fresh ones and
/// references follow; taken channel and mix numbers move to the next free ones; a mix with the id and name of one that
/// is there joins it. Returns the ids of the new objects in the order of the plan.
Ids insert(Show& show, Show part, Vec2 offset);
/// `extract` and `insert` within one show; references to objects outside the selection are kept.
Ids duplicate(Show& show, const Ids& ids, Vec2 offset);

/// A fresh id made from a wish: the wish itself when it is free, else with "-2", "-3" ..
std::string fresh_id(const Show& show, std::string_view wish);
/// A name with the next free number: "wedge", "wedge 2" ..; compared with names of all objects on the plan.
std::string fresh_name(const Show& show, std::string_view wish);
/// Lowest channel number from 1 up that no input has.
int free_channel(const Show& show);

/// Whether the show keeps the limits of its file: 256 inputs, 64 mixes, 128 loudspeakers, 5,000 objects in all.
bool within_limits(const Show& show);

/// Outline of a riser, or of the stage for the empty id; null for anything else.
Outline* outline_of(Show& show, std::string_view id);
const Outline* outline_of(const Show& show, std::string_view id);
/// Moves one corner; an outline that would cross itself is left as it was. Returns whether it moved.
bool move_corner(Show& show, std::string_view id, std::size_t corner, Vec2 to);
/// Puts a new corner into the edge that starts at a corner. At most 500 corners. Returns whether it did.
bool insert_corner(Show& show, std::string_view id, std::size_t edge, Vec2 at);
/// Takes a corner away; three stay at least, and the outline stays simple. Returns whether it did.
bool remove_corner(Show& show, std::string_view id, std::size_t corner);

/// The four standing planes that a plan shows as lines.
enum class PlaneSide { back, front, left, right };
/// A standing plane of the stage, null when the show has none there.
Surface* plane_of(Stage& stage, PlaneSide side);
const Surface* plane_of(const Stage& stage, PlaneSide side);
/// Moves a plane to a y (back, front) or x (left, right). Returns whether there was one and it moved.
bool move_plane(Show& show, PlaneSide side, double at);

}  // namespace howlmap
