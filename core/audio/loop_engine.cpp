// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/loop_engine.h"

#include <algorithm>
#include <cmath>

namespace howlmap {
namespace {

// Rows: inputs, then what is heard. Columns: buses, then the source.
std::vector<std::vector<std::vector<float>>> arranged(const LoopKernels& kernels, int source_input) {
    std::vector<std::vector<std::vector<float>>> taps = kernels.loop;
    for (std::size_t c = 0; c < taps.size(); ++c)
        taps[c].push_back(static_cast<int>(c) == source_input ? kernels.channel[c] : std::vector<float>{});
    taps.push_back(kernels.heard);
    taps.back().emplace_back();
    return taps;
}

}  // namespace

LoopEngine::LoopEngine(const LoopKernels& kernels, const Eigen::MatrixXd& sends, std::vector<double> ceilings,
                       int source_input)
    : matrix_(kernels.block, arranged(kernels, source_input)),
      ceilings_(ceilings.begin(), ceilings.end()),
      columns_(matrix_.columns(), std::vector<float>(kernels.block)),
      sum_(kernels.block) {
    for (Eigen::Index m = 0; m < sends.rows(); ++m) {
        sends_.emplace_back();
        for (Eigen::Index c = 0; c < sends.cols(); ++c) sends_.back().push_back(static_cast<float>(sends(m, c)));
    }
}

void LoopEngine::step(std::span<const float> source, std::span<const float> extra, std::span<float> heard) {
    const std::size_t inputs = matrix_.rows() - 1, buses = sends_.size(), n = block();
    std::copy_n(matrix_.next(inputs).begin(), n, heard.begin());
    for (auto& column : columns_) std::fill(column.begin(), column.end(), 0.0f);
    std::fill(sum_.begin(), sum_.end(), 0.0f);
    energy_ = 0.0;
    for (std::size_t c = 0; c < inputs; ++c) {
        const std::span<const float> looped = matrix_.next(c);
        for (std::size_t i = 0; i < n; ++i) {
            const float x = looped[i] + extra[i];
            sum_[i] += x;
            energy_ += static_cast<double>(x) * x;
            for (std::size_t m = 0; m < buses; ++m) columns_[m][i] += sends_[m][c] * x;
        }
    }
    const auto gain = static_cast<float>(gain_);
    for (std::size_t m = 0; m < buses; ++m)
        for (float& x : columns_[m])
            x = ceilings_.empty() ? gain * x : ceilings_[m] * std::tanh(gain * x / ceilings_[m]);
    std::copy_n(source.begin(), n, columns_[buses].begin());
    matrix_.push(columns_);
}

}  // namespace howlmap
