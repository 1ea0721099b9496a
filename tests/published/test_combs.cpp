// SPDX-License-Identifier: GPL-3.0-or-later
// Comb filters: F. A. Everest and K. C. Pohlmann, Master Handbook of Acoustics, 5th and 6th ed., chapter 10: nulls of
// two equal paths at n / (2 t), n odd, peaks n / t; r as amplitude ratio gives 20 log10 (1 +- r). Wavelengths c / f:
// common practice, no source.
#include <cmath>

#include "core/propagation/transfer.h"
#include "core/show/show.h"
#include "core/units/level.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
struct Bounce {
    double source_z, receiver_z, apart, first_null_hz;
};
// Rigid floor, c = 343.2 m/s.
const std::vector<Bounce> kBounces = {{0.3, 1.5, 1.0, 345.219}, {1.0, 1.5, 2.0, 150.525}, {1.2, 1.2, 1.0, 107.25}};

Complex pressure(const Bounce& bounce, double absorption, double hz) {
    const Directivity omni = Omni{};
    Surfaces surfaces;
    surfaces.floor.absorption = absorption;
    const Surroundings around(Air{}, surfaces);
    const Emitter emitter{{0, 0, bounce.source_z}, frame_of({}), &omni};
    const Receiver receiver{{bounce.apart, 0, bounce.receiver_z}, frame_of({}), {}};
    return transfer(legs_between(emitter, receiver, planes_of(surfaces)), LoudspeakerSlice(omni, hz, around.speed),
                    receiver.pattern, {around, hz});
}
}  // namespace

class Combs : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void first_null_of_a_floor_bounce() {
        for (const Bounce& bounce : kBounces) {
            double least = 1e9, at = 0.0;
            for (double hz = 0.8 * bounce.first_null_hz; hz < 1.2 * bounce.first_null_hz; hz += 0.02) {
                // Both paths weighted alike, as the handbook has it: phases alone make the null.
                const double direct = std::hypot(bounce.apart, bounce.source_z - bounce.receiver_z);
                const double image = std::hypot(bounce.apart, bounce.source_z + bounce.receiver_z);
                const Complex free = pressure(bounce, 1.0, hz), bounced = pressure(bounce, 0.0, hz) - free;
                const double size = std::abs(free * direct + bounced * image);
                if (size < least) {
                    least = size;
                    at = hz;
                }
            }
            QVERIFY2(std::abs(at - bounce.first_null_hz) < 0.03, qPrintable(QString::number(at)));
            QVERIFY(least < 0.01);
        }
    }
    void peaks_rise_by_the_amplitude_ratio() {
        // 1.2 m up, 1 m apart: image path 2.6 m, r = 1 / 2.6; at c / (2.6 - 1) both are in phase.
        const Bounce bounce = kBounces[2];
        const double hz = 343.2 / 1.6, r = 1.0 / 2.6;
        const double rise = ratio_to_db(std::abs(pressure(bounce, 0.0, hz)) / std::abs(pressure(bounce, 1.0, hz)));
        QVERIFY(std::abs(rise - 20.0 * std::log10(1.0 + r)) < 0.01);
        const double fall =
            ratio_to_db(std::abs(pressure(bounce, 0.0, hz / 2.0)) / std::abs(pressure(bounce, 1.0, hz / 2.0)));
        QVERIFY(std::abs(fall - 20.0 * std::log10(1.0 - r)) < 0.01);
    }
    void a_metre_is_so_many_waves() {
        // 100 Hz 3.432 m, 1 kHz 0.3432 m, 10 kHz 34.32 mm.
        for (const double hz : {100.0, 1000.0, 10000.0}) {
            const Bounce far{1.2, 1.2, 3.0 * 343.2 / hz, 0.0};
            QVERIFY(std::abs(std::arg(pressure(far, 1.0, hz))) < 1e-6);
        }
    }
};
HOWLMAP_TEST(Combs)
#include "test_combs.moc"
