// SPDX-License-Identifier: GPL-3.0-or-later
// Complex drives of the ends of a field over frequency, as the kernels want them.
#pragma once
#include <functional>
#include <optional>
#include <vector>

#include "core/maps/kernel/scene.h"
#include "core/units/complex.h"
#include "core/units/job.h"

namespace howlmap::maps {

/// Frequencies that a map asks about, Hz; both the same for a single one.
struct Range {
    double low_hz = kLowestHz, high_hz = kHighestHz;
    bool single() const { return low_hz == high_hz; }
    bool holds(double hz) const { return low_hz * (1.0 - 1e-7) <= hz && hz <= high_hz * (1.0 + 1e-7); }
    friend bool operator==(const Range&, const Range&) = default;
};

/// Drives of `ends` ends, and what else there is, eight frequencies a time: value i of frequency j at
/// [j * values() + i]. May be asked from several threads at once.
struct DriveFunction {
    std::size_t ends = 0;
    bool offset = false;   ///< after the drives comes the constant part
    bool divisor = false;  ///< after that come drives and constant part of a field that divides this one
    std::function<void(std::size_t octet, Complex* drives)> fine;   ///< octet of the fine grid
    std::function<void(std::size_t octet, Complex* drives)> swept;  ///< bins 8 octet .. 8 octet + 7; the last is 20 kHz
    std::function<void(const Octet& octet, Complex* drives)> near;  ///< octet anywhere
    std::vector<const Floats*> axes;  ///< by end, or none: how far the end itself rises at the fine frequencies
    std::size_t values() const { return ends + (offset ? 1 : 0) + (divisor ? ends + 1 : 0); }
};
/// A drive function that is asked frequency by frequency.
DriveFunction drives_by_frequency(std::size_t ends, const std::function<void(double hz, Complex* drives)>& at);

/// Tables of drives. Drives of ends are halved, because the kernels' phasors have twice the size; frequencies outside
/// the range are 0. Narrow blocks lie where the drives peak between the fine frequencies: loops close to ringing and
/// sharp modes of a body.
struct Drives {
    struct List {
        Floats re, im;
    };
    struct Of {
        Floats swept;
        List sparse, fine, narrow;
    };
    std::vector<Of> ends;
    std::optional<Of> offset;
    std::vector<Of> divisor_ends;  ///< empty where nothing divides
    std::optional<Of> divisor_offset;
    std::array<float, kBinsPerOctave> base_waves{};  ///< f / c of the lowest octave's bins, 1/m
    Floats sparse_waves, fine_waves;                 ///< f / c
    Floats rise;                                     ///< see Field; empty: 1
    Floats narrow_waves, narrow_places;              ///< 16 a block
    std::vector<int> narrow_bins;                    ///< one a block
    std::array<bool, kColumns> columns{};            ///< those that hold frequencies of the range
    bool quick = false;                              ///< swept frequencies alone
};

/// Asks for all drives; incomplete when cancelled. Given: speed of sound in m/s.
Drives tabulate(const DriveFunction& function, const Range& range, double speed, const Job& job);
/// Asks for the swept frequencies alone (or the single one of the range).
Drives tabulate_quickly(const DriveFunction& function, const Range& range, double speed, const Job& job);

}  // namespace howlmap::maps
