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

/// Values of a drive function at the bins alone, by bin, then value; 0 outside the range.
std::vector<Complex> swept_values(const DriveFunction& function, const Range& range, const Job& job) {
    const std::size_t stride = function.values();
    std::vector<Complex> values(kBins * stride);
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, kBins / kOctet, 8), [&](const auto& part) {
        for (std::size_t o = part.begin(); o < part.end() && !job.cancelled(); ++o)
            function.swept(o, values.data() + o * kOctet * stride);
    });
    for (int bin = 0; bin < kBins; ++bin)
        if (!range.holds(bin_hz(bin))) std::fill_n(values.data() + static_cast<std::size_t>(bin) * stride, stride, 0.0);
    return values;
}

void set_waves(Drives& drives, double speed) {
    const FineGrid& grid = fine_grid();
    for (int i = 0; i < kBinsPerOctave; ++i)
        drives.base_waves[static_cast<std::size_t>(i)] = static_cast<float>(bin_hz(i) / speed);
    if (drives.quick) return;
    for (const double hz : grid.hz) drives.fine_waves.push_back(static_cast<float>(hz / speed));
    for (const int k : grid.sparse) drives.sparse_waves.push_back(drives.fine_waves[static_cast<std::size_t>(k)]);
}

/// One of the values that a drive function gives, over a list of frequencies.
struct Column {
    const std::vector<Complex>& values;
    std::size_t at, stride;
    double scale;
    Complex operator()(std::size_t k) const { return scale * values[k * stride + at]; }
    std::size_t size() const { return values.size() / stride; }
};

template <class IndexOfBin>
void set_swept(Drives::Of& of, const Column& column, IndexOfBin index_of) {
    of.swept.assign(static_cast<std::size_t>(kBins) * 2, 0.0f);
    for (int bin = 0; bin <= kLastBin; ++bin) {
        const std::size_t at = lane_index(place_of(bin)), to = at + at / kBlock * kBlock;
        const Complex value = column(index_of(static_cast<std::size_t>(bin)));
        of.swept[to] = static_cast<float>(value.real());
        of.swept[to + kBlock] = static_cast<float>(value.imag());
    }
}

void add(Drives::List& list, Complex value) {
    list.re.push_back(static_cast<float>(value.real()));
    list.im.push_back(static_cast<float>(value.imag()));
}
void set_all(Drives::List& list, const Column& column) {
    for (std::size_t k = 0; k < column.size(); ++k) add(list, column(k));
}
void set_sparse(Drives::List& list, const Column& column) {
    for (const int k : fine_grid().sparse) add(list, column(static_cast<std::size_t>(k)));
}

/// Square of the size of the drives at a fine frequency, with what the ends themselves make of them.
double risen(const Complex* drives, const DriveFunction& function, int k) {
    if (function.axes.empty()) return size_of(drives, function);
    double square = function.offset ? std::norm(drives[function.ends]) : 0.0;
    for (std::size_t i = 0; i < function.ends; ++i) {
        const Floats* axis = function.axes[i];
        const double rise = axis ? static_cast<double>((*axis)[static_cast<std::size_t>(k)]) : 1.0;
        square += std::norm(drives[i]) * rise * rise;
    }
    return square;
}

/// How far the drives rise above a bin up to the bins beside it: sums of squares over that of the bin.
void set_rise(Drives& drives, const DriveFunction& function, const std::vector<Complex>& fine) {
    const FineGrid& grid = fine_grid();
    std::vector<double> squares;
    squares.reserve(static_cast<std::size_t>(grid.count()));
    for (int k = 0; k < grid.count(); ++k)
        squares.push_back(risen(fine.data() + static_cast<std::size_t>(k) * function.values(), function, k));
    drives.rise.assign(kBins, 1.0f);
    for (int bin = 0; bin <= kLastBin; ++bin) {
        const auto at = squares.begin() + grid.of_bin[static_cast<std::size_t>(bin)];
        const auto from = squares.begin() + grid.of_bin[static_cast<std::size_t>(std::max(bin - 1, 0))];
        const auto to = squares.begin() + grid.of_bin[static_cast<std::size_t>(bin + 1)];
        if (*at > 0.0)
            drives.rise[lane_index(place_of(bin))] =
                static_cast<float>(std::min(*std::max_element(from, to) / *at, 1e6));
    }
}

