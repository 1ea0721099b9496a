// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/block_scan.h"

#include <algorithm>
#include <cmath>

#include "core/loop/crossings.h"
#include "core/loop/locus_step.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
constexpr int kDeepest = 5;  // a block, then each interval of it divided 15-fold, again and again
/// How much larger a locus may be between two points than interpolation says, and than at the points.
constexpr double kSlack = 1.1;
constexpr double kSurveySlack = 1.03;   // gains are linear over the blocks of the survey
constexpr double kBetweenKnots = 1.46;  // a room term between two knots against the larger of both, slack included
constexpr double kSure = 1e-3;          // 0.01 dB

/// What single precision is scaled by: a power of two, so that a crossing comes out the same to the last digit, however
/// large the loop gains are that were asked for.
double scale_of(double size) { return std::ldexp(1.0, std::ilogb(size)); }

/// About how wrong the size between two points is: a locus that turns by b and grows by a (nepers) between them bends
/// away from the spiral through both by an eighth of its second difference, which is of the order of a^2 + b^2.
double interpolation_error(const LocusStep& step) {
    const double turn = step.turn(), growth = std::log(std::abs(step.to) / std::abs(step.from));
    return 0.125 * (turn * turn + growth * growth);
}
}  // namespace

BlockScan::BlockScan(const BlockModel& shared)
    : shared_(&shared),
      stance_(shared.plan().as_drawn()),
      wiring_(shared.wiring()),
      placement_(shared.model(), shared.tables()),
      quick_(shared, placement_),
      bounds_(shared.model(), wiring_, shared.grid(), shared.room()),
      stretches_(shared, bounds_),
      h_(wiring_.inputs * wiring_.speakers),
      scratch_(wiring_.inputs * wiring_.buses) {
    for (int i = 0; i <= kDeepest; ++i) spectra_.push_back(std::make_unique<BlockSpectrum>(wiring_.size()));
    if (shared.room()) room_.emplace(*shared.room());
}

void BlockScan::enter(std::uint64_t draw) {
    const DrawNumbers numbers(shared_->model().show().tolerance.seed, draw);
    shared_->plan().draw(numbers, stance_);
    place(numbers);
}

void BlockScan::place(const DrawNumbers& numbers) {
    placement_.set(stance_);
    wiring_.sends = stance_.sends;
    quick_.set(stance_, numbers);
    if (room_) room_->set(numbers, shared_->plan().layout().room, stance_.phases);
}

std::optional<DrawnMargin> BlockScan::margin(std::uint64_t draw, double least, const PeakForecast* forecast) {
    enter(draw);
    return strongest(least, forecast);
}

std::optional<DrawnMargin> BlockScan::as_drawn() {
    stance_ = shared_->plan().as_drawn();
    place(DrawNumbers(0, 0));
    return strongest(kLeastLoop, nullptr);
}

std::optional<DrawnMargin> BlockScan::strongest(double least, const PeakForecast* forecast) {
    best_ = {0.0, least};
    surveyed_.assign(shared_->survey().parts.size(), false);
    stretches_.heed(forecast);
    bounds_.order(placement_, wiring_, stretches_.most(), intervals_);
    for (const IntervalBounds::Entry& interval : intervals_) {
        if (interval.bound < best_.size) break;
        visit(interval);
    }
    if (best_.hz == 0.0) return std::nullopt;
    return DrawnMargin{-ratio_to_db(best_.size), best_.hz};
}

double BlockScan::bound_of(const IntervalBounds::Entry& interval, const Stretches::Stretch& stretch) const {
    // Where nothing is known the product is infinite, or no number.
    const double known = interval.rough * stretch.most;
    return known < interval.bound ? known : interval.bound;
}

std::vector<bool> BlockScan::chances(std::uint64_t draw, double least, const PeakForecast* forecast) {
    enter(draw);
    stretches_.heed(forecast);
    bounds_.order(placement_, wiring_, stretches_.most(), intervals_);
    std::vector<bool> chances(stretches_.size());
    for (const IntervalBounds::Entry& interval : intervals_)
        for (std::size_t i = stretches_.first(interval.interval); i < stretches_.first(interval.interval + 1); ++i)
            chances[i] = bound_of(interval, stretches_[i]) >= least;
    return chances;
}

