// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/cures/cures.h"

namespace howlmap {

const char* to_string(CureKind kind) {
    switch (kind) {
        case CureKind::aim_microphone:
            return "aim_microphone";
        case CureKind::move_microphone:
            return "move_microphone";
        case CureKind::closer_to_source:
            return "closer_to_source";
        case CureKind::change_pattern:
            return "change_pattern";
        case CureKind::move_loudspeaker:
            return "move_loudspeaker";
        case CureKind::aim_loudspeaker:
            return "aim_loudspeaker";
        case CureKind::graphic_bands:
            return "graphic_bands";
        case CureKind::narrow_notches:
            return "narrow_notches";
        case CureKind::high_pass:
            return "high_pass";
        case CureKind::input_polarity:
            return "input_polarity";
        case CureKind::mix_polarity:
            return "mix_polarity";
        case CureKind::cover_sound_holes:
            return "cover_sound_holes";
        case CureKind::remove_send:
            return "remove_send";
        case CureKind::in_ears:
            return "in_ears";
        case CureKind::turn_down:
            return "turn_down";
    }
    return "";
}

const std::vector<CureKind>& all_cure_kinds() {
    static const std::vector<CureKind> all = {
        CureKind::aim_microphone,   CureKind::move_microphone, CureKind::closer_to_source, CureKind::change_pattern,
        CureKind::move_loudspeaker, CureKind::aim_loudspeaker, CureKind::graphic_bands,    CureKind::narrow_notches,
        CureKind::high_pass,        CureKind::input_polarity,  CureKind::mix_polarity,     CureKind::cover_sound_holes,
        CureKind::remove_send,      CureKind::in_ears,         CureKind::turn_down};
    return all;
}

namespace {
double TroubleWeights::*member_of(CureKind kind) {
    switch (kind) {
        case CureKind::aim_microphone:
            return &TroubleWeights::aim_microphone;
        case CureKind::move_microphone:
            return &TroubleWeights::move_microphone;
        case CureKind::closer_to_source:
            return &TroubleWeights::closer_to_source;
        case CureKind::change_pattern:
            return &TroubleWeights::change_pattern;
        case CureKind::move_loudspeaker:
            return &TroubleWeights::move_loudspeaker;
        case CureKind::aim_loudspeaker:
            return &TroubleWeights::aim_loudspeaker;
        case CureKind::graphic_bands:
            return &TroubleWeights::graphic_bands;
        case CureKind::narrow_notches:
            return &TroubleWeights::narrow_notches;
        case CureKind::high_pass:
            return &TroubleWeights::high_pass;
        case CureKind::input_polarity:
            return &TroubleWeights::input_polarity;
        case CureKind::mix_polarity:
            return &TroubleWeights::mix_polarity;
        case CureKind::cover_sound_holes:
            return &TroubleWeights::cover_sound_holes;
        case CureKind::remove_send:
            return &TroubleWeights::remove_send;
        case CureKind::in_ears:
            return &TroubleWeights::in_ears;
        case CureKind::turn_down:
            return &TroubleWeights::turn_down;
    }
    return &TroubleWeights::turn_down;
}
}  // namespace

double TroubleWeights::of(CureKind kind) const { return this->*member_of(kind); }
bool TroubleWeights::offers(CureKind kind) const { return std::isfinite(of(kind)); }
void TroubleWeights::set(CureKind kind, double trouble) { this->*member_of(kind) = trouble; }

}  // namespace howlmap
