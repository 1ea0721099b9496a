// SPDX-License-Identifier: GPL-3.0-or-later
// The strongest crossing of a stance, found block by block where it may be.
#pragma once
#include <memory>
#include <optional>

#include "core/loop/blocks/block_model.h"
#include "core/loop/blocks/block_spectrum.h"
#include "core/loop/blocks/quick_field.h"
#include "core/loop/blocks/stretches.h"
#include "core/loop/crossings.h"
#include "core/loop/locus_step.h"
#include "core/loop/tolerance.h"

namespace howlmap {

/// Works through draws one after another; one a thread.
class BlockScan {
  public:
    explicit BlockScan(const BlockModel& shared);
    /// Strongest crossing of a draw, its size to about 0.01 dB and its frequency to a hundredth of a step. Absent below
    /// -60 dB, and where nothing is larger than `least` (a loop gain, 0.001 or more): the more is asked, the faster.
    /// A forecast (may be null) saves looking where a draw's room term would have to be a freak.
    std::optional<DrawnMargin> margin(std::uint64_t draw, double least = kLeastLoop,
                                      const PeakForecast* forecast = nullptr);
    /// The same of the show as drawn, without a room term: for a model that was made for it.
    std::optional<DrawnMargin> as_drawn();
    /// By stretch, whether a draw may have an eigenvalue of `least` there, for all that bounds and a forecast (may be
    /// null) say.
    std::vector<bool> chances(std::uint64_t draw, double least, const PeakForecast* forecast);
    /// What a forecast learns from: the largest eigenvalues of a draw in some stretches, 0 in the others; and all
    /// stretches.
    std::vector<double> peaks(std::uint64_t draw, const std::vector<bool>& wanted);
    std::vector<PeakForecast::Interval> stretches() const { return stretches_.frequencies(); }

  private:
    struct Found {
        double hz = 0.0, size = 0.0;
    };
    /// A block that may hold the strongest crossing.
    struct Candidate {
        std::size_t block;
        double bound;
    };
    void enter(std::uint64_t draw);
    void place(const DrawNumbers& numbers);
    std::optional<DrawnMargin> strongest(double least, const PeakForecast* forecast);
    double bound_of(const IntervalBounds::Entry& interval, const Stretches::Stretch& stretch) const;
    double largest_in(const Stretches::Stretch& stretch, double rough);
    void visit(const IntervalBounds::Entry& interval);
    void survey(std::size_t part);
    bool fill_spectrum(const Block& block, const ChainValues& chains, int depth);
    void scan(const Block& block, const ChainValues& chains, int depth);
    bool may_cross(const StepSpan& span) const;
    void look_between(const Block& block, const BlockSpectrum& spectrum, std::size_t point, int depth);

    const BlockModel* shared_;
    Stance stance_;
    Wiring wiring_;
    Placement placement_;
    QuickField quick_;
    IntervalBounds bounds_;
    Stretches stretches_;
    std::vector<IntervalBounds::Entry> intervals_;
    std::vector<Lanes> h_, scratch_;
    std::vector<std::unique_ptr<BlockSpectrum>> spectra_;  // one a depth
    std::optional<RoomDraw> room_;
    std::vector<bool> surveyed_;
    std::vector<Candidate> candidates_;
    std::vector<Complex> low_, high_;
    Found best_;
};

}  // namespace howlmap
