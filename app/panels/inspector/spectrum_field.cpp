// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/spectrum_field.h"

#include <algorithm>
#include <cmath>

#include "app/panels/inspector/field_builder.h"
#include "core/listening/spectrum.h"
#include "core/units/level.h"

namespace howlmap::app {
namespace {

constexpr int kByBands = static_cast<int>(SpectrumName::bass) + 1;

/// In dB below the strongest band, to 0.1 dB; bands below what a file holds are left out.
std::map<int, double> bands_of_shape(const Spectrum& spectrum) {
    const BandEnergies energies = spectrum_energies(spectrum);
    const double strongest = *std::max_element(energies.begin(), energies.end());
    std::map<int, double> bands;
    for (int band = 0; band < kThirdOctaves; ++band) {
        const double db = energy_to_db(energies[static_cast<std::size_t>(band)] / strongest);
        if (limits::kLevel.holds(db)) bands[band] = std::round(db * 10.0) / 10.0 + 0.0;
    }
    return bands;
}

}  // namespace

QList<Choice> spectrum_choices() {
    return {{inspector_text("pink"), 0},    {inspector_text("voice"), 1},
            {inspector_text("strings"), 2}, {inspector_text("plucked"), 3},
            {inspector_text("bass"), 4},    {inspector_text("third-octave bands"), kByBands}};
}

int spectrum_choice(const Spectrum& spectrum) {
    const auto* name = std::get_if<SpectrumName>(&spectrum);
    return name ? static_cast<int>(*name) : kByBands;
}

void choose_spectrum(Spectrum& spectrum, int choice) {
    if (choice == spectrum_choice(spectrum)) return;
    if (choice == kByBands)
        spectrum = bands_of_shape(spectrum);
    else
        spectrum = static_cast<SpectrumName>(choice);
}

}  // namespace howlmap::app
