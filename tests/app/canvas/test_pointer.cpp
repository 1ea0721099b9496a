// SPDX-License-Identifier: GPL-3.0-or-later
// Selecting, moving and turning with the mouse, offscreen, through real events.
#include "app/canvas/items/handles.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestPointer : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void a_click_selects_one();
    void a_click_again_goes_to_what_lies_beneath();
    void control_toggles();
    void the_band_selects_what_lies_inside();
    void shift_adds_to_the_band();
    void a_drag_is_one_step_and_snaps();
    void alt_suspends_snapping();
    void a_group_keeps_its_offsets();
    void escape_cancels_a_drag();
    void the_turn_handle_turns();
    void shift_turns_in_steps();
    void the_wheel_zooms_at_the_pointer();
    void the_middle_button_pans();
    void a_locked_object_stays();
    void a_corner_of_a_riser_moves();
    void the_outline_tool_reshapes_stage_and_walls();
};

void TestPointer::a_click_selects_one() {
    Stage_fixture f;
    QTest::mouseClick(f.port(), Qt::LeftButton, {}, f.at(-1.5, 1.0));
    QCOMPARE(f.selection.ids(), QStringList({QStringLiteral("w1")}));
    QTest::mouseClick(f.port(), Qt::LeftButton, {}, f.at(3.0, 0.5));
    QVERIFY(f.selection.ids().isEmpty());
    QCOMPARE(f.steps(), 0);
}

void TestPointer::a_click_again_goes_to_what_lies_beneath() {
    Show show = small_stage();
    show.inputs.front().position = {-1.5, 3.0, 1.6};  // where the player stands
    Stage_fixture f(show);
    const auto click = [&] {
        QTest::mouseClick(f.port(), Qt::LeftButton, {}, f.at(-1.5, 3.0));
        return f.selection.ids();
    };
    QCOMPARE(click(), QStringList({QStringLiteral("m1")}));
    QCOMPARE(click(), QStringList({QStringLiteral("p1")}));
    f.drag(f.at(-1.5, 3.0), f.at(-1.0, 3.5));  // the selected one follows the hand, not the one on top
    QCOMPARE(f.document.show().performers.front().position, (Vec2{-1.0, 3.5}));
    QCOMPARE(f.document.show().inputs.front().position.x, -1.5);
}

void TestPointer::control_toggles() {
    Stage_fixture f;
    QTest::mouseClick(f.port(), Qt::LeftButton, Qt::ControlModifier, f.at(-1.5, 1.0));
    QTest::mouseClick(f.port(), Qt::LeftButton, Qt::ControlModifier, f.at(1.5, 1.0));
    QCOMPARE(f.selection.ids().size(), 2);
    QTest::mouseClick(f.port(), Qt::LeftButton, Qt::ControlModifier, f.at(-1.5, 1.0));
    QCOMPARE(f.selection.ids(), QStringList({QStringLiteral("w2")}));
}

void TestPointer::the_band_selects_what_lies_inside() {
    Stage_fixture f;
    f.drag(f.at(-3.0, 0.2), f.at(2.5, 1.6));
    QCOMPARE(f.selection.ids(), QStringList({QStringLiteral("w1"), QStringLiteral("w2")}));
    QCOMPARE(f.steps(), 0);
}

void TestPointer::shift_adds_to_the_band() {
    Stage_fixture f;
    f.selection.set({QStringLiteral("p1")});
    f.drag(f.at(-3.0, 0.2), f.at(2.5, 1.6), Qt::ShiftModifier);
    QCOMPARE(f.selection.ids().size(), 3);
}

void TestPointer::a_drag_is_one_step_and_snaps() {
    Stage_fixture f;
    const Show before = f.document.show();
    f.drag(f.at(1.5, 1.0), f.at(2.03, 1.43), {}, 100);
    QCOMPARE(f.steps(), 1);
    QCOMPARE(f.loudspeaker("w2").position.x, 2.0);
    QCOMPARE(f.loudspeaker("w2").position.y, 1.4);
    QCOMPARE(f.document.undo_stack().undoText(), QStringLiteral("Move Wedge w2"));
    f.document.undo_stack().undo();
    QVERIFY(f.document.show() == before);
}

void TestPointer::alt_suspends_snapping() {
    Stage_fixture f;
    f.drag(f.at(1.5, 1.0), f.at(2.03, 1.43), Qt::AltModifier);
    QVERIFY(std::abs(f.loudspeaker("w2").position.x - 2.03) < 0.011);
    QVERIFY(f.loudspeaker("w2").position.x != 2.0);
}

void TestPointer::a_group_keeps_its_offsets() {
    Stage_fixture f;
    f.selection.set({QStringLiteral("w1"), QStringLiteral("w2"), QStringLiteral("riser")});
    f.drag(f.at(1.5, 1.0), f.at(1.93, 1.21), Qt::AltModifier);
    QCOMPARE(f.steps(), 1);
    const Vec3 a = f.loudspeaker("w1").position, b = f.loudspeaker("w2").position;
    QVERIFY(std::abs((b.x - a.x) - 3.0) < 1e-9 && std::abs(b.y - a.y) < 1e-9);
    const Vec2 corner = f.document.show().stage.risers.front().outline.front();
    QVERIFY(std::abs((b.x - corner.x) - 0.5) < 1e-9 && std::abs((b.y - corner.y) + 2.0) < 1e-9);
}

