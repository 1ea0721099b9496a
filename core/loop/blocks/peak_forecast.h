// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

namespace howlmap {

/// How far the largest eigenvalue of each interval of frequencies rises above its rough size, learned from some draws.
/// Where thousands of independent room terms are looked through, the largest differs by about a decibel from draw to
/// draw; a bound that holds whatever the room does lies 10 dB higher.
class PeakForecast {
  public:
    /// Given: peaks by draw, then interval, in units of the rough size; 0 where there was none to be learned from.
    explicit PeakForecast(const std::vector<std::vector<double>>& peaks);
    /// The peak of an interval stays below this times the rough size, but for about once in 10^4 draws; infinite where
    /// nothing is known.
    double most(std::size_t interval) const { return most_[interval]; }

  private:
    std::vector<double> most_;
};

}  // namespace howlmap
