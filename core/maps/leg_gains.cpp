// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/leg_gains.h"

#include <algorithm>
#include <cmath>

#include "core/units/level.h"

namespace howlmap::maps {

BinTables bin_tables(const Surroundings& surroundings) {
    BinTables tables;
    for (int bin = 0; bin < kBins; ++bin) {
        const auto reflections = surroundings.reflections(bin_hz(bin));
        for (std::size_t via = 0; via < kVias; ++via)
            tables.reflection[via].push_back(static_cast<float>(reflections[via]));
        tables.air.push_back(static_cast<float>(surroundings.air.db_per_m(bin_hz(bin)) * kNepersPerDb));
    }
    return tables;
}

PairGains::PairGains(const BinTables& tables, const LoopModel::In& in, const LoopModel::Speaker& speaker)
    : tables_(tables), pattern_(in.receiver.pattern), directivity_(*speaker.emitter.directivity) {
    const auto* coverage = std::get_if<Coverage>(&directivity_);
    if (!coverage) return;
    for (int bin = 0; bin < kBins; ++bin) {
        const double hz = bin_hz(bin);
        across_.push_back(
            static_cast<float>(inverse_square_half_angle(coverage->horizontal_deg, coverage->width_m, hz)));
        above_.push_back(static_cast<float>(inverse_square_half_angle(coverage->vertical_deg, coverage->height_m, hz)));
    }
}

LegGains PairGains::plain(const Leg& leg) const {
    LegGains gains{};
    gains.scale = tables_.reflection[static_cast<std::size_t>(leg.via)].data();
    gains.air = tables_.air.data();
    gains.metres = static_cast<float>(leg.held_m);
    const double pattern = pattern_.is_table() ? 1.0 : pattern_.gain(leg.in_angle, 1000.0);
    gains.factor = static_cast<float>(pattern / leg.held_m);
    if (const auto* coverage = std::get_if<Coverage>(&directivity_)) {
        const double c = leg.out.off_axis * std::cos(leg.out.turn), s = leg.out.off_axis * std::sin(leg.out.turn);
        gains.across = across_.data();
        gains.above = above_.data();
        gains.across_weight = static_cast<float>(c * c);
        gains.above_weight = static_cast<float>(s * s);
        gains.depth = static_cast<float>(coverage->floor_db * kNepersPerDb);
        gains.decay = static_cast<float>(std::log1p(-6.0 / coverage->floor_db));
    }
    return gains;
}

Doubles PairGains::at_bins(const Leg& leg) const {
    std::vector<float> at_once(kBins);
    leg_gains(plain(leg), kBins, at_once.data());
    Doubles gains(at_once.begin(), at_once.end());
    const auto* table = std::get_if<DirectivityTable>(&directivity_);
    for (int bin = 0; bin < kBins && (table || pattern_.is_table()); ++bin) {
        double& gain = gains[static_cast<std::size_t>(bin)];
        if (pattern_.is_table()) gain *= pattern_.gain(leg.in_angle, bin_hz(bin));
        if (table)
            gain *= db_to_ratio(table_db(*table, between_log(table->hz, bin_hz(bin)), degrees(leg.out.off_axis)));
    }
    return gains;
}

namespace {
/// Field of a cap in the direction of a leg at a bin, before division by its value on axis.
double raw_at(const DirectivityRows& rows, double angle_row, int bin) {
    const BinPlace place = place_of(std::clamp(bin, 0, kBins - 1));
    const auto in_row =
        static_cast<std::size_t>(place.column * rows.low.column_floats + place.octave * kBlock + place.lane);
    const auto first = std::min(static_cast<std::size_t>(angle_row), static_cast<std::size_t>(rows.low.last));
    const double t = angle_row - static_cast<double>(first);
    const double shares[4] = {-t * (t - 1.0) * (t - 2.0) / 6.0, (t + 1.0) * (t - 1.0) * (t - 2.0) / 2.0,
                              -(t + 1.0) * t * (t - 2.0) / 2.0, (t + 1.0) * t * (t - 1.0) / 6.0};
    double value = 0.0;
    for (std::size_t k = 0; k < 4; ++k)
        value += shares[k] * static_cast<double>(
                                 rows.low.data[(first + k) * static_cast<std::size_t>(rows.low.row_floats) + in_row]);
    return value * static_cast<double>(rows.axis[in_row]);
}

/// Polynomial of fourth degree through five neighbouring bins, so many bins from the middle one.
double through_five(const double* y, double x) {
    const double outer = y[0] + y[4], inner = y[1] + y[3], outer_turn = y[4] - y[0], inner_turn = y[3] - y[1];
    const double c4 = (outer - 4.0 * inner + 6.0 * y[2]) / 24.0, c3 = (outer_turn - 2.0 * inner_turn) / 12.0;
    const double c2 = (16.0 * inner - outer - 30.0 * y[2]) / 24.0, c1 = (8.0 * inner_turn - outer_turn) / 12.0;
    return y[2] + x * (c1 + x * (c2 + x * (c3 + x * c4)));
}
}  // namespace

Doubles cap_gains(const Doubles& without, const DirectivityRows& rows, const TableStore::Axis& axis, const Leg& leg) {
    const FineGrid& grid = fine_grid();
    std::vector<double> raw(kBins + 4);  // two more at each end
    const double angle_row = leg.out.off_axis * static_cast<double>(rows.rows_per_radian);
    for (int i = 0; i < kBins + 4; ++i) raw[static_cast<std::size_t>(i)] = raw_at(rows, angle_row, i - 2);
    Doubles gains(grid.hz.size());
    for (std::size_t k = 0; k < gains.size(); ++k) {
        const Octet& octet = grid.octets[k / kOctet];
        const auto bin = static_cast<std::size_t>(octet.bin);
        const double share = octet.at + octet.rise * static_cast<double>(k % kOctet);
        const double field = through_five(raw.data() + bin, static_cast<double>(grid.bins[k]) - octet.bin);
        gains[k] = (without[bin] + share * (without[bin + 1] - without[bin])) *
                   std::min(1.0, field * static_cast<double>(axis.fine[k]));
    }
    return gains;
}

}  // namespace howlmap::maps
