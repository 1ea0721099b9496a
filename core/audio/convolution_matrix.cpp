// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/convolution_matrix.h"

#include <algorithm>
#include <complex>
#include <kissfft/kissfft.hh>

namespace howlmap {
namespace {

constexpr std::size_t kGrowth = 8;
constexpr std::size_t kLargestBlock = 8192;

using Taps = std::vector<std::vector<std::vector<float>>>;

// A spectrum as two arrays, which compilers turn into vector code.
struct Bins {
    std::vector<float> re, im;
    explicit Bins(std::size_t bins = 0) : re(bins, 0.0f), im(bins, 0.0f) {}
    bool empty() const { return re.empty(); }
};

void scale_all(std::vector<float>& values, float factor) {
    for (float& x : values) x *= factor;
}

void add_product(Bins& sum, const Bins& a, const Bins& b) {
    const std::size_t n = sum.re.size();
    const float *ar = a.re.data(), *ai = a.im.data(), *br = b.re.data(), *bi = b.im.data();
    float *sr = sum.re.data(), *si = sum.im.data();
    for (std::size_t k = 0; k < n; ++k) {
        sr[k] += ar[k] * br[k] - ai[k] * bi[k];
        si[k] += ar[k] * bi[k] + ai[k] * br[k];
    }
}

std::size_t longest(const Taps& taps) {
    std::size_t most = 0;
    for (const auto& row : taps)
        for (const auto& response : row) most = std::max(most, response.size());
    return most;
}

// Real transforms of 2 * block samples through complex ones of the same length: the imaginary part carries a second
// signal for nothing, but the code stays plain and the multiplications outweigh the transforms.
class Transform {
  public:
    explicit Transform(std::size_t length)
        : forward_(length, false), backward_(length, true), time_(length), freq_(length) {}
    void forward(const float* samples, Bins& out) {
        for (std::size_t i = 0; i < time_.size(); ++i) time_[i] = samples[i];
        forward_.transform(time_.data(), freq_.data());
        for (std::size_t k = 0; k < out.re.size(); ++k) out.re[k] = freq_[k].real(), out.im[k] = freq_[k].imag();
    }
    /// Last half of the inverse transform.
    void backward(const Bins& in, std::vector<float>& out) {
        const std::size_t n = time_.size();
        for (std::size_t k = 0; k <= n / 2; ++k) {
            freq_[k] = {in.re[k], in.im[k]};
            if (k > 0 && k < n / 2) freq_[n - k] = std::conj(freq_[k]);
        }
        backward_.transform(freq_.data(), time_.data());
        const float scale = 1.0f / static_cast<float>(n);
        for (std::size_t i = 0; i < n / 2; ++i) out[i] = scale * time_[n / 2 + i].real();
    }

  private:
    kissfft<float> forward_, backward_;
    std::vector<std::complex<float>> time_, freq_;
};

}  // namespace

// Taps [first, last) in partitions of `size`, reckoned once every `size` samples.
class ConvolutionMatrix::Level {
  public:
    Level(std::size_t size, std::size_t first, std::size_t last, const Taps& taps, std::size_t columns)
        : size_(size), parts_((last - first + size - 1) / size), transform_(2 * size), result_(size) {
        history_.assign(columns, std::vector<float>(2 * size, 0.0f));
        spectra_.assign(columns, std::vector<Bins>(parts_, Bins(size + 1)));
        for (const auto& row : taps) {
            responses_.emplace_back();
            for (const auto& response : row) responses_.back().push_back(partition(response, first));
        }
    }

    void push(const std::vector<std::vector<float>>& inputs) {
        const std::size_t count = inputs.front().size();
        for (std::size_t c = 0; c < history_.size(); ++c)
            std::copy(inputs[c].begin(), inputs[c].end(),
                      history_[c].begin() + static_cast<std::ptrdiff_t>(size_ + filled_));
        filled_ += count;
    }
    bool full() const { return filled_ == size_; }

    void scale(float factor) {
        for (auto& samples : history_) scale_all(samples, factor);
        for (auto& blocks : spectra_)
            for (Bins& bins : blocks) scale_all(bins.re, factor), scale_all(bins.im, factor);
    }

