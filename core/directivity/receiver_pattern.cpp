// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/directivity/receiver_pattern.h"

#include <boost/math/quadrature/gauss.hpp>
#include <cmath>

#include "core/units/level.h"

namespace howlmap {

double first_order_gain(double a, double off_axis) { return a + (1.0 - a) * std::cos(off_axis); }

ReceiverPattern::ReceiverPattern(const Input& input) {
    const Microphone* microphone = microphone_of(input);
    if (!microphone || microphone->cupped) return;  // a hand around the grille closes the rear entry
    if (const auto* name = std::get_if<PatternName>(&microphone->pattern)) a_ = first_order_a(*name);
    if (const auto* number = std::get_if<double>(&microphone->pattern)) a_ = *number;
    table_ = std::get_if<DirectivityTable>(&microphone->pattern);
}

double ReceiverPattern::gain(double off_axis, double hz) const {
    if (table_) return db_to_ratio(table_db(*table_, between_log(table_->hz, hz), degrees(off_axis)));
    return first_order_gain(a_, off_axis);
}

double ReceiverPattern::random_energy_efficiency(double hz) const {
    if (!table_) return a_ * a_ + (1.0 - a_) * (1.0 - a_) / 3.0;
    const auto square = [&](double angle) { return std::pow(gain(angle, hz), 2.0) * std::sin(angle); };
    double sum = 0.0, low = 0.0;
    const auto panel = [&](double high) {
        if (high > low) sum += boost::math::quadrature::gauss<double, 10>::integrate(square, low, high);
        low = high;
    };
    for (const double angle : table_->angles_deg) panel(radians(angle));
    panel(kPi);
    return sum / 2.0;
}

}  // namespace howlmap
