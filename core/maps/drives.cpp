// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/drives.h"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>

#include "core/maps/sharp_peaks.h"

namespace howlmap::maps {
namespace {
/// Values of a drive function at a list of frequencies, by frequency, then end.
std::vector<Complex> values_at(const DriveFunction& function, const std::vector<double>& hz, const Range& range,
                               const Job& job) {
    std::vector<Complex> values(hz.size() * function.values());
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, hz.size(), 16), [&](const auto& part) {
        for (std::size_t i = part.begin(); i < part.end() && !job.cancelled(); ++i)
            if (range.holds(hz[i])) function.at(hz[i], values.data() + i * function.values());
    });
    return values;
}

void set_waves(Drives& drives, double speed) {
    for (int i = 0; i < kBinsPerOctave; ++i)
        drives.base_waves[static_cast<std::size_t>(i)] = static_cast<float>(bin_hz(i) / speed);
    for (const double hz : fine_grid().hz) drives.fine_waves.push_back(static_cast<float>(hz / speed));
}

/// What the kernels take a bin's frequency to be, exactly.
double swept_hz(const Drives& drives, int bin, double speed) {
    return std::ldexp(static_cast<double>(drives.base_waves[static_cast<std::size_t>(bin % kBinsPerOctave)]),
                      bin / kBinsPerOctave) *
           speed;
}

void set_swept(Drives::Of& of, const std::vector<Complex>& values, std::size_t at, std::size_t stride, double scale) {
    of.swept.assign(static_cast<std::size_t>(kBins) * 2, 0.0f);
    for (int bin = 0; bin <= kLastBin; ++bin) {
        const BinPlace place = place_of(bin);
        const auto to =
            static_cast<std::size_t>((place.column * kOctavesSwept + place.octave) * 2 * kBlock + place.lane);
        const Complex value = scale * values[static_cast<std::size_t>(bin) * stride + at];
        of.swept[to] = static_cast<float>(value.real());
        of.swept[to + kBlock] = static_cast<float>(value.imag());
    }
}

void set_fine(Drives::Of& of, const std::vector<Complex>& values, std::size_t at, std::size_t stride, double scale) {
    const std::size_t count = values.size() / stride;
    of.fine_re.resize(count);
    of.fine_im.resize(count);
    for (std::size_t k = 0; k < count; ++k) {
        const Complex value = scale * values[k * stride + at];
        of.fine_re[k] = static_cast<float>(value.real());
        of.fine_im[k] = static_cast<float>(value.imag());
    }
}

void set_narrow(Drives::Of& of, const std::vector<Complex>& values, std::size_t at, std::size_t stride, double scale) {
    const std::size_t blocks = values.size() / stride / kBlock;
    of.narrow.resize(blocks * 2 * kBlock);
    for (std::size_t block = 0; block < blocks; ++block)
        for (std::size_t lane = 0; lane < kBlock; ++lane) {
            const Complex value = scale * values[(block * kBlock + lane) * stride + at];
            of.narrow[block * 2 * kBlock + lane] = static_cast<float>(value.real());
            of.narrow[block * 2 * kBlock + kBlock + lane] = static_cast<float>(value.imag());
        }
}

NarrowBlock narrow_block(const std::vector<double>& hz, std::size_t first, double speed) {
    NarrowBlock block;
    const double middle = hz[first + kBlock / 2];
    block.bin = std::clamp(static_cast<int>(std::lround(kBinsPerOctave * std::log2(middle / kLowestHz))), 0, kLastBin);
    for (std::size_t lane = 0; lane < kBlock; ++lane) {
        block.waves[lane] = static_cast<float>(hz[first + lane] / speed);
        block.bins[lane] = static_cast<float>(kBinsPerOctave * std::log2(hz[first + lane] / kLowestHz));
    }
    return block;
}

/// Frequencies of all narrow blocks, 16 each: of the one that is asked for, or around the sharp peaks.
std::vector<double> narrow_frequencies(const DriveFunction& function, const Range& range,
                                       const std::vector<Complex>& fine, const Job& job) {
    if (range.single()) return std::vector<double>(kBlock, range.low_hz);
    return around_sharp_peaks(function, range, fine, job);
}

/// Fills one kind of table for all ends and for the constant part.
template <class Set>
void for_all(Drives& drives, std::size_t stride, Set set) {
    for (std::size_t i = 0; i < drives.ends.size(); ++i) set(drives.ends[i], i, 0.5);
    if (drives.offset) set(*drives.offset, stride - 1, 1.0);
}
}  // namespace

Drives tabulate(const DriveFunction& function, const Range& range, double speed, const Job& job) {
    Drives drives;
    drives.ends.resize(function.ends);
    if (function.offset) drives.offset.emplace();
    const std::size_t stride = function.values();
    set_waves(drives, speed);
    std::vector<Complex> fine;
    if (!range.single()) {
        std::vector<double> hz(kLastBin + 1);
        for (int bin = 0; bin <= kLastBin; ++bin) {
            hz[static_cast<std::size_t>(bin)] = swept_hz(drives, bin, speed);
            if (range.holds(hz[static_cast<std::size_t>(bin)]))
                drives.columns[static_cast<std::size_t>(place_of(bin).column)] = true;
        }
        const auto swept = values_at(function, hz, range, job);
        for_all(drives, stride,
                [&](Drives::Of& of, std::size_t at, double scale) { set_swept(of, swept, at, stride, scale); });
        hz.resize(drives.fine_waves.size());
        for (std::size_t k = 0; k < hz.size(); ++k) hz[k] = static_cast<double>(drives.fine_waves[k]) * speed;
        fine = values_at(function, hz, range, job);
        for_all(drives, stride,
                [&](Drives::Of& of, std::size_t at, double scale) { set_fine(of, fine, at, stride, scale); });
    }
    std::vector<double> hz = narrow_frequencies(function, range, fine, job);
    for (std::size_t first = 0; first < hz.size(); first += kBlock)
        drives.narrow.push_back(narrow_block(hz, first, speed));
    for (std::size_t i = 0; i < hz.size(); ++i)
        hz[i] = static_cast<double>(drives.narrow[i / kBlock].waves[i % kBlock]) * speed;
    const auto narrow = values_at(function, hz, range, job);
    for_all(drives, stride,
            [&](Drives::Of& of, std::size_t at, double scale) { set_narrow(of, narrow, at, stride, scale); });
    return drives;
}

}  // namespace howlmap::maps
