// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/spectrum.h"

#include <cmath>
#include <numeric>

#include "core/air/weighting.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
/// A plateau from f1 to f2 Hz with slopes in dB an octave below and above it.
struct Shape {
    double f1, f2, below, above;
};

Shape shape_of(SpectrumName name) {
    switch (name) {
        case SpectrumName::voice:
            return {250.0, 1000.0, 12.0, 6.0};
        case SpectrumName::strings:
            return {250.0, 2000.0, 18.0, 6.0};
        case SpectrumName::plucked:
            return {100.0, 1000.0, 12.0, 6.0};
        case SpectrumName::bass:
            return {50.0, 250.0, 12.0, 9.0};
        case SpectrumName::pink:
            break;
    }
    return {kLowestHz, kHighestHz, 0.0, 0.0};
}

double shape_db(const Shape& shape, double hz) {
    if (hz < shape.f1) return -shape.below * std::log2(shape.f1 / hz);
    if (hz > shape.f2) return -shape.above * std::log2(hz / shape.f2);
    return 0.0;
}

BandEnergies unscaled(const Spectrum& spectrum) {
    BandEnergies energies{};
    if (const auto* name = std::get_if<SpectrumName>(&spectrum)) {
        for (int band = 0; band < kThirdOctaves; ++band)
            energies[static_cast<std::size_t>(band)] =
                db_to_energy(shape_db(shape_of(*name), third_octave_centre(band)));
    } else {
        for (const auto& [band, db] : std::get<std::map<int, double>>(spectrum))
            energies[static_cast<std::size_t>(band)] = db_to_energy(db);
    }
    return energies;
}
}  // namespace

BandEnergies spectrum_energies(const Spectrum& spectrum) {
    const BandEnergies energies = unscaled(spectrum);
    const double total = sum(energies);
    return total > 0.0 ? energies * (1.0 / total) : energies;
}

double sum(const BandEnergies& energies) { return std::accumulate(energies.begin(), energies.end(), 0.0); }

double a_weighted(const BandEnergies& energies) {
    return std::inner_product(energies.begin(), energies.end(), a_weighting_energies().begin(), 0.0);
}

std::optional<double> level_dba(const BandEnergies& energies) { return level_of(a_weighted(energies)); }

std::optional<double> level_of(double energy) {
    if (!(energy > 0.0)) return std::nullopt;
    return energy_to_db(energy);
}

BandEnergies operator*(const BandEnergies& a, const BandEnergies& b) {
    BandEnergies product;
    for (std::size_t i = 0; i < product.size(); ++i) product[i] = a[i] * b[i];
    return product;
}

BandEnergies operator*(const BandEnergies& a, double k) {
    BandEnergies product;
    for (std::size_t i = 0; i < product.size(); ++i) product[i] = a[i] * k;
    return product;
}

BandEnergies& operator+=(BandEnergies& a, const BandEnergies& b) {
    for (std::size_t i = 0; i < a.size(); ++i) a[i] += b[i];
    return a;
}

}  // namespace howlmap
