// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/plain_stage.h"

namespace howlmap::test {

Show plain_stage(int microphones, int loudspeakers) {
    Show show;
    show.stage.surfaces.floor.absorption = 1.0;
    show.tolerance.draws = 100;
    for (int i = 0; i < microphones; ++i) {
        Input input;
        input.id = "i" + std::to_string(i);
        input.channel = i + 1;
        Microphone microphone;
        microphone.pattern = PatternName::omni;
        input.transducer = microphone;
        input.position = {0.7 * i, 2.0, 1.6};
        show.inputs.push_back(input);
    }
    for (int l = 0; l < loudspeakers; ++l) {
        Loudspeaker loudspeaker;
        loudspeaker.id = "l" + std::to_string(l);
        loudspeaker.position = {1.1 * l, 0.9, 0.3};
        show.loudspeakers.push_back(loudspeaker);
        Mix mix;
        mix.id = "m" + std::to_string(l);
        mix.number = l + 1;
        mix.loudspeakers = {loudspeaker.id};
        show.mixes.push_back(mix);
    }
    return show;
}

void send(Show& show, int input, int mix, double level_db) {
    Send one;
    one.input = show.inputs[static_cast<std::size_t>(input)].id;
    one.level_db = level_db;
    show.mixes[static_cast<std::size_t>(mix)].sends.push_back(one);
}

}  // namespace howlmap::test
