// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

namespace howlmap {

/// How far the largest eigenvalue of each interval of frequencies rises above its rough size, learned from some draws
/// of a show. Where thousands of independent room terms are looked through,
/// the largest differs by about a decibel from draw to draw; a bound that holds whatever the room does lies 10 dB
/// higher.
class PeakForecast {
  public:
    struct Interval {
        double low_hz, high_hz;
    };
    /// Given: intervals by rising frequency, side by side, the finer the better; peaks by draw, then interval, in units
    /// of the rough size; 0 where there was none to be learned from.
    PeakForecast(std::vector<Interval> intervals, const std::vector<std::vector<double>>& peaks);
    /// The peak of an interval stays below this times the rough size, but for about once in 10^4 draws; infinite where
    /// not all of it is known.
    double most(Interval interval) const;
    /// The same for shows that differ from this one by a cure or two. There the peak of an interval may stay while that
    /// of its neighbour, which the rough size comes from, is filtered away: each may rise as far as the highest within
    /// a tenth of its frequency.
    PeakForecast for_others() const;
    /// This one, and where it knows nothing what another says.
    PeakForecast or_else(const PeakForecast& other) const;

  private:
    std::vector<Interval> intervals_;
    std::vector<double> most_;
};

}  // namespace howlmap