void add_narrow_places(Drives& drives, const Octet& low, const Octet& high, double speed) {
    drives.narrow_bins.push_back(
        std::clamp(static_cast<int>(std::lround(kBinsPerOctave * std::log2(high.low_hz / kLowestHz))), 0, kLastBin));
    for (std::size_t lane = 0; lane < kBlock; ++lane) {
        const double hz = lane < kOctet ? low.hz(lane) : high.hz(lane - kOctet);
        drives.narrow_waves.push_back(static_cast<float>(hz / speed));
        drives.narrow_places.push_back(static_cast<float>(kBinsPerOctave * std::log2(hz / kLowestHz)));
    }
}

/// Octets of all narrow blocks, two each: of the one frequency that is asked for, or around the sharp peaks.
std::vector<Octet> narrow_octets(const DriveFunction& function, const Range& range, const std::vector<Complex>& fine,
                                 const Job& job) {
    if (range.single()) return std::vector<Octet>(2, octet_at(range.low_hz, 0.0));
    return around_sharp_peaks(function, range, fine, job);
}

/// Calls set(table, column) for everything that a drive function gives, in its order.
template <class Set>
void for_all(Drives& drives, const std::vector<Complex>& values, std::size_t stride, Set set) {
    std::size_t at = 0;
    for (Drives::Of& of : drives.ends) set(of, Column{values, at++, stride, 0.5});
    if (drives.offset) set(*drives.offset, Column{values, at++, stride, 1.0});
    for (Drives::Of& of : drives.divisor_ends) set(of, Column{values, at++, stride, 0.5});
    if (drives.divisor_offset) set(*drives.divisor_offset, Column{values, at++, stride, 1.0});
}

Drives empty_drives(const DriveFunction& function, const Range& range, double speed, bool quick) {
    Drives drives;
    drives.quick = quick;
    drives.ends.resize(function.ends);
    if (function.offset) drives.offset.emplace();
    if (function.divisor) {
        drives.divisor_ends.resize(function.ends);
        drives.divisor_offset.emplace();
    }
    set_waves(drives, speed);
    for (int bin = 0; bin <= kLastBin && !range.single(); ++bin)
        if (range.holds(bin_hz(bin))) drives.columns[static_cast<std::size_t>(place_of(bin).column)] = true;
    return drives;
}

void set_fine(Drives& drives, const DriveFunction& function, const std::vector<Complex>& fine) {
    for_all(drives, fine, function.values(), [](Drives::Of& of, const Column& column) {
        set_swept(of, column, [](std::size_t bin) { return static_cast<std::size_t>(fine_grid().of_bin[bin]); });
        set_sparse(of.sparse, column);
        set_all(of.fine, column);
    });
    set_rise(drives, function, fine);
}

void set_narrow(Drives& drives, const DriveFunction& function, const std::vector<Octet>& octets, double speed,
                const Job& job) {
    for (std::size_t o = 0; o < octets.size(); o += 2) add_narrow_places(drives, octets[o], octets[o + 1], speed);
    const auto narrow = block_values(function, octets, job);
    for_all(drives, narrow, function.values(),
            [](Drives::Of& of, const Column& column) { set_all(of.narrow, column); });
}
}  // namespace

DriveFunction drives_by_frequency(std::size_t ends, const std::function<void(double hz, Complex* drives)>& at) {
    DriveFunction function;
    function.ends = ends;
    function.near = [ends, at](const Octet& octet, Complex* drives) {
        for (std::size_t i = 0; i < kOctet; ++i) at(octet.hz(i), drives + i * ends);
    };
    function.fine = [near = function.near](std::size_t octet, Complex* drives) {
        near(fine_grid().octets[octet], drives);
    };
    function.swept = [ends, at](std::size_t octet, Complex* drives) {
        for (std::size_t i = 0; i < kOctet; ++i)
            at(std::min(bin_hz(static_cast<int>(octet * kOctet + i)), kHighestHz), drives + i * ends);
    };
    return function;
}

Drives tabulate(const DriveFunction& function, const Range& range, double speed, const Job& job) {
    Drives drives = empty_drives(function, range, speed, false);
    std::vector<Complex> fine;
    if (!range.single()) {
        fine = fine_values(function, range, job);
        set_fine(drives, function, fine);
    }
    set_narrow(drives, function, narrow_octets(function, range, fine, job), speed, job);
    return drives;
}

Drives tabulate_quickly(const DriveFunction& function, const Range& range, double speed, const Job& job) {
    Drives drives = empty_drives(function, range, speed, true);
    if (range.single()) {
        set_narrow(drives, function, narrow_octets(function, range, {}, job), speed, job);
        return drives;
    }
    const auto swept = swept_values(function, range, job);
    for_all(drives, swept, function.values(),
            [](Drives::Of& of, const Column& column) { set_swept(of, column, [](std::size_t bin) { return bin; }); });
    return drives;
}

}  // namespace howlmap::maps
