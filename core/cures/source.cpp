// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/source.h"

#include <algorithm>
#include <cmath>

#include "core/directivity/receiver_pattern.h"
#include "core/propagation/paths.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::cures {
namespace {
constexpr double kNearM = 0.05, kFarM = 1.0, kUsualM = 0.1;
constexpr double kMostLossDb = 6.0;

double heard_db(const Input& input, Vec3 source) {
    const Vec3 way = source - input.position;
    const double metres = length(way);
    const Frame frame = frame_of({input.aim.yaw_deg, input.aim.pitch_deg, 0.0});
    const double off_axis = metres > 0.0 ? local_angles(frame, way * (1.0 / metres)).off_axis : 0.0;
    return ratio_to_db(std::abs(ReceiverPattern(input).gain(off_axis, 1000.0)) / std::max(metres, kNearestM));
}

double pattern_loss_db(const Input& input, Vec3 source) {
    return heard_db(input, source) + ratio_to_db(std::max(length(source - input.position), kNearestM));
}
}  // namespace

Vec3 source_of(const Show& show, const Input& input) {
    if (!microphone_of(input)) return input.position;
    const Vec3 forward = frame_of({input.aim.yaw_deg, input.aim.pitch_deg, 0.0}).forward;
    const Performer* performer = find_by_id(show.performers, input.performer);
    const double flat = forward.x * forward.x + forward.y * forward.y;
    double metres = kUsualM;
    if (performer && flat > 0.01) {
        const Vec2 to = performer->position - input.position.xy();
        const double nearest = (to.x * forward.x + to.y * forward.y) / flat;
        if (nearest > kNearM) metres = std::min(nearest, kFarM);
    }
    return input.position + forward * metres;
}

bool follow_source(const Input& before, Vec3 source, Input& after) {
    if (!microphone_of(before)) return true;
    if (!(pattern_loss_db(after, source) >= -kMostLossDb)) return false;
    const double level = before.source_spl_db + heard_db(after, source) - heard_db(before, source);
    after.source_spl_db = std::clamp(std::round(level * 100.0) / 100.0, -60.0, 160.0);
    return true;
}

}  // namespace howlmap::cures