    /// Adds the outputs of the next `size` samples to `pending` (by row, a ring), beginning at `at`.
    void work(std::vector<std::vector<float>>& pending, std::size_t at) {
        newest_ = (newest_ + parts_ - 1) % parts_;
        for (std::size_t c = 0; c < history_.size(); ++c) {
            transform_.forward(history_[c].data(), spectra_[c][newest_]);
            std::copy(history_[c].begin() + static_cast<std::ptrdiff_t>(size_), history_[c].end(), history_[c].begin());
        }
        filled_ = 0;
        for (std::size_t r = 0; r < responses_.size(); ++r) work_row(r, pending[r], at);
    }

  private:
    std::vector<Bins> partition(const std::vector<float>& response, std::size_t first) {
        std::vector<Bins> out(parts_);
        std::vector<float> piece(2 * size_);
        for (std::size_t p = 0; p < parts_; ++p) {
            const std::size_t from = std::min(response.size(), first + p * size_),
                              to = std::min(response.size(), from + size_);
            std::fill(piece.begin(), piece.end(), 0.0f);
            std::copy(response.begin() + static_cast<std::ptrdiff_t>(from),
                      response.begin() + static_cast<std::ptrdiff_t>(to), piece.begin());
            if (std::all_of(piece.begin(), piece.end(), [](float x) { return x == 0.0f; })) continue;
            out[p] = Bins(size_ + 1);
            transform_.forward(piece.data(), out[p]);
        }
        return out;
    }

    void work_row(std::size_t row, std::vector<float>& pending, std::size_t at) {
        Bins sum(size_ + 1);
        bool any = false;
        for (std::size_t c = 0; c < history_.size(); ++c)
            for (std::size_t p = 0; p < parts_; ++p) {
                const Bins& response = responses_[row][c][p];
                if (response.empty()) continue;
                add_product(sum, spectra_[c][(newest_ + p) % parts_], response);
                any = true;
            }
        if (!any) return;
        transform_.backward(sum, result_);
        for (std::size_t i = 0; i < size_; ++i) pending[(at + i) % pending.size()] += result_[i];
    }

    std::size_t size_, parts_, filled_ = 0, newest_ = 0;
    Transform transform_;
    std::vector<float> result_;
    std::vector<std::vector<float>> history_;                // by column: the block before and the one being filled
    std::vector<std::vector<Bins>> spectra_;                 // by column: of the last blocks, a ring
    std::vector<std::vector<std::vector<Bins>>> responses_;  // by row, column, partition
};

ConvolutionMatrix::~ConvolutionMatrix() = default;
ConvolutionMatrix::ConvolutionMatrix(ConvolutionMatrix&&) noexcept = default;
ConvolutionMatrix& ConvolutionMatrix::operator=(ConvolutionMatrix&&) noexcept = default;

ConvolutionMatrix::ConvolutionMatrix(std::size_t block, const Taps& taps)
    : block_(block), rows_(taps.size()), columns_(taps.empty() ? 0 : taps.front().size()) {
    // Outputs of a level begin with the sample after its block is full, so its first tap is as far back as its block is
    // long.
    const std::size_t end = longest(taps);
    std::size_t size = block;
    for (std::size_t first = block; first < end; size *= kGrowth) {
        const std::size_t next = std::min(size * kGrowth, kLargestBlock);
        const std::size_t last = next > size ? std::min(next, end) : end;
        levels_.emplace_back(size, first, last, taps, columns_);
        first = last;
        if (next <= size) break;
        if (size * kGrowth > kLargestBlock) size = kLargestBlock / kGrowth;
    }
    pending_.assign(rows_, std::vector<float>(2 * std::max(block, kLargestBlock), 0.0f));
}

std::span<const float> ConvolutionMatrix::next(std::size_t row) const {
    return std::span<const float>(pending_[row]).subspan(now_ % pending_[row].size(), block_);
}

void ConvolutionMatrix::push(const std::vector<std::vector<float>>& inputs) {
    for (auto& row : pending_) std::fill_n(row.begin() + static_cast<std::ptrdiff_t>(now_ % row.size()), block_, 0.0f);
    now_ += block_;
    for (Level& level : levels_) {
        level.push(inputs);
        if (level.full()) level.work(pending_, now_);
    }
}

void ConvolutionMatrix::scale(float factor) {
    for (Level& level : levels_) level.scale(factor);
    for (auto& row : pending_) scale_all(row, factor);
}

}  // namespace howlmap
