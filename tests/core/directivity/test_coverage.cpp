// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/directivity/loudspeaker_directivity.h"
#include "core/units/level.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
constexpr double kSpeed = 343.2;
double db(const Directivity& directivity, double off_axis_deg, double turn_deg, double hz) {
    return ratio_to_db(directivity_gain(directivity, {radians(off_axis_deg), radians(turn_deg)}, hz, kSpeed));
}
}  // namespace

class CoverageModel : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void six_decibels_down_at_the_nominal_angles() {
        const Coverage cabinet{90.0, 60.0, 0.5, 0.35, 24.0, {}};
        QVERIFY(std::abs(db(cabinet, 45.0, 0.0, 8000.0) + 6.0) < 1e-9);
        QVERIFY(std::abs(db(cabinet, 45.0, 180.0, 8000.0) + 6.0) < 1e-9);
        QVERIFY(std::abs(db(cabinet, 30.0, 90.0, 8000.0) + 6.0) < 1e-9);
        QVERIFY(std::abs(db(cabinet, 30.0, -90.0, 8000.0) + 6.0) < 1e-9);
        QCOMPARE(db(cabinet, 0.0, 0.0, 8000.0), 0.0);
    }
    void control_is_lost_below_keeles_frequency() {
        // 90 deg, 0.5 m: 10^6 / (90 deg x 19.69 in) = 564 Hz; an octave below the beam is twice as wide.
        QVERIFY(std::abs(control_hz(90.0, 0.5) - 1e6 / (90.0 * 0.5 / 0.0254)) < 1e-6 * 1e6);
        const Coverage cabinet{90.0, 60.0, 0.5, 0.35, 24.0, {}};
        const double hz = control_hz(90.0, 0.5);
        QVERIFY(std::abs(db(cabinet, 45.0, 0.0, hz * 1.001) + 6.0) < 1e-9);
        QVERIFY(std::abs(db(cabinet, 90.0, 0.0, hz / 2.0) + 6.0) < 1e-9);
    }
    void the_narrowest_angles_that_a_file_may_hold() {
        // Below control the angle is 10^6 / (size in inches) / f whatever the nominal one: 0.5 m at 4 kHz gives 12.7
        // deg.
        const double least = 5e-324;
        QVERIFY(std::abs(db({Coverage{least, 60.0, 0.5, 0.35, 24.0, {}}}, 6.35, 0.0, 4000.0) + 6.0) < 1e-9);
        QCOMPARE(db({Coverage{least, least, least, least, 24.0, {}}}, 180.0, 30.0, 4000.0), 0.0);
    }
    void between_the_planes_an_ellipse() {
        const Coverage cabinet{90.0, 60.0, 5.0, 5.0, 24.0, {}};
        const double half = 1.0 / std::sqrt(0.5 / (45.0 * 45.0) + 0.5 / (30.0 * 30.0));
        QVERIFY(std::abs(db(cabinet, half, 45.0, 4000.0) + 6.0) < 1e-9);
    }
    void falls_to_the_floor_behind() {
        const Coverage cabinet{40.0, 40.0, 5.0, 5.0, 18.0, {}};
        QVERIFY(std::abs(db(cabinet, 180.0, 0.0, 4000.0) + 18.0) < 1e-3);
    }
    void straight_behind_counts_as_the_horizontal_plane() {
        // However round angles are rounded: a cabinet that looks straight away from the point, pitched too.
        const Coverage cabinet{90.0, 60.0, 0.5, 0.35, 24.0, {}};
        for (const double yaw : {0.0, 90.0, 180.0, 270.0, 33.0})
            for (const double pitch : {0.0, 17.0, -60.0}) {
                const Frame frame = frame_of({yaw, pitch, 25.0});
                const LocalAngles angles = local_angles(frame, -frame.forward);
                QCOMPARE(angles.turn, 0.0);
                QVERIFY(std::abs(ratio_to_db(directivity_gain(cabinet, angles, 1000.0, kSpeed)) -
                                 db(cabinet, 180.0, 0.0, 1000.0)) < 1e-6);
            }
    }
    void roll_turns_the_ellipse() {
        // Rolled by 90 deg the wide side stands upright: what was across is now along `up`.
        const Coverage cabinet{90.0, 40.0, 5.0, 5.0, 24.0, {}};
        const Frame level = frame_of({180.0, 0.0, 0.0}), rolled = frame_of({180.0, 0.0, 90.0});
        const Vec3 side = level.forward * std::cos(0.6) + level.right * std::sin(0.6);
        const Vec3 above = level.forward * std::cos(0.6) + level.up * std::sin(0.6);
        const auto gain = [&](const Frame& frame, Vec3 d) {
            return directivity_gain(cabinet, local_angles(frame, d), 5000.0, kSpeed);
        };
        QVERIFY(std::abs(gain(level, side) - gain(rolled, above)) < 1e-12);
        QVERIFY(std::abs(gain(level, above) - gain(rolled, side)) < 1e-12);
        QVERIFY(gain(level, side) > 1.5 * gain(level, above));
    }
    void directivity_factor_by_a_plain_sum() {
        const Coverage cabinet{70.0, 50.0, 0.5, 0.35, 24.0, {}};
        for (const double hz : {200.0, 1000.0, 8000.0}) {
            double sum = 0.0;
            const int n = 400;
            for (int i = 0; i < n; ++i)
                for (int j = 0; j < n; ++j) {
                    const double angle = kPi * (i + 0.5) / n, turn = 2.0 * kPi * (j + 0.5) / n;
                    const double gain = directivity_gain(cabinet, {angle, turn}, hz, kSpeed);
                    sum += gain * gain * std::sin(angle) * (kPi / n) * (2.0 * kPi / n);
                }
            QVERIFY(std::abs(directivity_factor(cabinet, hz, kSpeed) * sum / (4.0 * kPi) - 1.0) < 1e-4);
        }
        QCOMPARE(directivity_factor(Omni{}, 500.0, kSpeed), 1.0);
    }
};
HOWLMAP_TEST(CoverageModel)

class Tables : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void linear_in_angle_and_in_decibels_over_log_frequency() {
        const DirectivityTable table{{0.0, 90.0, 180.0}, {100.0, 1000.0}, {{0.0, -2.0, -4.0}, {0.0, -10.0, -30.0}}, {}};
        QVERIFY(std::abs(db(table, 45.0, 0.0, 1000.0) + 5.0) < 1e-9);
        QVERIFY(std::abs(db(table, 135.0, 0.0, 100.0) + 3.0) < 1e-9);
        QVERIFY(std::abs(db(table, 90.0, 70.0, std::sqrt(1e5)) + 6.0) < 1e-9);
        QVERIFY(std::abs(db(table, 180.0, 0.0, 50.0) + 4.0) < 1e-9);
        QVERIFY(std::abs(db(table, 180.0, 0.0, 9000.0) + 30.0) < 1e-9);
    }
    void held_at_its_ends() {
        const DirectivityTable one{{30.0}, {1000.0}, {{-3.0}}, {}};
        for (const double angle : {0.0, 30.0, 180.0}) QVERIFY(std::abs(db(one, angle, 0.0, 77.0) + 3.0) < 1e-9);
    }
};
HOWLMAP_TEST(Tables)
#include "test_coverage.moc"
