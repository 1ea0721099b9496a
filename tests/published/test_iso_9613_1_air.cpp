// SPDX-License-Identifier: GPL-3.0-or-later
// ISO 9613-1:1993, Table 1 (three significant digits, exact mid-band frequencies) and speed of sound;
// ISO 9613-2:1996, Table 2 (printed to 0.1 or 1 dB/km).
#include <cmath>

#include "core/air/air.h"
#include "core/units/bands.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
struct AirRow {
    double temperature_c, humidity_pct, nominal_hz, db_per_km;
};
struct PrintedRow {
    double temperature_c, humidity_pct, nominal_hz, db_per_km, half_of_the_last_digit;
};
struct Speed {
    double temperature_c, m_per_s;
};
const std::vector<AirRow> kTable1 = {
    {25, 80, 50, 0.0426}, {25, 80, 63, 0.0673}, {25, 80, 80, 0.106},  {25, 80, 100, 0.167},  {25, 80, 125, 0.262},
    {25, 80, 160, 0.409}, {25, 80, 200, 0.631}, {25, 80, 250, 0.963}, {25, 80, 315, 1.44},   {25, 80, 400, 2.1},
    {25, 80, 500, 2.95},  {25, 80, 630, 3.97},  {25, 80, 800, 5.12},  {25, 80, 1000, 6.35},  {25, 80, 1250, 7.62},
    {25, 80, 1600, 9.01}, {25, 80, 2000, 10.7}, {25, 80, 2500, 12.9}, {25, 80, 3150, 16.2},  {25, 80, 4000, 21.1},
    {25, 80, 5000, 28.8}, {25, 80, 6300, 40.8}, {25, 80, 8000, 59.8}, {25, 80, 10000, 89.6}, {10, 10, 1000, 21.6},
    {10, 10, 100, 0.585}, {-20, 30, 800, 4.92}, {35, 60, 4000, 25.8}, {50, 70, 1000, 8.03},
};
const std::vector<PrintedRow> kTable2 = {
    {10, 70, 63, 0.1, 0.05},   {10, 70, 125, 0.4, 0.05},   {10, 70, 250, 1.0, 0.05},   {10, 70, 500, 1.9, 0.05},
    {10, 70, 1000, 3.7, 0.05}, {10, 70, 2000, 9.7, 0.05},  {10, 70, 4000, 32.8, 0.05}, {10, 70, 8000, 117.0, 0.5},
    {20, 70, 63, 0.1, 0.05},   {20, 70, 125, 0.3, 0.05},   {20, 70, 250, 1.1, 0.05},   {20, 70, 500, 2.8, 0.05},
    {20, 70, 1000, 5.0, 0.05}, {20, 70, 2000, 9.0, 0.05},  {20, 70, 4000, 22.9, 0.05}, {20, 70, 8000, 76.6, 0.05},
    {30, 70, 63, 0.1, 0.05},   {30, 70, 125, 0.3, 0.05},   {30, 70, 250, 1.0, 0.05},   {30, 70, 500, 3.1, 0.05},
    {30, 70, 1000, 7.4, 0.05}, {30, 70, 2000, 12.7, 0.05}, {30, 70, 4000, 23.1, 0.05}, {30, 70, 8000, 59.3, 0.05},
    {15, 20, 63, 0.3, 0.05},   {15, 20, 125, 0.6, 0.05},   {15, 20, 250, 1.2, 0.05},   {15, 20, 500, 2.7, 0.05},
    {15, 20, 1000, 8.2, 0.05}, {15, 20, 2000, 28.2, 0.05}, {15, 20, 4000, 88.8, 0.05}, {15, 20, 8000, 202.0, 0.5},
    {15, 50, 63, 0.1, 0.05},   {15, 50, 125, 0.5, 0.05},   {15, 50, 250, 1.2, 0.05},   {15, 50, 500, 2.2, 0.05},
    {15, 50, 1000, 4.2, 0.05}, {15, 50, 2000, 10.8, 0.05}, {15, 50, 4000, 36.2, 0.05}, {15, 50, 8000, 129.0, 0.5},
    {15, 80, 63, 0.1, 0.05},   {15, 80, 125, 0.3, 0.05},   {15, 80, 250, 1.1, 0.05},   {15, 80, 500, 2.4, 0.05},
    {15, 80, 1000, 4.1, 0.06}, {15, 80, 2000, 8.3, 0.05},  {15, 80, 4000, 23.7, 0.05}, {15, 80, 8000, 82.8, 0.05},
};
const std::vector<Speed> kSpeeds = {
    {0, 331.286}, {5, 334.304}, {10, 337.296}, {15, 340.261}, {20, 343.2}, {25, 346.114}, {30, 349.005}, {35, 351.871},
};

double db_per_km(double temperature_c, double humidity_pct, double nominal_hz) {
    Air air;
    air.temperature_c = temperature_c;
    air.humidity_pct = humidity_pct;
    return 1000.0 * AirAbsorption(air).db_per_m(third_octave_centre(*third_octave_of_nominal(nominal_hz)));
}
}  // namespace

class Iso9613 : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void absorption_of_table_1() {
        for (const AirRow& row : kTable1) {
            const double found = db_per_km(row.temperature_c, row.humidity_pct, row.nominal_hz);
            QVERIFY2(std::abs(found - row.db_per_km) <= 0.006 * row.db_per_km,
                     qPrintable(QString("%1 Hz: %2").arg(row.nominal_hz).arg(found)));
        }
    }
    void absorption_of_table_2() {
        for (const PrintedRow& row : kTable2) {
            const double found = db_per_km(row.temperature_c, row.humidity_pct, row.nominal_hz);
            QVERIFY2(std::abs(found - row.db_per_km) <= row.half_of_the_last_digit + 1e-9,
                     qPrintable(QString("%1 Hz: %2").arg(row.nominal_hz).arg(found)));
        }
    }
    void speed_of_sound_by_temperature() {
        for (const Speed& row : kSpeeds) QVERIFY(std::abs(speed_of_sound(row.temperature_c) - row.m_per_s) < 0.001);
    }
    void thin_air_absorbs_by_equation_5() {
        // Far above both relaxation frequencies only the classical term grows: alpha / f^2 tends to 8.686 1.84e-11
        // pr/pa sqrt(T/T0).
        Air air;
        air.pressure_kpa = 50.0;
        const double hz = 1e8;
        const double limit = 8.686 * 1.84e-11 * (101.325 / 50.0) * hz * hz;
        QVERIFY(std::abs(AirAbsorption(air).db_per_m(hz) / limit - 1.0) < 1e-3);
    }
};
HOWLMAP_TEST(Iso9613)
#include "test_iso_9613_1_air.moc"
