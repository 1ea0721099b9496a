// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/bands.h"

#include <cmath>

#include "tests/support/registry.h"

using namespace howlmap;

namespace {
struct Band {
    double nominal, exact, lower, upper;
};

// Mid-band and edge frequencies by IEC 61260-1:2014, 5.2 to 5.6 (base ten), to 8 digits; nominal values by ISO
// 266:1997.
const Band kThirds[] = {
    {20.0, 19.952623, 17.782794, 22.387211},    {25.0, 25.118864, 22.387211, 28.183829},
    {31.5, 31.622777, 28.183829, 35.481339},    {40.0, 39.810717, 35.481339, 44.668359},
    {50.0, 50.118723, 44.668359, 56.234133},    {63.0, 63.095734, 56.234133, 70.794578},
    {80.0, 79.432823, 70.794578, 89.125094},    {100.0, 100.0, 89.125094, 112.20185},
    {125.0, 125.89254, 112.20185, 141.25375},   {160.0, 158.48932, 141.25375, 177.82794},
    {200.0, 199.52623, 177.82794, 223.87211},   {250.0, 251.18864, 223.87211, 281.83829},
    {315.0, 316.22777, 281.83829, 354.81339},   {400.0, 398.10717, 354.81339, 446.68359},
    {500.0, 501.18723, 446.68359, 562.34133},   {630.0, 630.95734, 562.34133, 707.94578},
    {800.0, 794.32823, 707.94578, 891.25094},   {1000.0, 1000.0, 891.25094, 1122.0185},
    {1250.0, 1258.9254, 1122.0185, 1412.5375},  {1600.0, 1584.8932, 1412.5375, 1778.2794},
    {2000.0, 1995.2623, 1778.2794, 2238.7211},  {2500.0, 2511.8864, 2238.7211, 2818.3829},
    {3150.0, 3162.2777, 2818.3829, 3548.1339},  {4000.0, 3981.0717, 3548.1339, 4466.8359},
    {5000.0, 5011.8723, 4466.8359, 5623.4133},  {6300.0, 6309.5734, 5623.4133, 7079.4578},
    {8000.0, 7943.2823, 7079.4578, 8912.5094},  {10000.0, 10000.0, 8912.5094, 11220.185},
    {12500.0, 12589.254, 11220.185, 14125.375}, {16000.0, 15848.932, 14125.375, 17782.794},
    {20000.0, 19952.623, 17782.794, 22387.211},
};
}  // namespace

class TestBands : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void thirdOctaves() {
        QCOMPARE(std::size(kThirds), static_cast<std::size_t>(kThirdOctaves));
        for (int band = 0; band < kThirdOctaves; ++band) {
            const Band& known = kThirds[band];
            QCOMPARE(kNominalThirdOctaves[static_cast<std::size_t>(band)], known.nominal);
            QVERIFY(std::abs(third_octave_centre(band) / known.exact - 1.0) < 5e-8);
            QCOMPARE(third_octave_of_nominal(known.nominal), std::optional<int>(band));
        }
    }

    void bandsEndAtTheirEdges() {
        for (int band = 0; band < kThirdOctaves; ++band) {
            QCOMPARE(third_octave_of(kThirds[band].lower * 1.000001), band);
            QCOMPARE(third_octave_of(kThirds[band].upper * 0.999999), band);
            QCOMPARE(third_octave_of(third_octave_centre(band)), band);
        }
    }

    void outsideCountsAsTheNearest() {
        QCOMPARE(third_octave_of(1.0), 0);
        QCOMPARE(third_octave_of(100000.0), kThirdOctaves - 1);
    }

    void octaves() {
        // Every third of the third-octave bands, 63 Hz .. 8 kHz (IEC 61260-1:2014, 5.3).
        for (int band = 0; band < kOctaves; ++band) {
            const Band& known = kThirds[5 + 3 * band];
            QCOMPARE(kNominalOctaves[static_cast<std::size_t>(band)], known.nominal);
            QVERIFY(std::abs(octave_centre(band) / known.exact - 1.0) < 5e-8);
            QCOMPARE(octave_of_nominal(known.nominal), std::optional<int>(band));
        }
    }

    void theRatioOfAnOctave() {
        // G = 10^(3/10) = 1.995262315 (IEC 61260-1:2014, 5.2).
        QVERIFY(std::abs(octave_centre(5) / octave_centre(4) - 1.995262315) < 1e-9);
    }

    void othersAreNoNominalBands() {
        for (const double hz : {0.0, 16.0, 31.0, 32.0, 1001.0, 25000.0}) QVERIFY(!third_octave_of_nominal(hz));
        for (const double hz : {31.5, 100.0, 16000.0}) QVERIFY(!octave_of_nominal(hz));
    }
};

HOWLMAP_TEST(TestBands)
#include "test_bands.moc"
