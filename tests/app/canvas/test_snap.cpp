// SPDX-License-Identifier: GPL-3.0-or-later
// Edges of the stage and of risers, and walls: things come to rest there, with a guide, unless Alt is held.
#include <cmath>

#include "app/canvas/items/guides.h"
#include "app/canvas/tools/snap_edges.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {

/// Edges that lie on no line of the grid, so that only the edge can be what pulls.
inline Show stage_off_the_grid() {
    Show show = small_stage();
    show.stage.outline = {{-4.033, -0.017}, {4.033, -0.017}, {4.033, 6.017}, {-4.033, 6.017}};
    show.stage.risers.front().outline = {{1.027, 3.023}, {3.027, 3.023}, {3.027, 5.023}, {1.027, 5.023}};
    show.stage.surfaces.back = Surface{5.867, 0.1, {}};
    return show;
}

class TestSnap : public QObject {
    Q_OBJECT

    static SnapField field_with(std::vector<SnapEdge> edges, Box2 sides = {}) {
        SnapField field;
        field.edges = std::move(edges);
        field.sides = sides;
        return field;
    }
    /// Takes hold at one place and holds at another, so that the guides can be seen; `release` lets go.
    static void hold(Stage_fixture& f, QPoint from, QPoint to, Qt::KeyboardModifiers keys = {}) {
        QTest::mousePress(f.port(), Qt::LeftButton, keys, from);
        for (int i = 1; i <= 8; ++i) f.move_to(from + (to - from) * i / 8, keys);
    }
    static void release(Stage_fixture& f, QPoint at) { QTest::mouseRelease(f.port(), Qt::LeftButton, {}, at); }
    static bool guided_along(Stage_fixture& f, QPointF from, QPointF to) {
        for (const QLineF& line : f.view.guides().lines())
            if (line == QLineF(from, to) || line == QLineF(to, from)) return true;
        return false;
    }

  private Q_SLOTS:
    void an_edge_alongside_wins_over_the_grid() {
        const SnapField field = field_with({{{2.037, 1.0}, {2.037, 3.0}}});
        const Snapped beside = snapped({2.07, 1.52}, field);
        QCOMPARE(beside.at.x, 2.037);
        QCOMPARE(beside.at.y, 1.5);
        QCOMPARE(beside.edges.size(), std::size_t{1});
        const Snapped past_its_end = snapped({2.07, 3.52}, field);
        QCOMPARE(past_its_end.at.x, 2.1);
        QVERIFY(past_its_end.edges.empty());
        QCOMPARE(snapped({2.07 + field.reach, 1.52}, field).at.x, 2.1);
    }

    void sides_come_to_rest_at_an_edge() {
        const SnapField field = field_with({{{-4.0, 0.0}, {4.0, 0.0}}}, {{-0.3, -0.237}, {0.3, 0.2}});
        const Snapped front = snapped({1.0, 0.22}, field);
        QCOMPARE(front.at.y, 0.237);
        QCOMPARE(snapped({1.0, -0.24}, field).at.y, -0.2);   // its back to the edge, from the other side
        QCOMPARE(snapped({4.25, 0.22}, field).at.y, 0.237);  // a part of it is still beside the edge
        QCOMPARE(snapped({4.5, 0.22}, field).at.y, 0.2);
    }

    void an_edge_aslant_holds_the_place() {
        const SnapField field = field_with({{{1.0, 1.0}, {2.0, 2.0}}});
        const Snapped on = snapped({1.53, 1.49}, field);
        QCOMPARE(on.at.x, 1.51);
        QCOMPARE(on.at.y, 1.51);
        QCOMPARE(snapped({1.6, 1.4}, field).at.x, 1.6);
    }

    void walls_and_what_stays_pull() {
        const Show show = stage_off_the_grid();
        QCOMPARE(snap_edges(show, {}).size(), std::size_t{4 + 4 + 1});
        QCOMPARE(snap_edges(show, {"riser"}).size(), std::size_t{4 + 1});
        QCOMPARE(snap_edges(show, {""}).size(), std::size_t{4 + 1});
        const Box2 riser = snap_sides(show, "riser");
        QVERIFY(std::abs(riser.low.x + 1.0) < 1e-3 && std::abs(riser.high.y - 1.0) < 1e-3);
        QCOMPARE(snap_sides(show, "p1"), Box2());
        const Box2 wedge = snap_sides(show, "w1");
        QVERIFY(wedge.high.x > 0.2 && wedge.high.x < 0.6 && wedge.low.y < -0.1);
    }

    void a_player_stops_at_the_edge_of_a_riser() {
        Stage_fixture f(stage_off_the_grid());
        const QPoint from = f.at(-1.5, 3.0), to = f.at(1.05, 4.03);
        f.selection.set({QStringLiteral("p1")});
        hold(f, from, to);
        QVERIFY(guided_along(f, {1.027, -3.023}, {1.027, -5.023}));
        release(f, to);
        QVERIFY(f.view.guides().lines().empty());
        QCOMPARE(f.document.show().performers.front().position.x, 1.027);
    }

    void alt_lets_go_of_the_edge() {
        Stage_fixture f(stage_off_the_grid());
        const QPoint from = f.at(-1.5, 3.0), to = f.at(1.05, 4.03);
        f.selection.set({QStringLiteral("p1")});
        hold(f, from, to, Qt::AltModifier);
        QVERIFY(f.view.guides().lines().empty());
        QTest::mouseRelease(f.port(), Qt::LeftButton, Qt::AltModifier, to);
        QVERIFY(std::abs(f.document.show().performers.front().position.x - 1.05) < 0.011);
    }

    void a_wedge_stands_flush_with_the_front_edge() {
        Stage_fixture f(stage_off_the_grid());
        const double flush = -0.017 - snap_sides(f.document.show(), "w1").low.y;
        const QPoint from = f.at(-1.5, 1.0), to = f.at(-1.5, flush + 0.02);
        hold(f, from, to);
        QVERIFY(guided_along(f, {-4.033, 0.017}, {4.033, 0.017}));
        release(f, to);
        QVERIFY(std::abs(f.loudspeaker("w1").position.y - flush) < 0.0006);
    }

    void a_riser_goes_against_the_wall() {
        Stage_fixture f(stage_off_the_grid());
        const QPoint from = f.at(2.0, 4.0), to = from + f.at(0, 0.85) - f.at(0, 0);
        hold(f, from, to);
        QVERIFY(guided_along(f, {-4.033, -5.867}, {4.033, -5.867}));
        release(f, to);
        const Outline& riser = f.document.show().stage.risers.front().outline;
        QVERIFY2(std::abs(riser[2].y - 5.867) < 0.0006, qPrintable(QString::number(riser[2].y)));
    }

    void a_corner_is_pulled_onto_a_wall() {
        Stage_fixture f(stage_off_the_grid());
        f.selection.set({QStringLiteral("riser")});
        QCoreApplication::processEvents();
        const QPoint from = f.at(3.027, 5.023), to = f.at(3.31, 5.85);
        hold(f, from, to);
        QVERIFY(guided_along(f, {-4.033, -5.867}, {4.033, -5.867}));
        release(f, to);
        QCOMPARE(f.document.show().stage.risers.front().outline[2].y, 5.867);
    }
};

HOWLMAP_TEST(TestSnap)

}  // namespace howlmap::app

#include "test_snap.moc"