std::vector<double> BlockScan::peaks(std::uint64_t draw, const std::vector<bool>& wanted) {
    enter(draw);
    bounds_.order(placement_, wiring_, {}, intervals_);
    std::vector<double> peaks(stretches_.size());
    for (const IntervalBounds::Entry& interval : intervals_) {
        if (interval.rough <= 0.0) continue;
        quick_.balance(bounds_.balance(interval.interval));
        for (std::size_t i = stretches_.first(interval.interval); i < stretches_.first(interval.interval + 1); ++i)
            if (wanted[i]) peaks[i] = largest_in(stretches_[i], interval.rough);
    }
    return peaks;
}

/// In units of `rough`: single precision would lose the squares of faint loops. 0 where it cannot be told.
double BlockScan::largest_in(const Stretches::Stretch& stretch, double rough) {
    const Block& block = shared_->grid().blocks[stretch.first];
    if (stretch.part >= 0) {
        const auto part = static_cast<std::size_t>(stretch.part);
        quick_.enter(shared_->survey().grid.blocks[part], shared_->survey_chains().at(part), rough, true);
    } else if (quick_.fits(block)) {
        quick_.enter(block, shared_->chains().at(stretch.first), rough, false);
    } else {
        return 0.0;
    }
    quick_.may_reach(0.0);  // as tight as can be
    double most = 0.0;
    for (std::size_t i = 0; i < kBlockPoints; ++i) most = std::max(most, quick_.bound(i));
    return most;
}

/// Where the bounds are largest first.
void BlockScan::visit(const IntervalBounds::Entry& interval) {
    quick_.balance(bounds_.balance(interval.interval));
    candidates_.clear();
    for (const Stretches::Stretch& stretch : stretches_.of(interval.interval)) {
        const double bound = bound_of(interval, stretch);
        if (bound < best_.size) continue;
        if (stretch.part >= 0)
            survey(static_cast<std::size_t>(stretch.part));
        else
            candidates_.push_back({stretch.first, bound});
    }
    std::stable_sort(candidates_.begin(), candidates_.end(),
                     [](const Candidate& a, const Candidate& b) { return a.bound > b.bound; });
    for (const Candidate& candidate : candidates_) {
        if (candidate.bound < best_.size) break;
        scan(shared_->grid().blocks[candidate.block], shared_->chains().at(candidate.block), 0);
    }
}

void BlockScan::survey(std::size_t part) {
    if (surveyed_[part]) return;
    surveyed_[part] = true;
    const Block& block = shared_->survey().grid.blocks[part];
    const double scale = scale_of(best_.size);
    quick_.enter(block, shared_->survey_chains().at(part), scale, true);
    if (!quick_.may_reach(best_.size / scale / kBetweenKnots)) return;
    double segments[kBlockPoints];  // bound between two knots: the variance adds up
    for (std::size_t i = 0; i + 1 < kBlockPoints; ++i)
        segments[i] = kSurveySlack * scale *
                      std::sqrt(quick_.bound(i) * quick_.bound(i) + quick_.bound(i + 1) * quick_.bound(i + 1));
    const Survey::Part& blocks = shared_->survey().parts[part];
    for (std::size_t b = blocks.first; b < blocks.last; ++b) {
        const Block& fine = shared_->grid().blocks[b];
        const double from = (fine.low_hz - block.low_hz) / block.step_hz,
                     to = from + 15.0 * fine.step_hz / block.step_hz;
        const auto first = static_cast<std::size_t>(std::max(0.0, from + 1e-6));
        const auto last = std::min(static_cast<std::size_t>(std::max(0.0, to - 1e-6)), kBlockPoints - 2);
        const double bound = *std::max_element(segments + first, segments + last + 1);
        if (bound >= best_.size) candidates_.push_back({b, bound});
    }
}

/// Loop matrices of a block and bounds of their eigenvalues; whether any may be the largest.
bool BlockScan::fill_spectrum(const Block& block, const ChainValues& chains, int depth) {
    BlockSpectrum& spectrum = *spectra_[static_cast<std::size_t>(depth)];
    if (depth == 0 && quick_.fits(block)) {
        const double scale = scale_of(best_.size);
        quick_.enter(block, chains, scale, false);
        if (!quick_.may_reach(best_.size / scale / kSlack)) return false;
        quick_.copy(scale, spectrum.matrix());
    } else {
        if (room_) room_->enter(block);
        for (std::size_t pair = 0; pair < h_.size(); ++pair) {
            placement_.transfer(pair, block, h_[pair]);
            if (room_) room_->add(pair, block, h_[pair]);
        }
        loop_matrix(wiring_, h_.data(), chains.hears.data(), chains.speaks.data(), scratch_.data(), spectrum.matrix());
    }
    return spectrum.find_bounds() * kSlack >= best_.size;
}

