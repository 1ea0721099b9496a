// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/cap_table.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <mutex>

#include "core/directivity/cap_on_sphere.h"
#include "core/loop/blocks/legendre_kernel.h"
#include "core/units/bands.h"

namespace howlmap {
namespace {
constexpr double kStepKa = 0.1;                            // lobes are about 2 wide in ka
constexpr double kRowsALobe = 16.0;                        // a lobe is about pi / ka wide
constexpr double kMostTerms = 2e9;                         // of all sums together
constexpr double kBeyond = 1.05;                           // room for a faster or slower air
constexpr std::size_t kMostBytes = std::size_t{32} << 20;  // of tables that are kept: about ten of usual loudspeakers
constexpr std::size_t kMostAtRest = std::size_t{8} << 20;

struct Kept {
    std::mutex mutex;
    std::vector<std::shared_ptr<const CapTable>> tables;  // the latest last

    /// The latest stays at any rate.
    void shrink(std::size_t most_bytes) {
        std::size_t bytes = 0;
        for (const auto& one : tables) bytes += one->bytes();
        for (; bytes > most_bytes && tables.size() > 1; tables.erase(tables.begin())) bytes -= tables.front()->bytes();
    }
};
Kept& kept() {
    static Kept kept;
    return kept;
}
}  // namespace

CapTable::CapTable(const CapOnSphere& cap, double speed) : cap_(cap), speed_(speed) {
    const double most_hz = kBeyond * kHighestHz, ka = 2.0 * kPi * most_hz / speed * cap.sphere_radius_m;
    const double terms = 0.5 * ka * (ka / kStepKa) * (kRowsALobe * ka / kPi * 2.0);
    const double coarser = std::max(1.0, std::sqrt(terms / kMostTerms));
    columns_ = std::max(static_cast<std::size_t>(ka / kStepKa / coarser) + 2, std::size_t{64});
    rows_ = std::max(static_cast<std::size_t>(kRowsALobe * ka / kPi * 2.0 / coarser) + 2, std::size_t{91});
    step_hz_ = most_hz / static_cast<double>(columns_ - 1);
    angle_step_ = kPi / static_cast<double>(rows_ - 1);
    fill();
}

void CapTable::fill() {
    std::vector<float> cosines(rows_);
    for (std::size_t row = 0; row < rows_; ++row)
        cosines[row] = static_cast<float>(std::cos(angle_step_ * static_cast<double>(row)));
    gains_.assign(rows_ * columns_, 1.0F);  // 1 at 0 Hz
    tbb::parallel_for(std::size_t{1}, columns_, [&](std::size_t column) {
        const CapSlice slice(cap_, 2.0 * kPi * step_hz_ * static_cast<double>(column) / speed_);
        std::vector<float> sizes(rows_);
        legendre_sizes(slice.terms(), cosines, sizes.data());
        for (std::size_t row = 0; row < rows_; ++row) gains_[row * columns_ + column] = std::min(1.0F, sizes[row]);
    });
}

std::size_t CapTable::row_of(double off_axis) const {
    return std::min(static_cast<std::size_t>(off_axis / angle_step_), rows_ - 2);
}

void CapTable::apply(double off_axis, double speed, const Block& block, double* gains) const {
    const std::size_t row = row_of(off_axis);
    const double t = off_axis / angle_step_ - static_cast<double>(row);
    const float *low = gains_.data() + row * columns_, *high = low + columns_;
    const double scale = columns_a_hertz(speed), first = block.low_hz * scale, step = block.step_hz * scale;
    for (std::size_t i = 0; i < kBlockPoints; ++i) {
        const double x = first + step * static_cast<double>(i);
        const auto column = std::min(static_cast<std::size_t>(x), columns_ - 2);
        const double u = x - static_cast<double>(column);
        const double at_low = low[column] * (1.0 - u) + low[column + 1] * u;
        const double at_high = high[column] * (1.0 - u) + high[column + 1] * u;
        gains[i] *= at_low * (1.0 - t) + at_high * t;
    }
}

void CapTable::row(double off_axis, std::vector<float>& gains) const {
    const std::size_t row = row_of(off_axis);
    const auto t = static_cast<float>(off_axis / angle_step_ - static_cast<double>(row));
    const float *low = gains_.data() + row * columns_, *high = low + columns_;
    gains.resize(columns_);
    for (std::size_t column = 0; column < columns_; ++column)
        gains[column] = low[column] + t * (high[column] - low[column]);
}

std::shared_ptr<const CapTable> cap_table(const CapOnSphere& cap, double speed) {
    Kept& all = kept();
    const auto same = [&](const auto& table) { return table->cap() == cap && table->speed() == speed; };
    {
        const std::scoped_lock lock(all.mutex);
        const auto found = std::ranges::find_if(all.tables, same);
        if (found != all.tables.end()) {
            std::rotate(found, found + 1, all.tables.end());
            return all.tables.back();
        }
    }
    auto table = std::make_shared<const CapTable>(cap, speed);  // not under the lock: it uses all threads
    const std::scoped_lock lock(all.mutex);
    all.tables.push_back(table);
    all.shrink(kMostBytes);
    return table;
}

void shrink_cap_tables() {
    Kept& all = kept();
    const std::scoped_lock lock(all.mutex);
    all.shrink(kMostAtRest);
}

CapEnvelope::CapEnvelope(const CapTable& table, const std::vector<double>& nodes)
    : nodes_(nodes.size()), rows_(table.rows_), angle_step_(table.angle_step_), largest_(rows_ * nodes_) {
    struct Columns {
        std::size_t first, last;
    };
    std::vector<Columns> around;
    for (std::size_t node = 0; node < nodes_; ++node) {
        const double low = nodes[node > 0 ? node - 1 : 0] / kBeyond;
        const double high = nodes[std::min(node + 1, nodes_ - 1)] * kBeyond;
        around.push_back({static_cast<std::size_t>(low / table.step_hz_),
                          std::min(table.columns_ - 1, static_cast<std::size_t>(high / table.step_hz_) + 1)});
    }
    for (std::size_t row = 0; row < rows_; ++row) {
        const float* gains = table.gains_.data() + row * table.columns_;
        for (std::size_t node = 0; node < nodes_; ++node)
            largest_[row * nodes_ + node] =
                *std::max_element(gains + around[node].first, gains + around[node].last + 1);
    }
}

void CapEnvelope::apply(double off_axis, float* gains) const {
    const auto row = std::min(static_cast<std::size_t>(off_axis / angle_step_), rows_ - 2);
    const float *low = largest_.data() + row * nodes_, *high = low + nodes_;
    for (std::size_t node = 0; node < nodes_; ++node) gains[node] *= std::max(low[node], high[node]);
}

}  // namespace howlmap
