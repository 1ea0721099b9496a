// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/show/show.h"

#include <algorithm>

namespace howlmap {

bool makes_wash(LoudspeakerKind kind) {
    switch (kind) {
        case LoudspeakerKind::front_fill:
        case LoudspeakerKind::main:
        case LoudspeakerKind::sub:
            return false;
        default:
            return true;
    }
}

double first_order_a(PatternName name) {
    switch (name) {
        case PatternName::omni:
            return 1.0;
        case PatternName::subcardioid:
            return 0.7;
        case PatternName::cardioid:
            return 0.5;
        case PatternName::supercardioid:
            return 0.37;
        case PatternName::hypercardioid:
            return 0.25;
        case PatternName::figure_8:
            return 0.0;
    }
    return 1.0;
}

double riser_height_at(const Stage& stage, Vec2 point) { return common_riser_height(stage, point, point); }

double common_riser_height(const Stage& stage, Vec2 a, Vec2 b) {
    double height = 0.0;
    for (const Riser& riser : stage.risers)
        if (covers(riser.outline, a) && covers(riser.outline, b)) height = std::max(height, riser.height_m);
    return height;
}

}  // namespace howlmap
