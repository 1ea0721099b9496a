// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/drives.h"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>

#include "core/maps/sharp_peaks.h"

namespace howlmap::maps {
namespace {
/// Values of a drive function at all fine frequencies, by frequency, then value; 0 outside the range.
std::vector<Complex> fine_values(const DriveFunction& function, const Range& range, const Job& job) {
    const FineGrid& grid = fine_grid();
    const std::size_t stride = function.values();
    std::vector<Complex> values(grid.hz.size() * stride);
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, grid.octets.size(), 8), [&](const auto& part) {
        for (std::size_t o = part.begin(); o < part.end() && !job.cancelled(); ++o) {
            Complex* octet = values.data() + o * kOctet * stride;
            if (!range.holds(grid.octets[o].hz(0)) && !range.holds(grid.octets[o].hz(kOctet - 1))) continue;
            function.fine(o, octet);
            for (std::size_t i = 0; i < kOctet; ++i)
                if (!range.holds(grid.octets[o].hz(i))) std::fill_n(octet + i * stride, stride, Complex(0.0));
        }
    });
    return values;
}

/// The same at blocks of 16 frequencies, two octets each.
std::vector<Complex> block_values(const DriveFunction& function, const std::vector<Octet>& octets, const Job& job) {
    const std::size_t stride = function.values();
    std::vector<Complex> values(octets.size() * kOctet * stride);
    tbb::parallel_for(std::size_t{0}, octets.size(), [&](std::size_t o) {
        if (!job.cancelled()) function.near(octets[o], values.data() + o * kOctet * stride);
    });
    return values;
}

void set_waves(Drives& drives, double speed) {
    for (int i = 0; i < kBinsPerOctave; ++i)
        drives.base_waves[static_cast<std::size_t>(i)] = static_cast<float>(bin_hz(i) / speed);
    for (const double hz : fine_grid().hz) drives.fine_waves.push_back(static_cast<float>(hz / speed));
}

void set_swept(Drives::Of& of, const std::vector<Complex>& values, std::size_t at, std::size_t stride, double scale) {
    of.swept.assign(static_cast<std::size_t>(kBins) * 2, 0.0f);
    for (int bin = 0; bin <= kLastBin; ++bin) {
        const BinPlace place = place_of(bin);
        const auto to =
            static_cast<std::size_t>((place.column * kOctavesSwept + place.octave) * 2 * kBlock + place.lane);
        const auto fine = static_cast<std::size_t>(fine_grid().of_bin[static_cast<std::size_t>(bin)]);
        const Complex value = scale * values[fine * stride + at];
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

NarrowBlock narrow_block(const Octet& low, const Octet& high, double speed) {
    NarrowBlock block;
    block.bin =
        std::clamp(static_cast<int>(std::lround(kBinsPerOctave * std::log2(high.low_hz / kLowestHz))), 0, kLastBin);
    for (std::size_t lane = 0; lane < kBlock; ++lane) {
        const double hz = lane < kOctet ? low.hz(lane) : high.hz(lane - kOctet);
        block.waves[lane] = static_cast<float>(hz / speed);
        block.bins[lane] = static_cast<float>(kBinsPerOctave * std::log2(hz / kLowestHz));
    }
    return block;
}

/// Octets of all narrow blocks, two each: of the one frequency that is asked for, or around the sharp peaks.
std::vector<Octet> narrow_octets(const DriveFunction& function, const Range& range, const std::vector<Complex>& fine,
                                 const Job& job) {
    if (range.single()) return std::vector<Octet>(2, octet_at(range.low_hz, 0.0));
    return around_sharp_peaks(function, range, fine, job);
}

/// Fills one kind of table for everything that a drive function gives, in its order.
template <class Set>
void for_all(Drives& drives, Set set) {
    std::size_t at = 0;
    for (Drives::Of& of : drives.ends) set(of, at++, 0.5);
    if (drives.offset) set(*drives.offset, at++, 1.0);
    for (Drives::Of& of : drives.divisor_ends) set(of, at++, 0.5);
    if (drives.divisor_offset) set(*drives.divisor_offset, at++, 1.0);
}
}  // namespace

DriveFunction drives_by_frequency(std::size_t ends, std::function<void(double hz, Complex* drives)> at) {
    DriveFunction function;
    function.ends = ends;
    function.near = [ends, at](const Octet& octet, Complex* drives) {
        for (std::size_t i = 0; i < kOctet; ++i) at(octet.hz(i), drives + i * ends);
    };
    function.fine = [near = function.near](std::size_t octet, Complex* drives) {
        near(fine_grid().octets[octet], drives);
    };
    return function;
}

Drives tabulate(const DriveFunction& function, const Range& range, double speed, const Job& job) {
    Drives drives;
    drives.ends.resize(function.ends);
    if (function.offset) drives.offset.emplace();
    if (function.divisor) {
        drives.divisor_ends.resize(function.ends);
        drives.divisor_offset.emplace();
    }
    const std::size_t stride = function.values();
    set_waves(drives, speed);
    std::vector<Complex> fine;
    if (!range.single()) {
        for (int bin = 0; bin <= kLastBin; ++bin)
            if (range.holds(bin_hz(bin))) drives.columns[static_cast<std::size_t>(place_of(bin).column)] = true;
        fine = fine_values(function, range, job);
        for_all(drives, [&](Drives::Of& of, std::size_t at, double scale) { set_swept(of, fine, at, stride, scale); });
        for_all(drives, [&](Drives::Of& of, std::size_t at, double scale) { set_fine(of, fine, at, stride, scale); });
    }
    const std::vector<Octet> octets = narrow_octets(function, range, fine, job);
    for (std::size_t o = 0; o < octets.size(); o += 2)
        drives.narrow.push_back(narrow_block(octets[o], octets[o + 1], speed));
    const auto narrow = block_values(function, octets, job);
    for_all(drives, [&](Drives::Of& of, std::size_t at, double scale) { set_narrow(of, narrow, at, stride, scale); });
    return drives;
}

}  // namespace howlmap::maps
