// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/show/show.h"

namespace howlmap::test {

/// Two inputs, a wedge, a player and her mix.
inline Show small_show() {
    Show show;
    Loudspeaker wedge;
    wedge.id = "w1";
    wedge.name = "wedge 1";
    wedge.position = {0.0, 1.0, 0.3};
    wedge.directivity = Coverage{};
    Loudspeaker other = wedge;
    other.id = "w2";
    other.name = "wedge 2";
    other.trim_db = -3.0;
    show.loudspeakers = {wedge, other};
    Input voice;
    voice.id = "vox";
    voice.name = "voice";
    voice.channel = 1;
    voice.position = {0.0, 2.0, 1.5};
    voice.performer = "ada";
    Input fiddle = voice;
    fiddle.id = "fid";
    fiddle.name = "fiddle";
    fiddle.channel = 2;
    fiddle.transducer = Pickup{15.0, -12.0, false, 10.0, {BodyMode{}}, {}};
    show.inputs = {voice, fiddle};
    Performer ada;
    ada.id = "ada";
    ada.name = "Ada";
    ada.position = {0.0, 2.2};
    ada.mix = "m1";
    show.performers = {ada};
    Mix mix;
    mix.id = "m1";
    mix.number = 1;
    mix.name = "front";
    mix.loudspeakers = {"w1"};
    mix.sends = {Send{"vox", 92.0, {}}};
    show.mixes = {mix};
    return show;
}

}  // namespace howlmap::test