void BlockScan::scan(const Block& block, const ChainValues& chains, int depth) {
    if (!fill_spectrum(block, chains, depth)) return;
    BlockSpectrum& spectrum = *spectra_[static_cast<std::size_t>(depth)];
    spectrum.find_eigenvalues();
    for (std::size_t point = 0; point + 1 < kBlockPoints; ++point)
        if (std::max(spectrum.bound(point), spectrum.bound(point + 1)) * kSlack >= best_.size)
            look_between(block, spectrum, point, depth);
}

namespace {
/// Whether the locus at z surely goes on to the nearest of the others, turning gently, and not across the positive real
/// axis on the way. Given: what turns the two ends by the common delay.
bool passes_by(Complex z, const std::vector<Complex>& others, Complex late_here, Complex late_there) {
    Complex nearest;
    double least = 1e300, second = 1e300;
    for (const Complex other : others) {
        const double distance = std::norm(other - z);
        if (distance < least) {
            second = least;
            least = distance;
            nearest = other;
        } else if (distance < second) {
            second = distance;
        }
    }
    const Complex turn = times(nearest, std::conj(z));
    if (least > 0.1 * second || turn.real() < std::abs(turn.imag()) || turn.real() > 1.9 * std::norm(z) ||
        std::norm(z) > 1.9 * turn.real())
        return false;
    const Complex here = times(z, late_here), there = times(nearest, late_there);
    if ((here.imag() > 0.0) == (there.imag() > 0.0)) return here.imag() != 0.0 && there.imag() != 0.0;
    return here.real() < 0.0 && there.real() < 0.0;
}
}  // namespace

/// Whether a locus between low_ and high_ may cross with at least the best size so far.
bool BlockScan::may_cross(const StepSpan& span) const {
    const double square = best_.size * best_.size / (kSlack * kSlack), both = 2.0 * kPi * span.common_s;
    const double common = std::abs(both) * (span.high_hz - span.low_hz);
    // A step turns a locus by far less than 90 deg, and by the common delay: from further away it does not get to the
    // axis.
    const double reach = std::cos(std::min(kPi, kPi / 2.0 + common));
    const Complex late[2] = {std::polar(1.0, -2.0 * kPi * std::fmod(span.low_hz * span.common_s, 1.0)),
                             std::polar(1.0, -2.0 * kPi * std::fmod(span.high_hz * span.common_s, 1.0))};
    for (int end = 0; end < 2; ++end)
        for (const Complex mu : end == 0 ? low_ : high_) {
            const double size = std::norm(mu);
            if (size < square || times(mu, late[end]).real() < reach * std::sqrt(size)) continue;
            if (common > kPi / 4.0 || !passes_by(mu, end == 0 ? high_ : low_, late[end], late[1 - end])) return true;
        }
    return false;
}

void BlockScan::look_between(const Block& block, const BlockSpectrum& spectrum, std::size_t point, int depth) {
    const StepSpan span{block.hz(point), block.hz(point + 1), shared_->common_s()};
    low_.resize(spectrum.size());
    high_.resize(spectrum.size());
    for (std::size_t i = 0; i < spectrum.size(); ++i) {
        low_[i] = spectrum.eigenvalue(i, point);
        high_[i] = spectrum.eigenvalue(i, point + 1);
    }
    if (!may_cross(span)) return;
    const double least = best_.size / kSlack;
    const std::vector<LocusStep> steps = paired(low_, high_);
    bool close = !is_clear(steps, span, least);
    for (const LocusStep& step : steps) {
        if (close || !step.reaches(least)) continue;
        const bool sure = interpolation_error(step) < kSure;
        for_each_passing(step, span, [&](const Passing& passing) {
            if (sure && passing.size > best_.size) best_ = {passing.hz, passing.size};
            if (!sure && passing.size * kSlack > best_.size) close = true;
        });
    }
    if (!close || depth == kDeepest) return;
    const Block inner = between_points(block, point);
    scan(inner, chain_values(shared_->model(), wiring_, shared_->common_s(), inner), depth + 1);
}

}  // namespace howlmap
