// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/show/directivity.h"

namespace howlmap {

/// Two neighbouring places of a rising list and how far between them a value lies: value = a[low] (1 - t) + a[high] t.
struct Between {
    std::size_t low = 0, high = 0;
    double t = 0.0;
};
/// Where x lies in a strictly rising list, held at its ends. The list must not be empty.
Between between(const std::vector<double>& rising, double x);
/// The same, with t over log f. All values above 0.
Between between_log(const std::vector<double>& rising_hz, double hz);

/// dB of a measured table at one frequency and one angle: linear in angle, linear in dB over log f, held at the ends.
double table_db(const DirectivityTable& table, const Between& frequency, double off_axis_deg);

}  // namespace howlmap
