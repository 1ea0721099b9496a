// SPDX-License-Identifier: GPL-3.0-or-later
// Shows in free air (floor absorption 1) whose levels are known in closed form.
#pragma once
#include "core/show/show.h"

namespace howlmap::test {

/// One omni wedge at (0, 1, 1.6) and one player's ear 2 m upstage of it; her voice at 100 dB in mix "m1"; dry,
/// loss-free enough air.
inline Show one_player() {
    Show show;
    show.stage.surfaces.floor.absorption = 1.0;
    Loudspeaker wedge;
    wedge.id = wedge.name = "w1";
    wedge.position = {0.0, 1.0, 1.6};
    show.loudspeakers = {wedge};
    Input voice;
    voice.id = voice.name = "voice";
    voice.performer = "ann";
    voice.position = {0.0, 2.8, 1.6};
    voice.spectrum = std::map<int, double>{{17, 0.0}};  // 1 kHz alone: A-weighting 0 dB
    show.inputs = {voice};
    Performer ann;
    ann.id = ann.name = "ann";
    ann.position = {0.0, 3.0};
    ann.mix = "m1";
    show.performers = {ann};
    Mix mix;
    mix.id = mix.name = "m1";
    mix.loudspeakers = {"w1"};
    mix.sends = {Send{"voice", 100.0, {}}};
    show.mixes = {mix};
    return show;
}

/// Two such players 4 m apart, each with her wedge 2 m in front of her and her voice in it.
inline Show two_players() {
    Show show = one_player();
    Loudspeaker wedge = show.loudspeakers[0];
    wedge.id = wedge.name = "w2";
    wedge.position.x = 4.0;
    show.loudspeakers.push_back(wedge);
    Input voice = show.inputs[0];
    voice.id = voice.name = "voice2";
    voice.channel = 2;
    voice.performer = "bea";
    voice.position.x = 4.0;
    show.inputs.push_back(voice);
    Performer bea = show.performers[0];
    bea.id = bea.name = "bea";
    bea.position.x = 4.0;
    bea.mix = "m2";
    show.performers.push_back(bea);
    Mix mix = show.mixes[0];
    mix.id = mix.name = "m2";
    mix.number = 2;
    mix.loudspeakers = {"w2"};
    mix.sends = {Send{"voice2", 100.0, {}}};
    show.mixes.push_back(mix);
    return show;
}

}  // namespace howlmap::test
