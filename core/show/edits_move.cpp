// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/show/edits.h"
#include "core/show/limits.h"

namespace howlmap {
namespace {
constexpr double kFarthest = limits::kPosition.high;

/// Calls f with every unlocked object of the selection, each with its own type.
template <class S, class F>
void for_each_selected(S& show, const Ids& ids, F&& f) {
    for_each_placed_list(show, [&](auto& list) {
        for (auto& item : list)
            if (has(ids, item.id) && !is_locked(item.extras)) f(item);
    });
}

/// Rewrites every point of an object.
template <class F>
void map_points(Riser& riser, F&& f) {
    for (Vec2& corner : riser.outline) corner = f(corner);
}
template <class T, class F>
void map_points(T& item, F&& f) {
    const Vec2 to = f(Vec2{item.position.x, item.position.y});
    item.position.x = to.x;
    item.position.y = to.y;
}

template <class F>
void map_yaw(Loudspeaker& l, F&& f) {
    l.aim.yaw_deg = wrap_degrees(f(l.aim.yaw_deg));
}
template <class F>
void map_yaw(Input& i, F&& f) {
    i.aim.yaw_deg = wrap_degrees(f(i.aim.yaw_deg));
}
template <class F>
void map_yaw(Performer& p, F&& f) {
    p.yaw_deg = wrap_degrees(f(p.yaw_deg));
}
template <class F>
void map_yaw(Mark& m, F&& f) {
    m.yaw_deg = wrap_degrees(f(m.yaw_deg));
}
template <class T, class F>
void map_yaw(T&, F&&) {}

Box2 box_of(const Riser& riser) { return bounds_of(riser.outline); }
template <class T>
Box2 box_of(const T& item) {
    const Vec2 at{item.position.x, item.position.y};
    return {at, at};
}

template <class T>
Vec2 middle_of(const T& item) {
    const Box2 box = box_of(item);
    return (box.low + box.high) * 0.5;
}

struct Boxed {
    std::string id;
    Box2 box;
};

std::vector<Boxed> boxes_of(const Show& show, const Ids& ids) {
    std::vector<Boxed> boxes;
    for_each_selected(show, ids, [&](const auto& item) { boxes.push_back({item.id, box_of(item)}); });
    return boxes;
}

Box2 joined(const std::vector<Boxed>& boxes) {
    Box2 all = boxes.front().box;
    for (const Boxed& b : boxes) {
        all.low = {std::min(all.low.x, b.box.low.x), std::min(all.low.y, b.box.low.y)};
        all.high = {std::max(all.high.x, b.box.high.x), std::max(all.high.y, b.box.high.y)};
    }
    return all;
}

Vec2 turned(Vec2 point, double by_rad, Vec2 about) {
    const Vec2 d = point - about;
    const double c = std::cos(by_rad), s = std::sin(by_rad);
    return {about.x + d.x * c - d.y * s, about.y + d.x * s + d.y * c};
}

Vec2 way_to_line(const Box2& box, const Box2& all, AlignTo to) {
    switch (to) {
        case AlignTo::left:
            return {all.low.x - box.low.x, 0.0};
        case AlignTo::right:
            return {all.high.x - box.high.x, 0.0};
        case AlignTo::centre:
            return {(all.low.x + all.high.x - box.low.x - box.high.x) * 0.5, 0.0};
        case AlignTo::front:
            return {0.0, all.low.y - box.low.y};
        case AlignTo::back:
            return {0.0, all.high.y - box.high.y};
        case AlignTo::middle:
            return {0.0, (all.low.y + all.high.y - box.low.y - box.high.y) * 0.5};
    }
    return {};
}
}  // namespace

void move_by(Show& show, const Ids& ids, Vec2 by) {
    const std::vector<Boxed> boxes = boxes_of(show, ids);
    if (boxes.empty()) return;
    const Box2 all = joined(boxes);
    const auto held = [](double way, double low, double high) {
        return std::clamp(way, std::min(0.0, -kFarthest - low), std::max(0.0, kFarthest - high));
    };
    const Vec2 way{held(by.x, all.low.x, all.high.x), held(by.y, all.low.y, all.high.y)};
    for_each_selected(show, ids, [&](auto& item) { map_points(item, [&](Vec2 p) { return p + way; }); });
}

void turn_by(Show& show, const Ids& ids, double by_deg, Vec2 about) {
    for_each_selected(show, ids, [&](auto& item) {
        map_points(item, [&](Vec2 p) {
            const Vec2 to = turned(p, radians(by_deg), about);
            return Vec2{std::clamp(to.x, -kFarthest, kFarthest), std::clamp(to.y, -kFarthest, kFarthest)};
        });
        map_yaw(item, [&](double yaw) { return yaw + by_deg; });
    });
}

void turn_each_by(Show& show, const Ids& ids, double by_deg) {
    for_each_selected(show, ids, [&](auto& item) {
        if constexpr (std::is_same_v<std::decay_t<decltype(item)>, Riser>)
            map_points(item, [&, about = middle_of(item)](Vec2 p) { return turned(p, radians(by_deg), about); });
        map_yaw(item, [&](double yaw) { return yaw + by_deg; });
    });
}

void face(Show& show, const Ids& ids, Vec2 towards) {
    for_each_selected(show, ids, [&](auto& item) {
        const Vec2 d = towards - middle_of(item);
        if (length(d) > 0.0) map_yaw(item, [&](double) { return degrees(std::atan2(d.x, -d.y)); });
    });
}

void mirror(Show& show, const Ids& ids, double axis_x) {
    for_each_selected(show, ids, [&](auto& item) {
        map_points(item, [&](Vec2 p) { return Vec2{std::clamp(2.0 * axis_x - p.x, -kFarthest, kFarthest), p.y}; });
        map_yaw(item, [](double yaw) { return -yaw; });
        using Item = std::decay_t<decltype(item)>;
        if constexpr (std::is_same_v<Item, Loudspeaker>) item.aim.roll_deg = -item.aim.roll_deg + 0.0;
        if constexpr (std::is_same_v<Item, Riser>) std::reverse(item.outline.begin(), item.outline.end());
    });
}

void align(Show& show, const Ids& ids, AlignTo to) {
    const std::vector<Boxed> boxes = boxes_of(show, ids);
    if (boxes.size() < 2) return;
    const Box2 all = joined(boxes);
    for (const Boxed& one : boxes) move_by(show, {one.id}, way_to_line(one.box, all, to));
}

void spread(Show& show, const Ids& ids, SpreadAlong along) {
    std::vector<Boxed> boxes = boxes_of(show, ids);
    if (boxes.size() < 3) return;
    const auto at = [&](const Boxed& b) {
        const Vec2 middle = (b.box.low + b.box.high) * 0.5;
        return along == SpreadAlong::across ? middle.x : middle.y;
    };
    std::stable_sort(boxes.begin(), boxes.end(), [&](const Boxed& a, const Boxed& b) { return at(a) < at(b); });
    const double first = at(boxes.front()), gap = (at(boxes.back()) - first) / static_cast<double>(boxes.size() - 1);
    for (std::size_t i = 1; i + 1 < boxes.size(); ++i) {
        const double way = first + gap * static_cast<double>(i) - at(boxes[i]);
        move_by(show, {boxes[i].id}, along == SpreadAlong::across ? Vec2{way, 0.0} : Vec2{0.0, way});
    }
}

void set_locked(Show& show, const Ids& ids, bool locked) {
    for_each_placed_list(show, [&](auto& list) {
        for (auto& item : list) {
            if (!has(ids, item.id) || is_locked(item.extras) == locked) continue;
            std::erase_if(item.extras, [](const auto& key) { return key.first == "locked"; });
            if (locked) item.extras.emplace_back("locked", "true");
        }
    });
}

}  // namespace howlmap
