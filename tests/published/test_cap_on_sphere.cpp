// SPDX-License-Identifier: GPL-3.0-or-later
// Radiation of a cap, and of a point, on a rigid sphere. P. M. Morse, Vibration and Sound, 1948; R. M. Aarts and A. J.
// E. M. Janssen, J. Audio Eng. Soc. 59, 2011. Values computed from the series with 40 digits and in a second way.
#include <cmath>

#include "core/directivity/loudspeaker_directivity.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
struct Value {
    double ka, angle_deg, ratio;
};
struct Factor {
    double ka, q;
};
// Half-angle of the cap 30 deg.
const std::vector<Value> kCap = {
    {0.5, 0, 1.0},       {0.5, 30, 0.97673},  {0.5, 60, 0.92457}, {0.5, 90, 0.8859},  {0.5, 120, 0.89115},
    {0.5, 150, 0.92372}, {0.5, 180, 0.94137}, {1, 0, 1.0},        {1, 30, 0.95231},   {1, 60, 0.82062},
    {1, 90, 0.6619},     {1, 120, 0.60622},   {1, 150, 0.68492},  {1, 180, 0.7391},   {2, 0, 1.0},
    {2, 30, 0.92705},    {2, 60, 0.76975},    {2, 90, 0.61676},   {2, 120, 0.40304},  {2, 150, 0.43347},
    {2, 180, 0.59274},   {5, 0, 1.0},         {5, 30, 0.80346},   {5, 60, 0.45493},   {5, 90, 0.2337},
    {5, 120, 0.13457},   {5, 150, 0.09177},   {5, 180, 0.21246},  {10, 0, 1.0},       {10, 30, 0.41597},
    {10, 60, 0.12039},   {10, 90, 0.09874},   {10, 120, 0.05828}, {10, 150, 0.03156}, {10, 180, 0.09485},
};
const std::vector<Factor> kFactors = {
    {0.5, 1.1938}, {1, 1.8222}, {2, 2.3591}, {5, 6.079}, {10, 22.4265},
};
// A point on the sphere.
const std::vector<Value> kPoint = {
    {0.5, 0, 1.0},      {0.5, 30, 0.97766},  {0.5, 60, 0.9268},  {0.5, 90, 0.88788}, {0.5, 120, 0.8917},
    {0.5, 150, 0.9226}, {0.5, 180, 0.93944}, {1, 0, 1.0},        {1, 30, 0.96049},   {1, 60, 0.84258},
    {1, 90, 0.6862},    {1, 120, 0.62406},   {1, 150, 0.69975},  {1, 180, 0.75305},  {2, 0, 1.0},
    {2, 30, 0.95445},   {2, 60, 0.84382},    {2, 90, 0.71864},   {2, 120, 0.48148},  {2, 150, 0.50095},
    {2, 180, 0.67907},  {5, 0, 1.0},         {5, 30, 0.97822},   {5, 60, 0.869},     {5, 90, 0.66593},
    {5, 120, 0.43313},  {5, 150, 0.27886},   {5, 180, 0.61107},  {10, 0, 1.0},       {10, 30, 0.98485},
    {10, 60, 0.90109},  {10, 90, 0.67615},   {10, 120, 0.38515}, {10, 150, 0.18662}, {10, 180, 0.53411},
};
}  // namespace

class Cap : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void far_field_over_that_on_axis() {
        for (const Value& row : kCap) {
            const double found = CapSlice({1.0, 0.5, {}}, row.ka).gain(std::cos(radians(row.angle_deg)));
            QVERIFY2(std::abs(found - std::min(1.0, row.ratio)) < 2e-5,
                     qPrintable(QString("ka %1, %2 deg: %3").arg(row.ka).arg(row.angle_deg).arg(found)));
        }
    }
    void directivity_factor_of_a_cap() {
        const double speed = 343.2;
        for (const Factor& row : kFactors) {
            const double hz = row.ka * speed / (2.0 * kPi);
            QVERIFY(std::abs(directivity_factor(CapOnSphere{1.0, 0.5, {}}, hz, speed) / row.q - 1.0) < 2e-4);
        }
    }
    void a_small_cap_is_a_point() {
        for (const Value& row : kPoint) {
            const double found = CapSlice({1.0, 0.002, {}}, row.ka).gain(std::cos(radians(row.angle_deg)));
            QVERIFY(std::abs(found - std::min(1.0, row.ratio)) < 5e-4);
        }
    }
    void depends_on_ka_alone() {
        const double one = CapSlice({0.1, 0.05, {}}, 40.0).gain(0.3), other = CapSlice({0.4, 0.2, {}}, 10.0).gain(0.3);
        QVERIFY(std::abs(one - other) < 1e-12);
    }
    void a_wide_cap_is_held_at_its_axis() {
        double most = 0.0;
        for (double ka = 1.0; ka < 60.0; ka += 0.37)
            for (double angle = 0.0; angle <= 180.0; angle += 3.0)
                most = std::max(most, CapSlice({1.0, 1.0, {}}, ka).gain(std::cos(radians(angle))));
        QVERIFY(most <= 1.0);
    }
};
HOWLMAP_TEST(Cap)
#include "test_cap_on_sphere.moc"
