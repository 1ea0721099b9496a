// SPDX-License-Identifier: GPL-3.0-or-later
// The field as anybody would write it: for every cell and frequency the sum over loudspeakers and their images of
// amplitude times a complex exponential, amplitudes interpolated from the same kind of tables, then the largest.
#pragma once
#include <cmath>
#include <complex>
#include <cstddef>
#include <numbers>
#include <vector>

namespace howlmap::bench {

/// Paths of one cell and tables, in plain arrays.
template <class Real>
struct PlainField {
    struct Path {
        Real metres, gain, angle_row, air_row;  ///< rows as real numbers: whole part and share of the next
        std::size_t directivity, air;           ///< which table
    };
    std::size_t loudspeakers = 0, images = 0, frequencies = 0;
    std::vector<Real> hz;
    std::vector<std::complex<Real>> drives;           ///< by loudspeaker, frequency
    std::vector<std::vector<Real>> directivity, air;  ///< by row, frequency
    Real speed = 343;
    std::vector<Path> paths;  ///< by cell, loudspeaker, image
};

struct PlainPeak {
    double db, hz;
};

/// Peaks of the first `cells` cells.
std::vector<PlainPeak> plain_peaks(const PlainField<double>& field, std::size_t cells);
std::vector<PlainPeak> plain_peaks(const PlainField<float>& field, std::size_t cells);

template <class Real>
inline Real between_rows(const std::vector<Real>& table, Real row, std::size_t frequency, std::size_t frequencies) {
    const auto low = static_cast<std::size_t>(row);
    const Real share = row - static_cast<Real>(low);
    const Real* at = table.data() + low * frequencies + frequency;
    return at[0] + share * (at[frequencies] - at[0]);
}

template <class Real>
std::vector<PlainPeak> plain_peaks_of(const PlainField<Real>& field, std::size_t cells) {
    std::vector<PlainPeak> peaks(cells);
    for (std::size_t cell = 0; cell < cells; ++cell) {
        Real most = 0, where = 0;
        for (std::size_t f = 0; f < field.frequencies; ++f) {
            const Real k = 2 * std::numbers::pi_v<Real> * field.hz[f] / field.speed;
            std::complex<Real> sum = 0;
            for (std::size_t l = 0; l < field.loudspeakers; ++l) {
                std::complex<Real> response = 0;
                for (std::size_t i = 0; i < field.images; ++i) {
                    const auto& path = field.paths[(cell * field.loudspeakers + l) * field.images + i];
                    const Real amplitude =
                        path.gain *
                        between_rows(field.directivity[path.directivity], path.angle_row, f, field.frequencies) *
                        between_rows(field.air[path.air], path.air_row, f, field.frequencies);
                    response += amplitude * std::exp(std::complex<Real>(0, -k * path.metres));
                }
                sum += response * field.drives[l * field.frequencies + f];
            }
            const Real square = std::norm(sum);
            if (square > most) {
                most = square;
                where = field.hz[f];
            }
        }
        peaks[cell] = {-10.0 * std::log10(static_cast<double>(most)), static_cast<double>(where)};
    }
    return peaks;
}

}  // namespace howlmap::bench
