// SPDX-License-Identifier: GPL-3.0-or-later
// Stages in free air (floor absorption 1) where the right cure is known in closed form.
#pragma once
#include "core/cures/candidate.h"
#include "core/show/show.h"

namespace howlmap::test {

/// One omni loudspeaker at (0, 1, 1.5), one omni microphone 1 m upstage of it, the player 2 m upstage of the
/// loudspeaker; send 88 dB for a source of 94 dB: the loop gain is -6 dB at every frequency, air aside.
inline Show single_loop() {
    Show show;
    show.stage.outline = {{-6.0, 0.0}, {6.0, 0.0}, {6.0, 8.0}, {-6.0, 8.0}};
    show.stage.surfaces.floor.absorption = 1.0;
    show.tolerance.draws = 60;
    Loudspeaker wedge;
    wedge.id = wedge.name = "wedge";
    wedge.position = {0.0, 1.0, 1.5};
    show.loudspeakers = {wedge};
    Input voice;
    voice.id = voice.name = "voice";
    voice.transducer = Microphone{PatternName::omni, false, {}, {}};
    voice.position = {0.0, 2.0, 1.5};
    voice.aim = {180.0, 0.0, 0.0};
    voice.performer = "ann";
    voice.spectrum = SpectrumName::voice;
    show.inputs = {voice};
    Performer ann;
    ann.id = ann.name = "ann";
    ann.position = {0.0, 3.0};
    ann.ear_height_m = 1.5;
    ann.mix = "m1";
    show.performers = {ann};
    Mix mix;
    mix.id = mix.name = "m1";
    mix.loudspeakers = {"wedge"};
    mix.sends = {Send{"voice", 88.0, {}}};
    show.mixes = {mix};
    return show;
}

inline void set_pattern(Show& show, Pattern pattern) {
    std::get<Microphone>(show.inputs[0].transducer).pattern = pattern;
}

/// Angle in degrees between the microphone's front and the loudspeaker.
inline double wedge_angle_deg(const Show& show) {
    const Vec3 to = show.loudspeakers[0].position - show.inputs[0].position;
    const Frame frame = frame_of({show.inputs[0].aim.yaw_deg, show.inputs[0].aim.pitch_deg, 0.0});
    return degrees(local_angles(frame, to * (1.0 / length(to))).off_axis);
}

/// A show with all that a kind of cure is given.
struct Setting {
    explicit Setting(Show s, double needed_db = 6.0)
        : show(std::move(s)),
          loudness(show),
          guard(show),
          now(cures::situation_of(show, loudness, guard, needed_db, {}, job)) {}
    Setting(const Setting&) = delete;
    Show show;
    Job job;
    cures::Loudness loudness;
    cures::Guard guard;
    cures::Situation now;
};

}  // namespace howlmap::test
