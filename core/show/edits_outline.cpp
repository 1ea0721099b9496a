// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/show/edits.h"
#include "core/show/find.h"
#include "core/show/limits.h"

namespace howlmap {
namespace {
constexpr double kFarthestCorner = limits::kPosition.high;

bool locked_outline(const Show& show, std::string_view id) {
    const Riser* riser = find_by_id(show.stage.risers, id);
    return riser && is_locked(riser->extras);
}

/// Takes the new outline over when it is a simple polygon.
bool take(Show& show, std::string_view id, Outline next) {
    Outline* outline = outline_of(show, id);
    if (!outline || *outline == next || !is_simple(next)) return false;
    *outline = std::move(next);
    return true;
}
}  // namespace

Outline* outline_of(Show& show, std::string_view id) {
    if (id.empty()) return &show.stage.outline;
    Riser* riser = find_by_id(show.stage.risers, id);
    return riser ? &riser->outline : nullptr;
}

const Outline* outline_of(const Show& show, std::string_view id) {
    if (id.empty()) return &show.stage.outline;
    const Riser* riser = find_by_id(show.stage.risers, id);
    return riser ? &riser->outline : nullptr;
}

bool move_corner(Show& show, std::string_view id, std::size_t corner, Vec2 to) {
    const Outline* outline = outline_of(show, id);
    if (!outline || corner >= outline->size() || locked_outline(show, id)) return false;
    Outline next = *outline;
    next[corner] = {std::clamp(to.x, -kFarthestCorner, kFarthestCorner),
                    std::clamp(to.y, -kFarthestCorner, kFarthestCorner)};
    return take(show, id, std::move(next));
}

bool insert_corner(Show& show, std::string_view id, std::size_t edge, Vec2 at) {
    const Outline* outline = outline_of(show, id);
    if (!outline || edge >= outline->size() || outline->size() >= limits::kCornersMost || locked_outline(show, id))
        return false;
    Outline next = *outline;
    next.insert(next.begin() + static_cast<std::ptrdiff_t>(edge) + 1, at);
    return take(show, id, std::move(next));
}

bool remove_corner(Show& show, std::string_view id, std::size_t corner) {
    const Outline* outline = outline_of(show, id);
    if (!outline || corner >= outline->size() || outline->size() <= limits::kCornersLeast || locked_outline(show, id))
        return false;
    Outline next = *outline;
    next.erase(next.begin() + static_cast<std::ptrdiff_t>(corner));
    return take(show, id, std::move(next));
}

namespace {
template <class S>
auto* plane_in(S& surfaces, PlaneSide side) {
    auto& plane = side == PlaneSide::back    ? surfaces.back
                  : side == PlaneSide::front ? surfaces.front
                  : side == PlaneSide::left  ? surfaces.left
                                             : surfaces.right;
    return plane ? &*plane : nullptr;
}
}  // namespace

Surface* plane_of(Stage& stage, PlaneSide side) { return plane_in(stage.surfaces, side); }

const Surface* plane_of(const Stage& stage, PlaneSide side) { return plane_in(stage.surfaces, side); }

bool move_plane(Show& show, PlaneSide side, double at) {
    Surface* plane = plane_of(show.stage, side);
    const double held = std::clamp(at, -kFarthestCorner, kFarthestCorner);
    if (!plane || plane->at == held) return false;
    plane->at = held;
    return true;
}

}  // namespace howlmap
