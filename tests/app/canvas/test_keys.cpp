// SPDX-License-Identifier: GPL-3.0-or-later
// The plan by keyboard, clipboard and drop.
#include <QAccessible>
#include <QAction>
#include <QClipboard>
#include <QMenu>
#include <QMimeData>
#include <QSet>

#include "app/canvas/plan_actions.h"
#include "app/canvas/plan_clipboard.h"
#include "app/canvas/preset_part.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {
QString s(const char* text) { return QString::fromLatin1(text); }

const QByteArray kPreset =
    R"({"list": "loudspeakers", "name": "Wedge 12 inch", "height_m": 0.25, "item": {"name": "Wedge", "kind": "wedge", "yaw_deg": 180, "pitch_deg": 40,
         "directivity": {"type": "coverage", "horizontal_deg": 90, "vertical_deg": 60, "width_m": 0.5, "height_m": 0.35}}})";
}  // namespace

class TestKeys : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void arrows_nudge_and_merge();
    void undo_waits_for_no_nudge();
    void tab_goes_from_object_to_object();
    void escape_lets_go();
    void the_menu_key_opens_the_menu();
    void a_right_click_selects_what_it_hits();
    void copy_and_paste_make_fresh_objects();
    void the_clipboard_has_text_and_a_drawing();
    void cut_and_paste_bring_sends_back();
    void duplicates_are_selected();
    void a_drop_places_a_preset_there();
    void a_placed_wedge_faces_the_nearest_player_and_joins_her_mix();
    void a_placed_microphone_belongs_to_the_nearest_player();
    void a_bad_preset_changes_nothing();
    void all_by_keys_alone();
    void actions_explain_themselves_and_do_not_clash();
    void objects_have_accessible_names();
    void focus_shows();
    void every_step_can_be_undone();
};

void TestKeys::arrows_nudge_and_merge() {
    Stage_fixture f;
    f.selection.set({s("w1")});
    for (int i = 0; i < 3; ++i) QTest::keyClick(&f.view, Qt::Key_Right);
    QTest::keyClick(&f.view, Qt::Key_Up, Qt::ShiftModifier);
    QVERIFY(std::abs(f.loudspeaker("w1").position.x + 1.47) < 1e-9);
    QVERIFY(std::abs(f.loudspeaker("w1").position.y - 1.10) < 1e-9);
    QTRY_COMPARE(f.steps(), 1);
    QCOMPARE(f.document.undo_stack().undoText(), s("Nudge Wedge w1"));
    f.document.undo_stack().undo();
    QCOMPARE(f.loudspeaker("w1").position.x, -1.5);
}

void TestKeys::undo_waits_for_no_nudge() {
    Stage_fixture f;
    f.selection.set({s("w1")});
    QTest::keyClick(&f.view, Qt::Key_Right);
    QVERIFY(f.document.in_gesture());
    QTest::keyClick(&f.view, Qt::Key_Z, Qt::ControlModifier);  // whoever owns undo: the step is there before
    QVERIFY(!f.document.in_gesture());
    QCOMPARE(f.steps(), 1);
}

void TestKeys::tab_goes_from_object_to_object() {
    Stage_fixture f;
    f.view.setFocus();
    QSet<QString> seen;
    for (int i = 0; i < 5; ++i) {
        QTest::keyClick(&f.view, Qt::Key_Tab);
        QCOMPARE(f.selection.ids().size(), 1);
        seen.insert(f.selection.ids().front());
    }
    QCOMPARE(seen.size(), 5);
    const QString last = f.selection.ids().front();
    QTest::keyClick(&f.view, Qt::Key_Backtab, Qt::ShiftModifier);
    QVERIFY(f.selection.ids().front() != last);
}

void TestKeys::escape_lets_go() {
    Stage_fixture f;
    f.view.set_tool(ToolKind::measure);
    f.selection.set({s("w1")});
    QTest::keyClick(&f.view, Qt::Key_Escape);
    QCOMPARE(f.view.tool(), ToolKind::select);
    QCOMPARE(f.selection.ids().size(), 1);
    QTest::keyClick(&f.view, Qt::Key_Escape);
    QVERIFY(f.selection.ids().isEmpty());
}

void TestKeys::the_menu_key_opens_the_menu() {
    Stage_fixture f;
    f.selection.set({s("w1")});
    QTest::keyClick(&f.view, Qt::Key_F10, Qt::ShiftModifier);
    auto* menu = f.view.findChild<QMenu*>();
    QVERIFY(menu && menu->isVisible());
    QVERIFY(menu->actions().contains(f.view.plan_actions().duplicate));
    menu->close();
}

void TestKeys::a_right_click_selects_what_it_hits() {
    Stage_fixture f;
    QContextMenuEvent click(QContextMenuEvent::Mouse, f.at(1.5, 1.0), f.port()->mapToGlobal(f.at(1.5, 1.0)));
    QCoreApplication::sendEvent(f.port(), &click);
    QCOMPARE(f.selection.ids(), QStringList({s("w2")}));
    auto* menu = f.view.findChild<QMenu*>();
    QVERIFY(menu && menu->isVisible());
    menu->close();
}

