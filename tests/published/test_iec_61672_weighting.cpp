// SPDX-License-Identifier: GPL-3.0-or-later
// IEC 61672-1:2013, Table 3 (third-octaves, printed to 0.1 dB) and Annex E (design frequencies and poles);
// ANSI S3.5-1997, Table 3 (speech spectra); ISO 9921:2003, Table H.2 (male speech, second hand).
#include "core/air/weighting.h"
#include "core/listening/spectrum.h"
#include "core/units/level.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
struct WeightingRow {
    double nominal_hz, db;
};
const std::vector<WeightingRow> kTable3 = {
    {20, -50.5},  {25, -44.7},  {31.5, -39.4}, {40, -34.6},   {50, -30.2},   {63, -26.2},   {80, -22.5},  {100, -19.1},
    {125, -16.1}, {160, -13.4}, {200, -10.9},  {250, -8.6},   {315, -6.6},   {400, -4.8},   {500, -3.2},  {630, -1.9},
    {800, -0.8},  {1000, 0.0},  {1250, 0.6},   {1600, 1.0},   {2000, 1.2},   {2500, 1.3},   {3150, 1.2},  {4000, 1.0},
    {5000, 0.5},  {6300, -0.1}, {8000, -1.1},  {10000, -2.5}, {12500, -4.3}, {16000, -6.6}, {20000, -9.3}};
// Third-octave levels at 1 m in front of the mouth, from the spectrum levels and the exact bandwidths.
const std::vector<WeightingRow> kNormalSpeech = {
    {160, 48.04},  {200, 51.11},  {250, 52.38},  {315, 52.61},  {400, 54.22},  {500, 54.9},
    {630, 53.69},  {800, 50.93},  {1000, 48.64}, {1250, 47.63}, {1600, 45.78}, {2000, 43.95},
    {2500, 40.81}, {3150, 40.18}, {4000, 38.96}, {5000, 35.94}, {6300, 34.22}, {8000, 33.76}};
const std::vector<WeightingRow> kLoudSpeech = {
    {160, 50.92},  {200, 54.39},  {250, 59.18},  {315, 62.41},  {400, 63.03},  {500, 65.48},
    {630, 67.18},  {800, 66.68},  {1000, 65.79}, {1250, 65.16}, {1600, 63.33}, {2000, 61.02},
    {2500, 58.61}, {3150, 56.84}, {4000, 55.04}, {5000, 48.98}, {6300, 45.5},  {8000, 44.02}};
const std::vector<WeightingRow> kMaleSpeech60 = {{125, 62.9},  {250, 62.9},  {500, 59.2}, {1000, 53.2},
                                                 {2000, 47.2}, {4000, 41.2}, {8000, 35.2}};

Spectrum custom(const std::vector<WeightingRow>& rows) {
    std::map<int, double> bands;
    for (const WeightingRow& row : rows) bands[*third_octave_of_nominal(row.nominal_hz)] = row.db;
    return bands;
}

double energy_sum_db(const std::vector<WeightingRow>& rows) {
    double energy = 0.0;
    for (const WeightingRow& row : rows) energy += db_to_energy(row.db);
    return energy_to_db(energy);
}

/// A-weighted level of a spectrum whose bands add up to `overall_db`.
double weighted(const std::vector<WeightingRow>& rows, double overall_db) {
    return *level_dba(spectrum_energies(custom(rows)) * db_to_energy(overall_db));
}
}  // namespace

class Iec61672Weighting : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void printed_table() {
        for (const WeightingRow& row : kTable3) {
            const double exact = third_octave_centre(*third_octave_of_nominal(row.nominal_hz));
            QVERIFY2(std::abs(a_weighting_db(exact) - row.db) <= 0.0501, qPrintable(QString::number(row.nominal_hz)));
        }
    }
    void zero_at_one_kilohertz_and_design_frequency() {
        QCOMPARE(a_weighting_db(1000.0), 0.0);
        // Annex E evaluated at the exact mid-band frequencies of 20 Hz and 31.5 Hz.
        QVERIFY(std::abs(a_weighting_db(19.952623) + 50.4522) < 1e-4);
        QVERIFY(std::abs(a_weighting_db(31.622777) + 39.4400) < 1e-4);
    }
    void speech_at_one_metre() {
        // ANSI S3.5: overall 62.35 dB printed, sum of its bands within 0.1 dB; A-weighted 59.2 and 73.8 dBA.
        QVERIFY(std::abs(energy_sum_db(kNormalSpeech) - 62.35) < 0.1);
        QVERIFY(std::abs(weighted(kNormalSpeech, energy_sum_db(kNormalSpeech)) - 59.2) < 0.1);
        QVERIFY(std::abs(weighted(kLoudSpeech, energy_sum_db(kLoudSpeech)) - 73.8) < 0.1);
        // ISO 9921, Table H.2, by octaves: 60 dBA.
        QVERIFY(std::abs(weighted(kMaleSpeech60, energy_sum_db(kMaleSpeech60)) - 60.05) < 0.1);
    }
};
HOWLMAP_TEST(Iec61672Weighting)
#include "test_iec_61672_weighting.moc"
