// SPDX-License-Identifier: GPL-3.0-or-later
// Speech at 1 m: ANSI S3.5-1997, Table 3 (spectrum levels) with its overall levels; ISO 9921:2003, Annex A (vocal
// effort in dBA, second hand) and Table H.2 (male speech of 60 dBA, second hand). Of strings only the double bass: its
// peak power of 0.16 W is in F. A. Everest, Master Handbook of Acoustics, 4th ed., Table 5-1 (after Sivian, Dunn and
// White, J. Acoust. Soc. Am. 2, 1931); publications on the others could not be read.
#include <array>
#include <cmath>
#include <map>

#include "core/listening/listening.h"
#include "core/listening/spectrum.h"
#include "core/units/bands.h"
#include "core/units/level.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
constexpr int kFirstBand = 9;  // 160 Hz

struct Effort {
    const char* name;
    std::array<double, 18> spectrum_level_db;  // re 1 Hz, third-octaves 160 Hz .. 8 kHz
    double overall_db;                         // ANSI S3.5
    double effort_dba;                         // ISO 9921
};
const std::array kEfforts = {Effort{"normal",
                                    {32.41, 34.48, 34.75, 33.98, 34.59, 34.27, 32.06, 28.30, 25.01, 23.00, 20.15, 17.32,
                                     13.18, 11.55, 9.33, 5.31, 2.59, 1.13},
                                    62.35,
                                    60.0},
                             Effort{"raised",
                                    {33.81, 33.92, 38.98, 38.57, 39.11, 40.15, 38.78, 36.37, 33.86, 31.89, 28.58, 25.32,
                                     22.35, 20.15, 16.78, 11.47, 7.67, 5.07},
                                    68.34,
                                    66.0},
                             Effort{"loud",
                                    {35.29, 37.76, 41.55, 43.78, 43.40, 44.85, 45.55, 44.05, 42.16, 40.53, 37.70, 34.39,
                                     30.98, 28.21, 25.41, 18.35, 13.87, 11.39},
                                    74.85,
                                    72.0}};
const std::map<double, double> kMaleOctaves = {{125, 62.9},  {250, 62.9},  {500, 59.2}, {1000, 53.2},
                                               {2000, 47.2}, {4000, 41.2}, {8000, 35.2}};

BandEnergies bands_of(const Effort& effort) {
    BandEnergies energies{};
    for (std::size_t i = 0; i < effort.spectrum_level_db.size(); ++i) {
        const int band = kFirstBand + static_cast<int>(i);
        const double width = third_octave_centre(band) * (std::pow(10.0, 0.05) - std::pow(10.0, -0.05));
        energies[static_cast<std::size_t>(band)] = db_to_energy(effort.spectrum_level_db[i] + energy_to_db(width));
    }
    return energies;
}
}  // namespace

class SpeechLevels : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void bands_add_up_to_the_printed_levels() {
        QCOMPARE(kNominalThirdOctaves[kFirstBand], 160.0);
        for (const Effort& effort : kEfforts) {
            const BandEnergies bands = bands_of(effort);
            QVERIFY2(std::abs(*level_of(sum(bands)) - effort.overall_db) < 0.1, effort.name);
            // Two standards, two sets of talkers: they agree within 2 dB (normal 59.2, raised 66.4, loud 73.8 dBA).
            QVERIFY2(std::abs(*level_dba(bands) - effort.effort_dba) < 2.0, effort.name);
        }
    }
    void male_speech_of_60_dba() {
        BandEnergies bands{};
        for (const auto& [hz, db] : kMaleOctaves)
            bands[static_cast<std::size_t>(third_octave_of(hz))] = db_to_energy(db);
        QVERIFY2(std::abs(*level_dba(bands) - 60.0) < 0.1, qPrintable(QString::number(*level_dba(bands))));
    }
    /// A talker on the stage, through the whole listening side: at 1 m what the table gives, at 2 m 6 dB less.
    void a_talker_on_the_stage() {
        for (const Effort& effort : kEfforts) {
            const BandEnergies bands = bands_of(effort);
            std::map<int, double> shape;
            for (int band = kFirstBand; band < kFirstBand + 18; ++band)
                shape[band] = *level_of(bands[static_cast<std::size_t>(band)]);
            Show show;
            show.stage.surfaces.floor.absorption = 1.0;
            Backline talker;
            talker.id = "talker", talker.position = {0.0, 2.0, 1.6};
            talker.level_1m_dba = *level_dba(bands), talker.spectrum = shape;
            show.backline = {talker};
            for (const double metres : {1.0, 2.0}) {
                Performer ear;
                ear.id = "ear", ear.position = {0.0, 2.0 + metres};
                show.performers = {ear};
                const double expected = *level_dba(bands) - 20.0 * std::log10(metres);
                QVERIFY2(std::abs(*performer_figures(show)[0].ear_dba - expected) < 0.05, effort.name);
            }
        }
    }
    /// A double bass at its peak, through the whole listening side: what its power gives at 1 m, and what that costs a
    /// neighbour at 2 m.
    void a_double_bass_at_its_peak() {
        constexpr double kPowerW = 0.16, kSphereDb = 10.99;  // 10 log10(4 pi m2)
        const double at_1m = energy_to_db(kPowerW / 1e-12) - kSphereDb;
        QVERIFY(std::abs(at_1m - 101.0) < 0.1);
        Show show;
        show.stage.surfaces.floor.absorption = 1.0;
        Backline bass;
        bass.id = "bass", bass.position = {0.0, 2.0, 1.6};
        bass.spectrum = SpectrumName::bass;
        const BandEnergies shape = spectrum_energies(bass.spectrum);
        bass.level_1m_dba = at_1m + *level_dba(shape);  // the shape sums to 0 dB
        show.backline = {bass};
        Performer ear;
        ear.id = "ear", ear.position = {0.0, 4.0};
        show.performers = {ear};
        const double expected = at_1m + *level_dba(shape) - 20.0 * std::log10(2.0);
        QVERIFY(std::abs(*performer_figures(show)[0].ear_dba - expected) < 0.05);
    }
};

HOWLMAP_TEST(SpeechLevels)
#include "test_speech_levels.moc"