void TestKeys::copy_and_paste_make_fresh_objects() {
    Stage_fixture f;
    f.selection.set({s("w1"), s("m1"), s("p1")});
    f.view.copy();
    f.view.paste();
    QCOMPARE(f.document.show().loudspeakers.size(), std::size_t{3});
    QCOMPARE(f.steps(), 1);
    const Input& twin = f.document.show().inputs.back();
    QCOMPARE(twin.performer, f.document.show().performers.back().id);
    QVERIFY(twin.performer != "p1");
    QVERIFY(std::abs(f.document.show().loudspeakers.back().position.x + 1.25) < 1e-9);
    f.view.paste();
    QVERIFY(std::abs(f.document.show().loudspeakers.back().position.x + 1.0) < 1e-9);
}

void TestKeys::the_clipboard_has_text_and_a_drawing() {
    Stage_fixture f;
    f.selection.set({s("w1"), s("m1")});
    f.view.copy();
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    QVERIFY(mime->hasFormat(part_mime_type()));
    QVERIFY(mime->text().contains(s("Wedge w1")));
    QVERIFY(mime->data(s("image/svg+xml")).contains("<svg"));
    QVERIFY(mime->hasImage());
}

void TestKeys::cut_and_paste_bring_sends_back() {
    Stage_fixture f;
    f.selection.set({s("m1")});
    f.view.cut();
    QVERIFY(f.document.show().inputs.empty() && f.document.show().mixes.front().sends.empty());
    f.view.paste();
    QCOMPARE(f.document.show().mixes.front().sends.size(), std::size_t{1});
    QCOMPARE(f.document.show().mixes.front().sends.front().level_db, 96.0);
}

void TestKeys::duplicates_are_selected() {
    Stage_fixture f;
    f.selection.set({s("w2")});
    f.view.duplicate_selected();
    QCOMPARE(f.selection.ids().size(), 1);
    QVERIFY(f.selection.ids().front() != s("w2"));
    QCOMPARE(f.steps(), 1);
    f.document.undo_stack().undo();
    QCOMPARE(f.document.show().loudspeakers.size(), std::size_t{2});
}

void TestKeys::a_drop_places_a_preset_there() {
    Stage_fixture f;
    QMimeData mime;
    mime.setData(preset_mime_type(), kPreset);
    const QPoint at = f.at(0.5, 4.0);
    QDragEnterEvent enter(at, Qt::CopyAction, &mime, Qt::LeftButton, {});
    QCoreApplication::sendEvent(f.port(), &enter);
    QVERIFY(enter.isAccepted());
    QDropEvent drop(at, Qt::CopyAction, &mime, Qt::LeftButton, {});
    QCoreApplication::sendEvent(f.port(), &drop);
    const Loudspeaker& placed = f.document.show().loudspeakers.back();
    QVERIFY(std::abs(placed.position.x - 0.5) < 0.011 && std::abs(placed.position.y - 4.0) < 0.011);
    QCOMPARE(placed.position.z, 0.25);
    QCOMPARE(f.steps(), 1);
    QCOMPARE(f.document.undo_stack().undoText(), s("Place Wedge"));
    QCOMPARE(f.selection.ids().front().toStdString(), placed.id);
}

void TestKeys::a_placed_wedge_faces_the_nearest_player_and_joins_her_mix() {
    Stage_fixture f;
    const Show before = f.document.show();
    QVERIFY(f.view.place(kPreset, Vec2{-2.5, 2.0}));
    const Loudspeaker& placed = f.document.show().loudspeakers.back();
    // From (-2.5, 2) to the singer at (-1.5, 3): half way between upstage and stage left.
    QVERIFY2(std::abs(placed.aim.yaw_deg - 135.0) < 0.5 || std::abs(placed.aim.yaw_deg + 225.0) < 0.5,
             qPrintable(QString::number(placed.aim.yaw_deg)));
    QCOMPARE(placed.aim.pitch_deg, 40.0);
    QCOMPARE(f.document.show().mixes.front().loudspeakers, (std::vector<std::string>{"w1", placed.id}));
    QCOMPARE(f.steps(), 1);
    f.document.undo_stack().undo();
    QVERIFY(f.document.show() == before);
}