void TestPointer::escape_cancels_a_drag() {
    Stage_fixture f;
    const Show before = f.document.show();
    QTest::mousePress(f.port(), Qt::LeftButton, {}, f.at(1.5, 1.0));
    f.move_to(f.at(2.0, 2.0));
    f.move_to(f.at(2.5, 2.5));
    QVERIFY(!(f.document.show() == before));
    QTest::keyClick(&f.view, Qt::Key_Escape);
    QVERIFY(f.document.show() == before);
    f.move_to(f.at(3.0, 3.0));
    QTest::mouseRelease(f.port(), Qt::LeftButton, {}, f.at(3.0, 3.0));
    QVERIFY(f.document.show() == before);
    QCOMPARE(f.steps(), 0);
}

void TestPointer::the_turn_handle_turns() {
    Stage_fixture f;
    f.selection.set({QStringLiteral("w1")});
    const QPointF handle = f.view.handles().all().front().at;
    const Vec2 from = to_plan(handle), pivot = {-1.5, 1.0};
    const double radius = length(from - pivot);
    f.drag(f.at(from.x, from.y), f.at(pivot.x + radius * 2.0, pivot.y), {}, 20);
    QVERIFY2(std::abs(f.loudspeaker("w1").aim.yaw_deg - 90.0) <= 0.1,
             qPrintable(QString::number(f.loudspeaker("w1").aim.yaw_deg)));
    QCOMPARE(f.steps(), 1);
}

void TestPointer::shift_turns_in_steps() {
    Stage_fixture f;
    f.selection.set({QStringLiteral("w1")});
    const Vec2 from = to_plan(f.view.handles().all().front().at);
    f.drag(f.at(from.x, from.y), f.at(-1.0, 1.37), Qt::ShiftModifier, 20);
    const double yaw = f.loudspeaker("w1").aim.yaw_deg;
    QVERIFY(std::abs(yaw - 180.0) > 1.0);
    QVERIFY(std::abs(yaw / 15.0 - std::round(yaw / 15.0)) < 1e-9);
}

void TestPointer::the_wheel_zooms_at_the_pointer() {
    Stage_fixture f;
    const QPoint pixel = f.at(1.0, 2.0);
    const auto turn = [&](int notches) {
        QWheelEvent event(pixel, f.port()->mapToGlobal(pixel), {}, {0, 120 * notches}, Qt::NoButton, {},
                          Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(f.port(), &event);
    };
    turn(1);
    QVERIFY(std::abs(f.view.pixels_per_metre() - 125.0) < 1e-6);
    const QPoint now = f.at(1.0, 2.0);
    QVERIFY((now - pixel).manhattanLength() <= 2);
    for (int i = 0; i < 100; ++i) turn(1);
    QCOMPARE(f.view.pixels_per_metre(), 4000.0);
    for (int i = 0; i < 200; ++i) turn(-1);
    QCOMPARE(f.view.pixels_per_metre(), 4.0);
}

void TestPointer::the_middle_button_pans() {
    Stage_fixture f;
    f.view.set_tool(ToolKind::select);
    for (int i = 0; i < 6; ++i) f.view.zoom_in();
    const Show before = f.document.show();
    const QPoint was = f.at(0.0, 3.0), from(500, 400);
    QTest::mousePress(f.port(), Qt::MiddleButton, {}, from);
    f.move_to(from + QPoint(25, 0));
    f.move_to(from + QPoint(50, 0));
    QTest::mouseRelease(f.port(), Qt::MiddleButton, {}, from + QPoint(50, 0));
    QCOMPARE(f.at(0.0, 3.0) - was, QPoint(50, 0));
    QVERIFY(f.document.show() == before);
}

void TestPointer::a_locked_object_stays() {
    Stage_fixture f;
    f.selection.set({QStringLiteral("w2")});
    f.view.set_selected_locked(true);
    const Show before = f.document.show();
    f.drag(f.at(1.5, 1.0), f.at(2.5, 2.0));
    QVERIFY(f.document.show() == before);
    f.view.remove_selected();
    QVERIFY(f.document.show() == before);
}

void TestPointer::a_corner_of_a_riser_moves() {
    Stage_fixture f;
    f.selection.set({QStringLiteral("riser")});
    f.drag(f.at(3.0, 5.0), f.at(3.5, 5.5));
    const Vec2 corner = f.document.show().stage.risers.front().outline[2];
    QCOMPARE(corner.x, 3.5);
    QCOMPARE(corner.y, 5.5);
    QCOMPARE(f.steps(), 1);
}

void TestPointer::the_outline_tool_reshapes_stage_and_walls() {
    Show show = small_stage();
    show.stage.surfaces.back = Surface{6.5, 0.1, {}};
    Stage_fixture f(show, {1300, 1100});
    f.view.set_tool(ToolKind::outline);
    f.drag(f.at(4.0, 6.0), f.at(4.4, 5.6));
    QCOMPARE(f.document.show().stage.outline[2], (Vec2{4.4, 5.6}));
    f.drag(f.at(0.0, 0.0), f.at(0.0, -0.5));  // the middle of the front edge becomes a corner
    QCOMPARE(f.document.show().stage.outline.size(), std::size_t{5});
    QTest::mouseDClick(f.port(), Qt::LeftButton, {}, f.at(0.0, -0.5));
    QTest::mouseRelease(f.port(), Qt::LeftButton, {}, f.at(0.0, -0.5));
    QCOMPARE(f.document.show().stage.outline.size(), std::size_t{4});
    const double quarter = -4.0 + 8.4 * 0.25;
    f.drag(f.at(quarter, 6.5), f.at(quarter, 7.0));
    QCOMPARE(f.document.show().stage.surfaces.back->at, 7.0);
    QCOMPARE(f.steps(), 4);
    f.drag(f.at(4.4, 5.6), f.at(-4.4, 5.6));  // would cross itself: the corner stops short
    QVERIFY(is_simple(f.document.show().stage.outline));
}

HOWLMAP_TEST(TestPointer)

}  // namespace howlmap::app

#include "test_pointer.moc"
