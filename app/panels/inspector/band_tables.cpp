// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/band_tables.h"

#include <algorithm>

#include "app/panels/inspector/field_builder.h"
#include "core/units/bands.h"

namespace howlmap::app {
namespace {

using Bands = std::map<int, double>;

/// The band after the last row, else the lowest that is not there yet; with the value of the last row.
template <std::size_t N>
NumberRow next_band(const std::array<double, N>& nominal, const NumberRows& rows, double value) {
    const double last = rows.empty() ? 0.0 : rows.back()[0];
    if (!rows.empty()) value = rows.back()[1];
    const auto free = [&](double hz) {
        return std::none_of(rows.begin(), rows.end(), [&](const auto& row) { return row[0] == hz; });
    };
    for (const double hz : nominal)
        if (hz > last) return {hz, value};
    const auto lowest = std::find_if(nominal.begin(), nominal.end(), free);
    return {lowest == nominal.end() ? nominal.back() : *lowest, value};
}

template <std::size_t N>
NumberRows rows_of_bands(const std::array<double, N>& nominal, const Bands& bands) {
    NumberRows rows;
    for (const auto& [band, value] : bands) rows.push_back({nominal[static_cast<std::size_t>(band)], value});
    return rows;
}

/// None where a row names no band, or one a second time.
std::optional<Bands> bands_of(const NumberRows& rows, std::optional<int> (*band_of)(double)) {
    Bands bands;
    for (const NumberRow& row : rows) {
        const auto band = band_of(row[0]);
        if (!band || !bands.emplace(*band, row[1]).second) return std::nullopt;
    }
    return bands;
}

}  // namespace

NumberTableSource absorption_table(const char* title, const std::function<Surface*(Show&)>& find) {
    NumberTableSource source;
    source.title = inspector_text(title);
    source.step_name = inspector_text("Set absorption");
    source.columns = {{inspector_text("Octave, Hz"), limits::kHz, 63.0},
                      {inspector_text("Absorption"), limits::kAbsorption, 0.1}};
    source.most_rows = kOctaves;
    source.fresh = [](const NumberRows& rows) { return next_band(kNominalOctaves, rows, 0.1); };
    source.get = [find](const Show& show) -> std::optional<NumberRows> {
        const Surface* surface = find(const_cast<Show&>(show));
        if (!surface) return std::nullopt;
        const auto* bands = std::get_if<Bands>(&surface->absorption);
        return bands ? rows_of_bands(kNominalOctaves, *bands) : NumberRows();
    };
    source.set = [find](Show& show, const NumberRows& rows) {
        const auto bands = bands_of(rows, octave_of_nominal);
        if (!bands) return inspector_text("expected octaves 63, 125 .. 8000 Hz, each once");
        Surface* surface = find(show);
        if (surface && bands->empty()) surface->absorption = 0.1;
        if (surface && !bands->empty()) surface->absorption = *bands;
        return QString();
    };
    return source;
}

NumberTableSource spectrum_table(const std::function<Spectrum*(Show&)>& find) {
    NumberTableSource source;
    source.title = inspector_text("Spectrum by third-octave bands");
    source.step_name = inspector_text("Set spectrum");
    source.columns = {{inspector_text("Band, Hz"), limits::kHz, 20.0}, {inspector_text("dB"), limits::kLevel, 0.0}};
    source.most_rows = kThirdOctaves;
    source.fresh = [](const NumberRows& rows) { return next_band(kNominalThirdOctaves, rows, 0.0); };
    source.get = [find](const Show& show) -> std::optional<NumberRows> {
        const Spectrum* spectrum = find(const_cast<Show&>(show));
        const Bands* bands = spectrum ? std::get_if<Bands>(spectrum) : nullptr;
        return bands ? std::optional(rows_of_bands(kNominalThirdOctaves, *bands)) : std::nullopt;
    };
    source.set = [find](Show& show, const NumberRows& rows) {
        const auto bands = bands_of(rows, third_octave_of_nominal);
        if (!bands) return inspector_text("expected third-octave bands 20, 25, 31.5 .. 20000 Hz, each once");
        if (bands->empty()) return inspector_text("expected one band at least; without any there is no sound");
        if (Spectrum* spectrum = find(show)) *spectrum = *bands;
        return QString();
    };
    return source;
}

}  // namespace howlmap::app
