// SPDX-License-Identifier: GPL-3.0-or-later
// What a signal passes on its way: loudspeaker, microphone or body, input channel, mix.
#pragma once
#include <optional>

#include "core/loop/filter.h"
#include "core/show/input.h"
#include "core/show/loudspeaker.h"
#include "core/show/mix.h"

namespace howlmap {

/// Rl(f): response, trim, polarity and delay of a loudspeaker.
Filter loudspeaker_response(const Loudspeaker& loudspeaker);

/// P_c(f): high-pass, parametric equalisers and polarity of an input.
Filter input_chain(const Input& input);

/// E_m(f): high-pass, graphic equaliser, notches, polarity and delay of a mix.
Filter mix_chain(const Mix& mix);

/// S = 10^((level_db - source_spl_db) / 20).
double send_gain(double level_db, double source_spl_db);

/// What an instrument's body makes of the sound field around it, as a bank of resonances over a broad coupling.
struct BodyBank {
    struct Mode {
        double hz, q, gain;
    };
    double scale = 1.0, baseline = 0.0;
    std::vector<Mode> modes;
    /// 10^(-isolation/20) (10^(baseline/20) + sum of 10^(gain/20) (j u/Q) / (1 - u^2 + j u/Q)), u = f / f_k.
    Complex at(double hz) const;
};
/// Covered sound holes: each air mode loses `cover_db` and half its Q (estimate, no source).
BodyBank body_bank(const Pickup& pickup);

/// B(f): response of a microphone (a cupped one with its peak at 1600 Hz, +5 dB, Q 1: common practice, no source), or
/// of a body.
class InputResponse {
  public:
    /// Given: a microphone or pickup; a line input gives 1.
    explicit InputResponse(const Input& input);
    Complex at(double hz) const { return body_ ? body_->at(hz) : filter_.at(hz); }
    /// Phase in turns: sections one by one, or that of the body, which stays within a quarter turn.
    double turns(double hz) const;
    const Filter& filter() const { return filter_; }
    const std::optional<BodyBank>& body() const { return body_; }

  private:
    Filter filter_;
    std::optional<BodyBank> body_;
};

}  // namespace howlmap
