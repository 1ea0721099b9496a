// SPDX-License-Identifier: GPL-3.0-or-later
// What a live display shows of the sound that comes in.
#pragma once
#include <array>
#include <span>
#include <vector>

#include "core/audio/ring_detector.h"
#include "core/audio/short_spectrum.h"
#include "core/units/bands.h"

namespace howlmap {

struct SoundReading {
    double level_dbfs = -120.0;                      ///< rms re a full-scale sine, over the last window (0.17 s)
    double peak_dbfs = -120.0;                       ///< largest sample of the last push
    std::array<double, kThirdOctaves> bands_dbfs{};  ///< third-octaves of the last window, re a full-scale sine
    double strongest_hz = 0.0;  ///< of the strongest spectral line, to a tenth of a bin; 0: silence
    std::vector<Howl> howls;    ///< sounding now, loudest first
};

/// Takes one channel in blocks of any size, rate 8000..192000 Hz, full scale 1.
class SoundMeter {
  public:
    explicit SoundMeter(double rate_hz);
    void push(std::span<const float> samples);
    const SoundReading& reading() const { return reading_; }
    /// Howls that have ended since the last call.
    std::vector<Howl> take() { return detector_.take(); }

  private:
    void read(const SpectrumFrame& frame);
    ShortSpectrum spectrum_;
    RingDetector detector_;
    SoundReading reading_;
};

}  // namespace howlmap
