// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/polygon.h"

#include "core/show/stage.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
const Outline kL{{0, 0}, {4, 0}, {4, 2}, {2, 2}, {2, 5}, {0, 5}};  // 4 x 2 and 2 x 3: 14 m2
}

class TestPolygon : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void areasByHand() {
        QCOMPARE(area_of(kL), 14.0);
        QCOMPARE(area_of(Outline(kL.rbegin(), kL.rend())), 14.0);
        QCOMPARE(area_of({{0, 0}, {3, 0}, {0, 4}}), 6.0);
    }

    void insideOutsideAndOn() {
        for (const Vec2 inside :
             {Vec2{1, 1}, Vec2{3.9, 1.9}, Vec2{1, 4.9}, Vec2{0, 0}, Vec2{4, 1}, Vec2{2, 3}, Vec2{3, 2}})
            QVERIFY(covers(kL, inside));
        for (const Vec2 outside : {Vec2{3, 3}, Vec2{2.001, 2.001}, Vec2{-0.001, 1}, Vec2{4.001, 1}, Vec2{1, 5.001}})
            QVERIFY(!covers(kL, outside));
        QVERIFY(!covers({}, {0, 0}));
        QVERIFY(!covers({{0, 0}, {1, 1}}, {0.5, 0.5}));
    }

    void simpleOrNot() {
        QVERIFY(is_simple(kL));
        QVERIFY(is_simple(Outline(kL.rbegin(), kL.rend())));
        QVERIFY(!is_simple({}));
        QVERIFY(!is_simple({{0, 0}, {1, 0}}));
        QVERIFY(!is_simple({{0, 0}, {4, 4}, {4, 0}, {0, 4}}));                  // a bow tie
        QVERIFY(!is_simple({{0, 0}, {1, 1}, {2, 2}}));                          // no area
        QVERIFY(!is_simple({{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}}));          // touches its own edge
        QVERIFY(!is_simple({{0, 0}, {4, 0}, {6, 0}, {4, 0}, {4, 3}, {0, 3}}));  // a spike
    }

    void boxes() {
        const Box2 box = bounds_of(kL);
        QCOMPARE(box.low, (Vec2{0, 0}));
        QCOMPARE(box.high, (Vec2{4, 5}));
        QCOMPARE(bounds_of({}), Box2{});
    }

    void nearestInsideByHand() {
        QCOMPARE(nearest_inside(kL, {1, 1}), (Vec2{1, 1}));
        QCOMPARE(nearest_inside(kL, {5, 1}), (Vec2{4, 1}));
        QCOMPARE(nearest_inside(kL, {-1, -1}), (Vec2{0, 0}));
        QCOMPARE(nearest_inside(kL, {2.5, 4}), (Vec2{2, 4}));
        QCOMPARE(nearest_inside(kL, {3.5, 2.25}), (Vec2{3.5, 2}));
    }

    void risersByHand() {
        Stage stage;
        stage.risers = {{"a", "", {{0, 0}, {2, 0}, {2, 2}, {0, 2}}, 0.2, {}},
                        {"b", "", {{1, 0}, {3, 0}, {3, 2}, {1, 2}}, 0.4, {}}};
        QCOMPARE(riser_height_at(stage, {0.5, 1}), 0.2);
        QCOMPARE(riser_height_at(stage, {1.5, 1}), 0.4);  // of several the highest
        QCOMPARE(riser_height_at(stage, {2.0, 2.0}), 0.4);
        QCOMPARE(riser_height_at(stage, {9, 9}), 0.0);
        QCOMPARE(common_riser_height(stage, {0.5, 1}, {1.5, 1}), 0.2);
        QCOMPARE(common_riser_height(stage, {0.5, 1}, {2.5, 1}), 0.0);
    }
};

HOWLMAP_TEST(TestPolygon)
#include "test_polygon.moc"
