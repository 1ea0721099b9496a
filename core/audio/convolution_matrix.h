// SPDX-License-Identifier: GPL-3.0-or-later
// Many signals through a matrix of long impulse responses, a few samples at a time: fast enough to close a loop around
// it.
#pragma once
#include <memory>
#include <span>
#include <vector>

namespace howlmap {

/// Rows (outputs) by columns (inputs) of finite impulse responses. No response may act before `block` samples have
/// passed, so that a block of outputs can be had before the block of inputs that is fed back from it.
///
/// Method: convolution in the frequency domain with partitions that grow eightfold (W. G. Gardner, "Efficient
/// convolution without input-output delay", J. Audio Eng. Soc. 43(3), 1995). Exact but for single-precision rounding,
/// about 1e-6 of the largest tap.
class ConvolutionMatrix {
  public:
    /// block: a power of two, 8 to 1024. taps[row][column]: samples 0, 1, ..; those before `block` must be 0; an empty
    /// response is no path.
    ConvolutionMatrix(std::size_t block, const std::vector<std::vector<std::vector<float>>>& taps);
    ~ConvolutionMatrix();
    ConvolutionMatrix(ConvolutionMatrix&&) noexcept;
    ConvolutionMatrix& operator=(ConvolutionMatrix&&) noexcept;

    std::size_t block() const { return block_; }
    std::size_t rows() const { return rows_; }
    std::size_t columns() const { return columns_; }

    /// The outputs of one row for the block that comes next: `block` samples, known before its inputs are.
    std::span<const float> next(std::size_t row) const;
    /// Inputs of that block, one span of `block` samples a column.
    void push(const std::vector<std::vector<float>>& inputs);
    /// All that has been pushed, as if it had been `factor` times as strong.
    void scale(float factor);

  private:
    class Level;
    std::size_t block_, rows_, columns_;
    std::vector<Level> levels_;
    std::vector<std::vector<float>> pending_;  // by row: output samples from now on, a ring of twice the largest block
    std::size_t now_ = 0;
};

}  // namespace howlmap
