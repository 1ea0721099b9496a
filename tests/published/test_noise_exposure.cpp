// SPDX-License-Identifier: GPL-3.0-or-later
// NIOSH publication 98-126 (1998), Table 1-1 (99 dBA left out: a printed error) and section 1.1; 29 CFR 1910.95, Tables
// G-16 and G-16a.
#include "core/listening/exposure.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
struct ExposureRow {
    double dba, value, tolerance;
};
const std::vector<ExposureRow> kNioshSeconds = {
    {80, 91440.0, 60}, {81, 72600.0, 60}, {82, 57600.0, 60}, {83, 45720.0, 60}, {84, 36300.0, 60}, {85, 28800.0, 60},
    {86, 22860.0, 60}, {87, 18120.0, 60}, {88, 14400.0, 60}, {89, 11400.0, 60}, {90, 9060.0, 60},  {91, 7200.0, 60},
    {92, 5700.0, 60},  {93, 4560.0, 60},  {94, 3600.0, 60},  {95, 2857.0, 1},   {96, 2268.0, 1},   {97, 1800.0, 1},
    {98, 1429.0, 1},   {100, 900.0, 1},   {101, 714.0, 1},   {102, 567.0, 1},   {103, 450.0, 1},   {104, 357.0, 1},
    {105, 283.0, 1},   {106, 225.0, 1},   {107, 179.0, 1},   {108, 142.0, 1},   {109, 113.0, 1},   {110, 89.0, 1},
    {111, 71.0, 1},    {112, 56.0, 1},    {113, 45.0, 1},    {114, 35.0, 1},    {115, 28.0, 1},    {116, 22.0, 1},
    {117, 18.0, 1},    {118, 14.0, 1},    {119, 11.0, 1},    {120, 9.0, 1},     {121, 7.0, 1},     {122, 6.0, 1},
    {123, 4.0, 1},     {124, 3.0, 1},     {125, 3.0, 1},     {126, 2.0, 1},     {127, 1.0, 1},     {128, 1.0, 1},
    {129, 1.0, 1}};
const std::vector<ExposureRow> kOshaG16aHours = {
    {80, 32.0, 0.5},      {81, 27.9, 0.05},     {82, 24.3, 0.05},     {83, 21.1, 0.05},     {84, 18.4, 0.05},
    {85, 16.0, 0.5},      {86, 13.9, 0.05},     {87, 12.1, 0.05},     {88, 10.6, 0.05},     {89, 9.2, 0.05},
    {90, 8.0, 0.5},       {91, 7.0, 0.05},      {92, 6.1, 0.05},      {93, 5.3, 0.05},      {94, 4.6, 0.05},
    {95, 4.0, 0.5},       {96, 3.5, 0.05},      {97, 3.0, 0.05},      {98, 2.6, 0.05},      {99, 2.3, 0.05},
    {100, 2.0, 0.5},      {101, 1.7, 0.05},     {102, 1.5, 0.05},     {103, 1.3, 0.05},     {104, 1.1, 0.05},
    {105, 1.0, 0.5},      {106, 0.87, 0.005},   {107, 0.76, 0.005},   {108, 0.66, 0.005},   {109, 0.57, 0.005},
    {110, 0.5, 0.05},     {111, 0.44, 0.005},   {112, 0.38, 0.005},   {113, 0.33, 0.005},   {114, 0.29, 0.005},
    {115, 0.25, 0.005},   {116, 0.22, 0.005},   {117, 0.19, 0.005},   {118, 0.16, 0.005},   {119, 0.14, 0.005},
    {120, 0.125, 0.0005}, {121, 0.11, 0.005},   {122, 0.095, 0.0005}, {123, 0.082, 0.0005}, {124, 0.072, 0.0005},
    {125, 0.063, 0.0005}, {126, 0.054, 0.0005}, {127, 0.047, 0.0005}, {128, 0.041, 0.0005}, {129, 0.036, 0.0005},
    {130, 0.031, 0.0005}};
struct Limit {
    double dba, hours;
};
const std::vector<Limit> kOshaG16Hours = {{90, 8.0},  {92, 6.0},  {95, 4.0},  {97, 3.0},  {100, 2.0},
                                          {102, 1.5}, {105, 1.0}, {110, 0.5}, {115, 0.25}};
}  // namespace

class NoiseExposure : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void niosh_table_1_1() {
        for (const ExposureRow& row : kNioshSeconds)
            QVERIFY2(std::abs(60.0 * niosh_minutes(row.dba) - row.value) <= row.tolerance,
                     qPrintable(QString::number(row.dba)));
    }
    void osha_table_g_16a() {
        for (const ExposureRow& row : kOshaG16aHours)
            QVERIFY2(std::abs(osha_minutes(row.dba) / 60.0 - row.value) <= row.tolerance * 1.001,
                     qPrintable(QString::number(row.dba)));
    }
    void osha_table_g_16() {
        // Printed to half and quarter hours.
        for (const Limit& row : kOshaG16Hours) QVERIFY(std::abs(osha_minutes(row.dba) / 60.0 - row.hours) < 0.07);
    }
    void doses_and_time_weighted_averages() {
        // 98-126: TWA = 10 log10(D/100) + 85; 1910.95 appendix A: TWA = 16.61 log10(D/100) + 90, over 8 hours.
        for (double level = 80.0; level <= 110.0; level += 2.5) {
            QVERIFY(std::abs(10.0 * std::log10(niosh_dose_pct(level, 480.0) / 100.0) + 85.0 - level) < 0.1);
            QVERIFY(std::abs(16.61 * std::log10(osha_dose_pct(level, 480.0) / 100.0) + 90.0 - level) < 0.01);
        }
        QCOMPARE(niosh_dose_pct(85.0, 480.0), 100.0);
        QCOMPARE(osha_dose_pct(90.0, 240.0), 50.0);  // the action level: 50 per cent
    }
    void level_for_a_set() {
        for (double minutes : {20.0, 45.0, 90.0}) {
            QVERIFY(std::abs(niosh_minutes(niosh_level_dba(minutes)) - minutes) < 1e-9);
            QVERIFY(std::abs(osha_minutes(osha_level_dba(minutes)) - minutes) < 1e-9);
        }
    }
};
HOWLMAP_TEST(NoiseExposure)
#include "test_noise_exposure.moc"
