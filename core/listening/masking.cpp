// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/masking.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/air/weighting.h"
#include "core/listening/ears.h"
#include "core/units/hertz.h"
#include "core/units/level.h"
#include "core/units/localised.h"
#include "core/units/translatable.h"

namespace howlmap {
namespace {
constexpr const char* masked(const char* english) { return translatable("listening", english); }
constexpr double kMattersDb = 12.0;

/// What players call the lower, middle and upper part of their sound, and where the parts meet (common practice, no
/// source).
struct Register {
    double low_below_hz, high_above_hz;
    const char *low, *middle, *high;  // whole sentences, for the languages that bend words
};
constexpr const char* kWhole = masked("Your whole sound is under {} ({} dB at {}).");

/// Which of her inputs she would hear most of in a band: who sings and plays is told of the right one.
const Input* loudest_own(const Show& show, const std::vector<EarSource>& sources, const std::string& performer,
                         std::size_t band) {
    const Input* loudest = nullptr;
    double most = 0.0;
    for (const EarSource& source : sources) {
        if (!source.own || source.input < 0) continue;
        const double energy = source.energies()[band];
        if (!(energy > most)) continue;
        most = energy;
        loudest = &show.inputs[static_cast<std::size_t>(source.input)];
    }
    if (loudest) return loudest;
    const auto first = std::find_if(show.inputs.begin(), show.inputs.end(),
                                    [&](const Input& one) { return one.performer == performer; });
    return first == show.inputs.end() ? nullptr : &*first;
}

Register register_of(const Input* input) {
    const auto* name = input ? std::get_if<SpectrumName>(&input->spectrum) : nullptr;
    switch (name ? *name : SpectrumName::pink) {
        case SpectrumName::voice:
            return {300.0, 2000.0, masked("Your chest voice is under {} ({} dB at {})."),
                    masked("Your vowels are under {} ({} dB at {})."),
                    masked("Your consonants are under {} ({} dB at {}).")};
        case SpectrumName::strings:
            return {400.0, 2000.0, masked("Your low strings are under {} ({} dB at {})."),
                    masked("Your upper strings are under {} ({} dB at {})."),
                    masked("Your brilliance is under {} ({} dB at {}).")};
        case SpectrumName::plucked:
            return {250.0, 2000.0, masked("Your low strings are under {} ({} dB at {})."),
                    masked("Your upper strings are under {} ({} dB at {})."),
                    masked("Your attack is under {} ({} dB at {}).")};
        case SpectrumName::bass:
            return {100.0, 400.0, masked("Your lowest notes are under {} ({} dB at {})."),
                    masked("Your upper notes are under {} ({} dB at {})."),
                    masked("Your attack is under {} ({} dB at {}).")};
        case SpectrumName::pink:
            break;
    }
    return {250.0, 2000.0, masked("Your lows are under {} ({} dB at {})."),
            masked("Your middle is under {} ({} dB at {})."), masked("Your highs are under {} ({} dB at {}).")};
}

/// The part in which it is worst, since that is the figure that the sentence gives; the whole if no part is free.
const char* sentence_for(const Register& parts, double low_hz, double high_hz, double worst_hz) {
    if (low_hz < parts.low_below_hz && high_hz > parts.high_above_hz) return kWhole;
    if (worst_hz < parts.low_below_hz) return parts.low;
    return worst_hz > parts.high_above_hz ? parts.high : parts.middle;
}

bool matters(const BandEnergies& own, std::size_t band, double strongest) {
    return own[band] * a_weighting_energies()[band] >= strongest * db_to_energy(-kMattersDb) && own[band] > 0.0;
}

/// The loudest of the others over a range of bands; the same input in several loudspeakers counts once for each.
std::string loudest(const Show& show, const std::vector<EarSource>& sources, int first, int last) {
    std::map<std::string, double> by_name;
    for (const EarSource& source : sources) {
        if (source.own) continue;
        const BandEnergies energies = source.energies();
        for (int band = first; band <= last; ++band)
            by_name[name_of(show, source)] += energies[static_cast<std::size_t>(band)];
    }
    const auto most =
        std::max_element(by_name.begin(), by_name.end(), [](auto& a, auto& b) { return a.second < b.second; });
    return most == by_name.end() ? std::string() : most->first;
}

MaskedRange range_of(const Show& show, const std::vector<EarSource>& sources, const EarSpectrum& spectrum, int first,
                     int last) {
    MaskedRange range{first, last, 0.0, loudest(show, sources, first, last), {}};
    int worst = first;
    for (int band = first; band <= last; ++band) {
        const double margin = *spectrum.bands[static_cast<std::size_t>(band)].margin_db;
        if (margin < range.worst_margin_db) {
            range.worst_margin_db = margin;
            worst = band;
        }
    }
    const Input* own = loudest_own(show, sources, spectrum.performer, static_cast<std::size_t>(worst));
    const char* sentence = sentence_for(register_of(own), third_octave_centre(first), third_octave_centre(last),
                                        third_octave_centre(worst));
    range.sentence = localised(translate("listening", sentence), range.source,
                               fmt::format("{:.0f}", std::max(1.0, -range.worst_margin_db)),
                               band_words(kNominalThirdOctaves[static_cast<std::size_t>(worst)]));
    return range;
}

EarSpectrum spectrum_of(const Show& show, const ChainEnergies& chains, const Performer& performer) {
    const auto sources = sources_at_ear(show, chains, performer);
    const OwnAndOthers sums = own_and_others(sources);
    EarSpectrum spectrum{performer.id, {}, {}};
    double strongest = 0.0;
    for (std::size_t b = 0; b < spectrum.bands.size(); ++b) {
        BandAtEar& band = spectrum.bands[b];
        band = {level_of(sums.own[b]), level_of(sums.others[b]), std::nullopt};
        if (band.own_db && band.others_db) band.margin_db = *band.own_db - *band.others_db;
        strongest = std::max(strongest, sums.own[b] * a_weighting_energies()[b]);
    }
    int first = -1;
    for (int b = 0; b <= kThirdOctaves; ++b) {
        const auto at = static_cast<std::size_t>(b);
        const bool masked =
            b < kThirdOctaves && matters(sums.own, at, strongest) && spectrum.bands[at].margin_db.value_or(0.0) < 0.0;
        if (masked && first < 0) first = b;
        if (masked || first < 0) continue;
        spectrum.masked.push_back(range_of(show, sources, spectrum, first, b - 1));
        first = -1;
    }
    return spectrum;
}
}  // namespace

std::vector<EarSpectrum> ear_spectra(const Show& show) {
    const ChainEnergies chains(show);
    std::vector<EarSpectrum> spectra;
    for (const Performer& performer : show.performers) spectra.push_back(spectrum_of(show, chains, performer));
    return spectra;
}

}  // namespace howlmap
