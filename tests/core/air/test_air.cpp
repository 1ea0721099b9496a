// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/air/air.h"
#include "tests/support/registry.h"

using namespace howlmap;

class AirTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void finite_and_not_negative_in_the_whole_range_of_a_file() {
        for (const double temperature : {-30.0, 0.0, 60.0})
            for (const double humidity : {0.0, 1.0, 100.0})
                for (const double pressure : {50.0, 110.0}) {
                    Air air;
                    air.temperature_c = temperature;
                    air.humidity_pct = humidity;
                    air.pressure_kpa = pressure;
                    const AirAbsorption absorption(air);
                    double before = 0.0;
                    for (double hz = 20.0; hz <= 20000.0; hz *= 1.1) {
                        const double now = absorption.db_per_m(hz);
                        QVERIFY(std::isfinite(now) && now >= before);  // rises with frequency
                        before = now;
                    }
                }
    }
};
HOWLMAP_TEST(AirTest)
#include "test_air.moc"
