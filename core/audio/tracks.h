// SPDX-License-Identifier: GPL-3.0-or-later
// Peaks of successive spectra joined into lines of nearly constant frequency.
#pragma once
#include <vector>

#include "core/audio/peaks.h"

namespace howlmap {

struct TrackPoint {
    long frame = 0;
    SpectralPeak peak;
    PartialLevels partials;
};

/// One line through successive frames. Points are kept up to 4096 (three minutes); after that only `last` moves on.
struct Track {
    std::vector<TrackPoint> points;
    TrackPoint last;
    double alone = 0.0;  ///< running share of recent frames in which no octave, twelfth or half stood beside it
};

class Tracker {
  public:
    /// Takes the peaks of a frame; frames are numbered 0, 1, ... Gives the tracks that ended: a track ends when nothing
    /// was found on it for four frames, so that a note which drowns it for a moment does not cut it.
    std::vector<Track> add(long frame, const SpectrumFrame& spectrum);
    /// Ends all tracks.
    std::vector<Track> finish();
    const std::vector<Track>& open() const { return open_; }

  private:
    std::vector<Track> open_;
};

}  // namespace howlmap
