// SPDX-License-Identifier: GPL-3.0-or-later
// Finds howls in a stream of samples as they come, from a file or a microphone.
#pragma once
#include <span>
#include <vector>

#include "core/audio/howl.h"
#include "core/audio/short_spectrum.h"
#include "core/audio/tracks.h"

namespace howlmap {

/// Takes one channel in blocks of any size. Howls alone and several at once, with or without music over them.
///
/// Method: narrow peaks of overlapping spectra are joined to tracks; a track is a howl if it rises along a straight
/// line in dB, keeps its frequency, stands out of what else sounds and has no musical partials that rise with it
/// (features PNPR, PHPR, IPMP and IMSD of T. van Waterschoot and M. Moonen, Proc. IEEE 99(2), 2011, section IV-C2, eq.
/// 41-51). One that sounded before the recording began must instead hold its level and have no partials. Accuracy:
/// frequency 0.1 % or 1 Hz at 10 dB over the music; growth 10 % up to 150 dB/s; times 0.2 s. Valid for 8 to 192 kHz.
/// Memory: a few MB, however long the stream.
class RingDetector {
  public:
    explicit RingDetector(double rate_hz);

    /// Next samples of one channel, full scale 1.
    void push(std::span<const float> samples);
    /// The stream has ended; what still sounds is judged as it stands.
    void finish();

    /// Howls that have ended since the last call, in the order in which they ended.
    std::vector<Howl> take();
    /// Howls that are sounding now, loudest first: for a live display.
    std::vector<Howl> sounding() const;

  private:
    void judge(const std::vector<Track>& ended);
    double rate_hz_;
    ShortSpectrum spectrum_;
    Tracker tracker_;
    long frame_ = 0;
    std::vector<Howl> found_;
};

}  // namespace howlmap
