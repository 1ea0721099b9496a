// SPDX-License-Identifier: GPL-3.0-or-later
// The stage's loops made audible: rising, ringing, howling.
#pragma once
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/audio/loop_probe.h"
#include "core/show/show.h"
#include "core/units/job.h"

namespace howlmap {

struct HearOptions {
    double raise_db = 0.0;     ///< all sends, -60..60
    double rate_hz = 48000.0;  ///< 32000..192000
    double seconds = 12.0;     ///< of the built-in phrase
    std::string input;         ///< id of the input that the source plays into; empty: the one that feeds the first ring
    std::vector<float>
        source;  ///< a recording at rate_hz; empty: a built-in phrase after the input's spectrum, then quiet
};

/// A stage prepared for listening. Not for several threads at once.
///
/// Every loop element is realised by an impulse response from the exact frequency response, delays included, so the
/// rings come where the analysis finds them: dominant frequency within 0.1 %, growth within 5 % (see loop_kernels.h).
/// The source is scaled so that its loudest 0.4 s have the input's source level; each mix bends softly at its
/// loudspeakers' greatest level, or 12 dB above its loudest send where that is not known. What comes out is the sum of
/// what the loudspeakers play, with a fade-in and its peaks held below half of full scale.
class LoopSound {
  public:
    /// Takes a second or two for a large show. Absent when the job was cancelled or the show has no input that is sent
    /// to a loudspeaker. Of more than 16 inputs or mixes the 16 with the strongest loops are kept.
    static std::optional<LoopSound> prepare(const Show& show, HearOptions options, const Job& job = {});
    LoopSound(LoopSound&&) noexcept;
    LoopSound& operator=(LoopSound&&) noexcept;
    ~LoopSound();

    double rate_hz() const;
    double seconds() const;            ///< of the source and a tail of three seconds
    const std::string& input() const;  ///< id of the input that the source plays into
    /// Turns all sends up or down while it plays.
    void set_raise_db(double db);
    /// The next samples, mono, any number, for as long as one likes. Peaks below 0.5.
    void play(std::span<float> out);
    /// Dominant frequency and growth of the loops as raised now, measured in the simulation itself.
    std::optional<LoopProbe> measure(const Job& job = {}) const;

  private:
    struct State;
    explicit LoopSound(std::unique_ptr<State> state);
    std::unique_ptr<State> state_;
};

/// The built-in phrase for an input: plucked notes for plucked and bass spectra, else bowed ones; rms about 0.1.
std::vector<float> built_in_phrase(const Spectrum& spectrum, double seconds, double rate_hz);

}  // namespace howlmap
