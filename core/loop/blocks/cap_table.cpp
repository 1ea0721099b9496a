// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/cap_table.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>

#include "core/directivity/cap_on_sphere.h"
#include "core/loop/blocks/legendre_kernel.h"
#include "core/units/bands.h"

namespace howlmap {
namespace {
constexpr double kStepKa = 0.1;      // lobes are about 2 wide in ka
constexpr double kRowsALobe = 16.0;  // a lobe is about pi / ka wide
constexpr std::size_t kMostColumns = 4000, kMostRows = 3000;
constexpr double kBeyond = 1.05;  // room for a faster or slower air
}  // namespace

CapTable::CapTable(const CapOnSphere& cap, double speed, const std::vector<double>& nodes)
    : cap_(cap), speed_(speed), nodes_(nodes.size()) {
    const double most_hz = kBeyond * kHighestHz, ka = 2.0 * kPi * most_hz / speed * cap.sphere_radius_m;
    columns_ = std::clamp(static_cast<std::size_t>(ka / kStepKa) + 2, std::size_t{64}, kMostColumns);
    rows_ = std::clamp(static_cast<std::size_t>(kRowsALobe * ka / kPi * 2.0) + 2, std::size_t{91}, kMostRows);
    step_hz_ = most_hz / static_cast<double>(columns_ - 1);
    angle_step_ = kPi / static_cast<double>(rows_ - 1);
    fill();
    find_envelope(nodes);
}

void CapTable::fill() {
    std::vector<double> cosines((rows_ + 7) / 8 * 8, 1.0);
    for (std::size_t row = 0; row < rows_; ++row) cosines[row] = std::cos(angle_step_ * static_cast<double>(row));
    gains_.assign(rows_ * columns_, 1.0F);  // 1 at 0 Hz
    tbb::parallel_for(std::size_t{1}, columns_, [&](std::size_t column) {
        const CapSlice slice(cap_, 2.0 * kPi * step_hz_ * static_cast<double>(column) / speed_);
        std::vector<double> sizes(cosines.size());
        legendre_sizes(slice.terms().data(), slice.terms().size(), cosines.data(), cosines.size(), sizes.data());
        for (std::size_t row = 0; row < rows_; ++row)
            gains_[row * columns_ + column] = static_cast<float>(std::min(1.0, sizes[row]));
    });
}

void CapTable::find_envelope(const std::vector<double>& nodes) {
    envelope_.resize(rows_ * nodes_);
    for (std::size_t node = 0; node < nodes_; ++node) {
        const double low = nodes[node > 0 ? node - 1 : 0] / kBeyond;
        const double high = nodes[std::min(node + 1, nodes_ - 1)] * kBeyond;
        const auto first = static_cast<std::size_t>(low / step_hz_);
        const auto last = std::min(columns_ - 1, static_cast<std::size_t>(high / step_hz_) + 1);
        for (std::size_t row = 0; row < rows_; ++row) {
            const float* gains = gains_.data() + row * columns_;
            envelope_[row * nodes_ + node] = *std::max_element(gains + first, gains + last + 1);
        }
    }
}

void CapTable::apply(double off_axis, double speed, const Block& block, double* gains) const {
    const double place = off_axis / angle_step_;
    const auto row = std::min(static_cast<std::size_t>(place), rows_ - 2);
    const double t = place - static_cast<double>(row);
    const float *low = gains_.data() + row * columns_, *high = low + columns_;
    // What counts is the wave number: another speed of sound is another frequency.
    const double scale = speed_ / speed / step_hz_, first = block.low_hz * scale, step = block.step_hz * scale;
    for (std::size_t i = 0; i < kBlockPoints; ++i) {
        const double x = first + step * static_cast<double>(i);
        const auto column = std::min(static_cast<std::size_t>(x), columns_ - 2);
        const double u = x - static_cast<double>(column);
        const double at_low = low[column] * (1.0 - u) + low[column + 1] * u;
        const double at_high = high[column] * (1.0 - u) + high[column + 1] * u;
        gains[i] *= at_low * (1.0 - t) + at_high * t;
    }
}

void CapTable::apply_envelope(double off_axis, double* gains) const {
    const auto row = std::min(static_cast<std::size_t>(off_axis / angle_step_), rows_ - 2);
    const float *low = envelope_.data() + row * nodes_, *high = low + nodes_;
    for (std::size_t node = 0; node < nodes_; ++node) gains[node] *= std::max(low[node], high[node]);
}

}  // namespace howlmap
