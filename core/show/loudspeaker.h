// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <string>

#include "core/geometry/pose.h"
#include "core/show/directivity.h"
#include "core/show/filter.h"

namespace howlmap {

enum class LoudspeakerKind { wedge, side_fill, drum_fill, front_fill, flown_fill, main, sub, combo_amp };

/// A loudspeaker on or around the stage. `position` is the acoustic centre, z above the stage floor.
struct Loudspeaker {
    std::string id, name;
    LoudspeakerKind kind = LoudspeakerKind::wedge;
    Vec3 position;
    Aim aim{180.0, 0.0, 0.0};  ///< default faces upstage
    double trim_db = 0.0;      ///< -60..60
    double delay_ms = 0.0;     ///< 0..1000
    Polarity polarity = Polarity::normal;
    Response response;
    Directivity directivity = Omni{};
    std::optional<double> max_spl_db;  ///< at 1 m on axis; absent: not known
    std::string preset, notes;
    Extras extras;
    friend bool operator==(const Loudspeaker&, const Loudspeaker&) = default;
};

/// Whether its sound counts as stage wash out front: everything but the front fill, the mains and the subs.
bool makes_wash(LoudspeakerKind kind);

}  // namespace howlmap
