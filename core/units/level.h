// SPDX-License-Identifier: GPL-3.0-or-later
// Gains (ratios of amplitude) and levels (dB re 20 uPa) are different things; mixing them up is a type error.
#pragma once
#include <cmath>

namespace howlmap {

/// ln(10) / 20
inline constexpr double kNepersPerDb = 0.11512925464970229;
/// 20 log10 of an amplitude ratio. Valid for ratio > 0; 0 gives -inf.
inline double ratio_to_db(double ratio) { return 20.0 * std::log10(ratio); }
/// 10 log10 of an energy ratio. Valid for ratio > 0; 0 gives -inf.
inline double energy_to_db(double ratio) { return 10.0 * std::log10(ratio); }
/// Amplitude ratio of a gain in dB.
inline double db_to_ratio(double db) { return std::pow(10.0, db / 20.0); }
/// Energy ratio of a gain in dB.
inline double db_to_energy(double db) { return std::pow(10.0, db / 10.0); }

/// A dimensionless gain, held in dB.
struct Gain {
    double db = 0.0;
    double ratio() const { return db_to_ratio(db); }
    static Gain from_ratio(double ratio) { return {ratio_to_db(ratio)}; }
    friend auto operator<=>(const Gain&, const Gain&) = default;
    friend Gain operator+(Gain a, Gain b) { return {a.db + b.db}; }
    friend Gain operator-(Gain a, Gain b) { return {a.db - b.db}; }
    friend Gain operator-(Gain a) { return {-a.db}; }
};

/// A sound pressure level, dB re 20 uPa.
struct Level {
    double db = 0.0;
    double energy() const { return db_to_energy(db); }
    static Level from_energy(double energy) { return {energy_to_db(energy)}; }
    friend auto operator<=>(const Level&, const Level&) = default;
    friend Level operator+(Level a, Gain b) { return {a.db + b.db}; }
    friend Level operator-(Level a, Gain b) { return {a.db - b.db}; }
    friend Gain operator-(Level a, Level b) { return {a.db - b.db}; }
};

}  // namespace howlmap