void TestKeys::a_placed_microphone_belongs_to_the_nearest_player() {
    Show show = small_stage();
    Performer far;
    far.id = "far";
    far.name = "Bass";
    far.position = {2.0, 2.0};
    show.performers.push_back(far);
    Stage_fixture f(show);
    const Show before = f.document.show();
    const QByteArray preset =
        R"({"list": "inputs", "name": "Vocal", "height_m": 1.6, "item": {"name": "Vocal", "kind": "microphone", "yaw_deg": 0, "pitch_deg": -20,
            "microphone": {"pattern": "cardioid"}}})";
    QVERIFY(f.view.place(preset, Vec2{2.0, 1.5}));
    const Input& placed = f.document.show().inputs.back();
    QCOMPARE(placed.performer, std::string("far"));
    QVERIFY2(std::abs(std::abs(placed.aim.yaw_deg) - 180.0) < 0.5, qPrintable(QString::number(placed.aim.yaw_deg)));
    QCOMPARE(f.steps(), 1);
    f.document.undo_stack().undo();
    QVERIFY(f.document.show() == before);
}

void TestKeys::a_bad_preset_changes_nothing() {
    Stage_fixture f;
    QSignalSpy said(&f.view, &PlanView::message);
    const Show before = f.document.show();
    for (const char* bad :
         {"", "{", "{}", R"({"list": "loudspeakers", "item": {"kind": "teapot"}})", R"({"list": 3, "item": []})"})
        QVERIFY(!f.view.place(QByteArray(bad)));
    QVERIFY(f.document.show() == before);
    QCOMPARE(said.count(), 5);
}

void TestKeys::all_by_keys_alone() {
    Stage_fixture f;
    f.view.place(kPreset);
    QTest::keyClick(&f.view, Qt::Key_BracketLeft);
    QTest::keyClick(&f.view, Qt::Key_Right, Qt::ShiftModifier);
    f.view.plan_actions().duplicate->trigger();
    QCOMPARE(f.document.show().loudspeakers.size(), std::size_t{4});
    QTest::keyClick(&f.view, Qt::Key_Delete);
    QCOMPARE(f.document.show().loudspeakers.size(), std::size_t{3});
    QVERIFY(f.selection.ids().isEmpty());
}

void TestKeys::actions_explain_themselves_and_do_not_clash() {
    Stage_fixture f;
    QSet<QString> keys;
    for (const QAction* action : f.view.actions()) {
        QVERIFY2(!action->toolTip().isEmpty() && !action->statusTip().isEmpty() && !action->whatsThis().isEmpty(),
                 qPrintable(action->text()));
        const QString key = action->shortcut().toString();
        if (key.isEmpty()) continue;
        QVERIFY2(action->toolTip().contains(action->shortcut().toString(QKeySequence::NativeText)),
                 qPrintable(action->toolTip()));
        QVERIFY2(!keys.contains(key), qPrintable(key));
        keys.insert(key);
    }
    QVERIFY(keys.size() > 15);
}

void TestKeys::objects_have_accessible_names() {
    Stage_fixture f;
    QAccessibleInterface* plan = QAccessible::queryAccessibleInterface(&f.view);
    QVERIFY(plan);
    QCOMPARE(plan->childCount(), 5);
    QStringList names;
    for (int i = 0; i < plan->childCount(); ++i) {
        names.append(plan->child(i)->text(QAccessible::Name));
        QVERIFY(plan->child(i)->text(QAccessible::Value).contains(s("x ")));
        QVERIFY(!plan->child(i)->rect().isEmpty());
        QCOMPARE(plan->indexOfChild(plan->child(i)), i);
    }
    QVERIFY2(names.contains(s("Wedge w1, loudspeaker")), qPrintable(names.join(u'|')));
    f.selection.set({s("w1")});
    QVERIFY(plan->child(static_cast<int>(names.indexOf(s("Wedge w1, loudspeaker"))))->state().selected);
}

void TestKeys::focus_shows() {
    Stage_fixture f;
    f.view.clearFocus();
    const QImage without = f.view.grab().toImage();
    qApp->setActiveWindow(&f.view);
    f.view.setFocus();
    const QImage with = f.view.grab().toImage();
    int differ = 0;
    for (int y = 0; y < with.height(); ++y)
        for (int x = 0; x < with.width(); ++x) differ += with.pixel(x, y) != without.pixel(x, y) ? 1 : 0;
    QVERIFY(differ >= 200);
}

void TestKeys::every_step_can_be_undone() {
    Stage_fixture f;
    const Show first = f.document.show();
    f.view.select_all();
    f.view.mirror_selected();
    f.view.turn_selected(30.0);
    f.view.align_selected(AlignTo::middle);
    f.view.spread_selected(SpreadAlong::across);
    f.view.duplicate_selected();
    f.view.set_selected_locked(true);
    f.view.select_all();
    f.view.remove_selected();
    const Show last = f.document.show();
    QVERIFY(f.steps() >= 6);
    while (f.document.undo_stack().canUndo()) f.document.undo_stack().undo();
    QVERIFY(f.document.show() == first);
    while (f.document.undo_stack().canRedo()) f.document.undo_stack().redo();
    QVERIFY(f.document.show() == last);
}

HOWLMAP_TEST(TestKeys)

}  // namespace howlmap::app

#include "test_keys.moc"
