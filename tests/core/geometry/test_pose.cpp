// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/pose.h"

#include <rapidcheck.h>

#include "tests/support/registry.h"

using namespace howlmap;

namespace {
bool near(Vec3 a, Vec3 b, double tolerance = 1e-12) { return length(a - b) < tolerance; }
bool near(double a, double b, double tolerance = 1e-12) { return std::abs(a - b) < tolerance; }
const double kHalf = std::sqrt(0.5);
}  // namespace

// Directions worked out by hand from the axes: +x stage left, +y upstage, +z up.
class TestPose : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void framesByHand() {
        const Frame audience = frame_of({0, 0, 0});  // facing the house, stage right is on the right hand
        QVERIFY(near(audience.forward, {0, -1, 0}) && near(audience.right, {-1, 0, 0}) && near(audience.up, {0, 0, 1}));
        const Frame left = frame_of({90, 0, 0});
        QVERIFY(near(left.forward, {1, 0, 0}) && near(left.right, {0, -1, 0}));
        const Frame upstage = frame_of({180, 0, 0});
        QVERIFY(near(upstage.forward, {0, 1, 0}) && near(upstage.right, {1, 0, 0}));
        const Frame ceiling = frame_of({0, 90, 0});
        QVERIFY(near(ceiling.forward, {0, 0, 1}) && near(ceiling.up, {0, 1, 0}));
        const Frame slanting = frame_of({180, 45, 0});
        QVERIFY(near(slanting.forward, {0, kHalf, kHalf}) && near(slanting.up, {0, -kHalf, kHalf}));
        const Frame rolled = frame_of({0, 0, 90});  // right turns to where down was, up to where right was
        QVERIFY(near(rolled.right, {0, 0, -1}) && near(rolled.up, {-1, 0, 0}));
    }

    void framesAreRightHandedAndUnit() {
        QVERIFY(rc::check([] {
            const auto angle = [] { return static_cast<double>(*rc::gen::inRange(-720, 720)); };
            const Frame frame = frame_of({angle(), angle(), angle()});
            RC_ASSERT(near(cross(frame.right, frame.forward), frame.up));
            RC_ASSERT(near(length(frame.forward), 1.0) && near(length(frame.right), 1.0));
            RC_ASSERT(near(dot(frame.forward, frame.right), 0.0));
        }));
    }

    void localAnglesByHand() {
        const Frame frame = frame_of({0, 0, 0});
        QCOMPARE(local_angles(frame, {0, -1, 0}).off_axis, 0.0);
        QCOMPARE(local_angles(frame, {0, -1, 0}).turn, 0.0);
        QVERIFY(near(local_angles(frame, {0, 1, 0}).off_axis, kPi));
        QVERIFY(near(local_angles(frame, {-1, 0, 0}).off_axis, kPi / 2) &&
                near(local_angles(frame, {-1, 0, 0}).turn, 0.0));
        QVERIFY(near(local_angles(frame, {0, 0, 1}).turn, kPi / 2));
        QVERIFY(near(local_angles(frame, {0, 0, -1}).turn, -kPi / 2));
        QVERIFY(near(local_angles(frame, {kHalf, -kHalf, 0}).off_axis, kPi / 4));
    }

    void smallAnglesKeepTheirDigits() {
        const double angle = 1e-9;
        const auto got = local_angles(frame_of({0, 0, 0}), {0, -std::cos(angle), std::sin(angle)});
        QVERIFY(near(got.off_axis, angle, 1e-20));
    }

    void aimTowardsByHand() {
        QCOMPARE(aim_towards({0, 0, 0}, {0, -3, 0}), (Aim{0, 0, 0}));
        QVERIFY(near(aim_towards({0, 0, 0}, {1, 0, 0}).yaw_deg, 90.0));
        QVERIFY(near(aim_towards({0, 0, 0}, {0, 2, 0}).yaw_deg, 180.0));
        QVERIFY(near(aim_towards({0, 0, 0}, {-1, 0, 0}).yaw_deg, 270.0));
        QVERIFY(near(aim_towards({0, 0, 0}, {0, 1, 1}).pitch_deg, 45.0));
        QVERIFY(near(aim_towards({0, 0, 0}, {0, 0, -1}).pitch_deg, -90.0));
        QCOMPARE(aim_towards({1, 2, 3}, {1, 2, 3}), (Aim{}));
    }

    void whatIsAimedAtLiesAhead() {
        QVERIFY(rc::check([] {
            const auto metre = [] { return *rc::gen::inRange(-900, 900) / 100.0; };
            const Vec3 from{metre(), metre(), metre()}, to{metre(), metre(), metre()};
            RC_PRE(length(to - from) > 0.01);
            const Vec3 direction = (to - from) * (1.0 / length(to - from));
            RC_ASSERT(near(frame_of(aim_towards(from, to)).forward, direction, 1e-9));
        }));
    }

    void turns() {
        QCOMPARE(wrap_degrees(-90.0), 270.0);
        QCOMPARE(wrap_degrees(360.0), 0.0);
        QCOMPARE(wrap_degrees(725.0), 5.0);
        QCOMPARE(wrap_degrees(-1e-18), 0.0);
        QCOMPARE(turn_degrees(350.0, 10.0), 20.0);
        QCOMPARE(turn_degrees(10.0, 350.0), -20.0);
        QCOMPARE(turn_degrees(0.0, 180.0), 180.0);
        QCOMPARE(turn_degrees(180.0, 0.0), 180.0);
    }
};

HOWLMAP_TEST(TestPose)
#include "test_pose.moc"
