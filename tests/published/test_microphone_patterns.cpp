// SPDX-License-Identifier: GPL-3.0-or-later
// J. Eargle, The Microphone Book, 2nd ed. 2004, pages 103 and 104, equations 6.4 to 6.6 and Table 6-1 (random
// efficiency); pattern factors and efficiencies computed from A + B cos and A^2 + B^2 / 3.
#include <cmath>

#include "core/directivity/receiver_pattern.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
struct PatternFactor {
    double a, angle_deg, gain;
};
struct Efficiency {
    double a, value;
};
struct Printed {
    double a, value, half_of_the_last_digit;
};
const std::vector<PatternFactor> kPatternFactors = {
    {0.7, 0, 1.0},         {0.7, 15, 0.98978},   {0.7, 30, 0.95981},    {0.7, 45, 0.91213},    {0.7, 60, 0.85},
    {0.7, 75, 0.77765},    {0.7, 90, 0.7},       {0.7, 105, 0.62235},   {0.7, 120, 0.55},      {0.7, 135, 0.48787},
    {0.7, 150, 0.44019},   {0.7, 165, 0.41022},  {0.7, 180, 0.4},       {0.5, 0, 1.0},         {0.5, 15, 0.98296},
    {0.5, 30, 0.93301},    {0.5, 45, 0.85355},   {0.5, 60, 0.75},       {0.5, 75, 0.62941},    {0.5, 90, 0.5},
    {0.5, 105, 0.37059},   {0.5, 120, 0.25},     {0.5, 135, 0.14645},   {0.5, 150, 0.06699},   {0.5, 165, 0.01704},
    {0.5, 180, 0.0},       {0.37, 0, 1.0},       {0.37, 15, 0.97853},   {0.37, 30, 0.9156},    {0.37, 45, 0.81548},
    {0.37, 60, 0.685},     {0.37, 75, 0.53306},  {0.37, 90, 0.37},      {0.37, 105, 0.20694},  {0.37, 120, 0.055},
    {0.37, 135, -0.07548}, {0.37, 150, -0.1756}, {0.37, 165, -0.23853}, {0.37, 180, -0.26},    {0.25, 0, 1.0},
    {0.25, 15, 0.97444},   {0.25, 30, 0.89952},  {0.25, 45, 0.78033},   {0.25, 60, 0.625},     {0.25, 75, 0.44411},
    {0.25, 90, 0.25},      {0.25, 105, 0.05589}, {0.25, 120, -0.125},   {0.25, 135, -0.28033}, {0.25, 150, -0.39952},
    {0.25, 165, -0.47444}, {0.25, 180, -0.5},    {0.0, 0, 1.0},         {0.0, 15, 0.96593},    {0.0, 30, 0.86603},
    {0.0, 45, 0.70711},    {0.0, 60, 0.5},       {0.0, 75, 0.25882},    {0.0, 90, 0.0},        {0.0, 105, -0.25882},
    {0.0, 120, -0.5},      {0.0, 135, -0.70711}, {0.0, 150, -0.86603},  {0.0, 165, -0.96593},  {0.0, 180, -1.0},
};
const std::vector<Efficiency> kEfficiencies = {
    {0.7, 0.52}, {0.5, 0.33333}, {0.37, 0.2692}, {0.25, 0.25}, {0.0, 0.33333},
};
const std::vector<Printed> kTable6_1 = {
    {1.0, 1.0, 0.005},
    {0.0, 0.33, 0.005},
    {0.5, 0.33, 0.005},
    {0.25, 0.25, 0.005},
};

Input microphone_with(const Pattern& pattern) {
    Input input;
    Microphone microphone;
    microphone.pattern = pattern;
    input.transducer = microphone;
    return input;
}
}  // namespace

class MicrophonePatterns : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void pattern_factors() {
        for (const PatternFactor& row : kPatternFactors) {
            const Input input = microphone_with(row.a);
            QVERIFY(std::abs(ReceiverPattern(input).gain(radians(row.angle_deg), 1000.0) - row.gain) < 1e-5);
        }
    }
    void random_energy_efficiencies() {
        for (const Efficiency& row : kEfficiencies) {
            const Input input = microphone_with(row.a);
            QVERIFY(std::abs(ReceiverPattern(input).random_energy_efficiency(1000.0) - row.value) < 1e-5);
        }
        for (const Printed& row : kTable6_1) {
            const Input input = microphone_with(row.a);
            QVERIFY(std::abs(ReceiverPattern(input).random_energy_efficiency(1000.0) - row.value) <=
                    row.half_of_the_last_digit + 1e-9);
        }
    }
    void names_stand_for_their_numbers() {
        QCOMPARE(ReceiverPattern(microphone_with(PatternName::hypercardioid)).a(), 0.25);
        QCOMPARE(ReceiverPattern(microphone_with(PatternName::figure_8)).gain(kPi, 100.0), -1.0);
    }
    void a_table_of_a_cardioid_is_as_efficient_as_a_cardioid() {
        DirectivityTable table;
        table.hz = {1000.0};
        table.db.emplace_back();
        for (double angle = 0.0; angle <= 180.0; angle += 1.0) {
            table.angles_deg.push_back(angle);
            table.db[0].push_back(20.0 * std::log10(std::max(1e-5, first_order_gain(0.5, radians(angle)))));
        }
        const Input input = microphone_with(table);
        QVERIFY(std::abs(ReceiverPattern(input).random_energy_efficiency(500.0) - 1.0 / 3.0) < 1e-3);
    }
    void a_hand_around_the_grille_makes_it_omni() {
        Input input = microphone_with(PatternName::figure_8);
        std::get<Microphone>(input.transducer).cupped = true;
        QCOMPARE(ReceiverPattern(input).gain(1.3, 100.0), 1.0);
        QCOMPARE(ReceiverPattern(input).random_energy_efficiency(100.0), 1.0);
    }
};
HOWLMAP_TEST(MicrophonePatterns)
#include "test_microphone_patterns.moc"
