// SPDX-License-Identifier: GPL-3.0-or-later
// Maps, loop lines, lobes and ghosts on the plan; zoom and furniture.
#include <QComboBox>
#include <QSlider>
#include <cmath>

#include "app/canvas/overlay/ghost_item.h"
#include "app/canvas/overlay/lobe_layer.h"
#include "app/canvas/overlay/plan_layers.h"
#include "app/canvas/plan_furniture.h"
#include "app/canvas/tools/snap.h"
#include "app/export/ground.h"
#include "app/export/reading_text.h"
#include "app/export/scale_bar.h"
#include "app/settings/figures.h"
#include "app/window/overlay_look.h"
#include "core/units/bands.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {
QString text_of(const char* text) { return QString::fromLatin1(text); }

bool has_lines(const PlanView& view) { return !const_cast<PlanView&>(view).layers().loops().empty(); }
}  // namespace

class TestLayers : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void a_feedback_map_appears_and_follows();
    void a_map_of_nothing_says_why();
    void the_map_has_the_numbers_of_a_map_from_scratch();
    void the_reading_is_that_of_the_cell_under_the_pointer();
    void the_legend_lies_beside_the_stage();
    void another_frequency_keeps_the_picture_until_its_own();
    void a_drag_is_followed_by_the_last_place();
    void frequency_and_opacity_are_chosen_in_the_bar();
    void an_unstable_rest_says_so();
    void loops_run_from_loudspeaker_to_microphone();
    void a_highlighted_ring_is_lit_and_labelled();
    void lobes_of_the_selection_with_nulls();
    void a_ghost_shows_only_what_moves();
    void the_whole_plan_fits();
    void the_scale_bar_is_true();
    void snapping_pulls_to_lines();
    void figures_of_the_measuring_tool();
    void nothing_in_view_stays_from_another_show();
};

void TestLayers::a_feedback_map_appears_and_follows() {
    Stage_fixture f;
    f.view.set_overlay({OverlayKind::feedback, text_of("m1"), {}, 0.85, {}});
    MapService& maps = f.view.layers().maps();
    QTRY_VERIFY_WITH_TIMEOUT(maps.settled() && maps.picture(), 30000);
    const auto first = maps.picture();
    QVERIFY(!first->image.isNull());
    QVERIFY(maps.trouble().isEmpty());
    // Outside the stage there is no colour.
    QCOMPARE(map_reading(*first->grid, {5.0, 3.0}), QString());
    QVERIFY(map_reading(*first->grid, {0.0, 3.0}).contains(text_of("dB")));
    f.document.edit(text_of("Move"), [](Show& show) { move_by(show, {"w1"}, {1.0, 1.0}); });
    QTRY_VERIFY_WITH_TIMEOUT(maps.settled(), 30000);
    QVERIFY(!(maps.picture()->grid->value == first->grid->value));
    f.view.set_overlay({});
    QVERIFY(!maps.picture());
}

void TestLayers::a_map_of_nothing_says_why() {
    Stage_fixture f;
    f.view.set_overlay({OverlayKind::feedback, text_of("nobody"), {}, 0.85, {}});
    MapService& maps = f.view.layers().maps();
    QTRY_VERIFY_WITH_TIMEOUT(!maps.trouble().isEmpty(), 30000);
    QVERIFY(!maps.picture());
}

void TestLayers::the_map_has_the_numbers_of_a_map_from_scratch() {
    Stage_fixture f;
    const auto same = [](const std::vector<float>& a, const std::vector<float>& b) {
        return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                          [](float x, float y) { return x == y || (std::isnan(x) && std::isnan(y)); });
    };
    const std::pair<OverlayChoice, MapRequest> all[] = {
        {{OverlayKind::feedback, text_of("m1"), {}, 0.85, {}}, {MapKind::feedback, "m1", {}}},
        {{OverlayKind::loudspeaker, text_of("w1"), {}, 0.85, {}}, {MapKind::loudspeaker, "w1", {}}},
        {{OverlayKind::level, text_of("mix"), 17, 0.85, {}}, {MapKind::level, "mix", {.band = 17}}},
        {{OverlayKind::wash, {}, {}, 0.85, {}}, {MapKind::wash, "", {}}}};
    MapService& maps = f.view.layers().maps();
    for (const auto& [choice, request] : all) {
        f.view.set_overlay(choice);
        QTRY_VERIFY_WITH_TIMEOUT(maps.settled() && maps.picture(), 30000);
        const auto scratch = make_map(f.document.show(), request);
        QVERIFY(scratch);
        QVERIFY(same(maps.picture()->grid->value, scratch->value));
        QVERIFY(same(maps.picture()->grid->worst_hz, scratch->worst_hz));
        QVERIFY(!maps.picture()->title.isEmpty());
        // Clear outside the outline of the stage, for the wash outside the house.
        QCOMPARE(map_reading(*maps.picture()->grid, {0.0, -2.0}).isEmpty(), choice.kind != OverlayKind::wash);
    }
}

void TestLayers::the_reading_is_that_of_the_cell_under_the_pointer() {
    Stage_fixture f;
    f.view.set_overlay({OverlayKind::feedback, text_of("m1"), {}, 0.85, {}});
    MapService& maps = f.view.layers().maps();
    QTRY_VERIFY_WITH_TIMEOUT(maps.settled() && maps.picture(), 30000);
    QSignalSpy said(&f.view, &PlanView::pointer_reading);
    const QPoint at = f.at(-0.5, 3.0);
    QTest::mouseMove(f.port(), at + QPoint(3, 0));
    QTest::mouseMove(f.port(), at);
    QVERIFY(!said.isEmpty());
    const MapGrid& grid = *maps.picture()->grid;
    const auto cell = cell_at(grid, f.view.plan_point(at));
    QVERIFY(cell);
    const QString text = said.last().front().toString();
    QVERIFY2(text.contains(QString::number(static_cast<double>(grid.value[*cell]), 'f', 1)), qPrintable(text));
    QVERIFY2(text.contains(hz_text(static_cast<double>(grid.worst_hz[*cell]))), qPrintable(text));
}

void TestLayers::the_legend_lies_beside_the_stage() {
    Stage_fixture f;
    const auto furniture = f.view.findChild<PlanFurniture*>();
    for (const QSize size : {QSize(640, 400), QSize(700, 300), QSize(900, 500)}) {
        f.view.set_overlay({});
        f.view.resize(size);
        f.view.zoom_fit();
        f.view.set_overlay({OverlayKind::feedback, text_of("m1"), {}, 0.85, {}});
        QTRY_VERIFY_WITH_TIMEOUT(!furniture->legend().isEmpty(), 30000);
        const QRectF stage = f.view.viewportTransform().mapRect(extent_of(f.document.show()));
        const QRectF covered = furniture->legend() & stage;
        QVERIFY2(covered.height() < 2.0, qPrintable(QString::number(covered.height())));
        QVERIFY(QRectF(f.view.viewport()->rect()).adjusted(-1, -1, 1, 1).contains(stage));
    }
}

void TestLayers::another_frequency_keeps_the_picture_until_its_own() {
    Stage_fixture f;
    MapService& maps = f.view.layers().maps();
    f.view.set_overlay({OverlayKind::feedback, text_of("m1"), {}, 0.85, {}});
    QTRY_VERIFY_WITH_TIMEOUT(maps.settled() && maps.picture(), 30000);
    const auto worst = maps.picture();
    f.view.set_overlay({OverlayKind::feedback, text_of("m1"), {}, 0.85, 500.0});
    QCOMPARE(maps.picture(), worst);
    QTRY_VERIFY_WITH_TIMEOUT(maps.settled() && maps.picture() != worst, 30000);
    const MapGrid& grid = *maps.picture()->grid;
    const auto cell = cell_at(grid, {0.0, 3.0});
    QVERIFY(cell && std::abs(grid.worst_hz[*cell] - 500.0F) < 0.01F);
    QVERIFY(grid.value[*cell] >= worst->grid->value[*cell] - 0.01F);
}

void TestLayers::a_drag_is_followed_by_the_last_place() {
    Stage_fixture f;
    MapService& maps = f.view.layers().maps();
    f.view.set_overlay({OverlayKind::feedback, text_of("m1"), {}, 0.85, {}});
    for (int i = 0; i < 20; ++i) {
        f.document.edit(text_of("Move"), [](Show& show) { move_by(show, {"w1"}, {0.05, 0.0}); });
        QCoreApplication::processEvents();
    }
    QTRY_VERIFY_WITH_TIMEOUT(maps.settled() && maps.picture(), 30000);
    const auto scratch = feedback_map(f.document.show(), "m1");
    const auto cell = cell_at(*scratch, {0.0, 3.0});
    QVERIFY(cell);
    QCOMPARE(maps.picture()->grid->step, scratch->step);
    QCOMPARE(maps.picture()->grid->value[*cell], scratch->value[*cell]);
}

void TestLayers::frequency_and_opacity_are_chosen_in_the_bar() {
    Stage_fixture f;
    OverlayLook look(f.view, nullptr);
    f.view.set_overlay({OverlayKind::feedback, text_of("m1"), {}, 0.85, {}});
    auto* bands = look.findChild<QComboBox*>();
    QCOMPARE(bands->count(), 2 + kThirdOctaves);
    QCOMPARE(bands->currentIndex(), 0);  // worst of all
    const auto sliders = look.findChildren<QSlider*>();
    QCOMPARE(sliders.size(), 2);
    for (QSlider* slider : sliders) slider->setValue(slider->maximum());
    QCOMPARE(f.view.overlay().hz, std::optional(20000.0));
    QCOMPARE(f.view.overlay().opacity, 1.0);
    bands->setCurrentIndex(2 + 17);
    Q_EMIT bands->activated(2 + 17);
    QCOMPARE(f.view.overlay().band, std::optional(17));
    QVERIFY(!f.view.overlay().hz);
    f.view.set_overlay({OverlayKind::level, text_of("mix"), {}, 0.5, {}});
    QCOMPARE(bands->count(), 1 + kThirdOctaves);
}

void TestLayers::an_unstable_rest_says_so() {
    Show show = small_stage();
    show.inputs.push_back(microphone("m2", 2, {1.5, 1.4}));
    show.mixes.front().loudspeakers = {"w1", "w2"};
    show.mixes.front().sends.push_back({"m2", 130.0, {}});
    Stage_fixture f(show);
    f.view.set_overlay({OverlayKind::feedback, text_of("m1"), {}, 0.85, {}});
    MapService& maps = f.view.layers().maps();
    QTRY_VERIFY_WITH_TIMEOUT(maps.settled(), 30000);
    QVERIFY2(maps.trouble().contains(text_of("rings already")), qPrintable(maps.trouble()));
    QVERIFY(!maps.picture() || maps.picture()->image.isNull());
}

void TestLayers::loops_run_from_loudspeaker_to_microphone() {
    Stage_fixture f;
    QTRY_VERIFY_WITH_TIMEOUT(has_lines(f.view), 30000);
    const LoopLine line = f.view.layers().loops().back();
    QCOMPARE(line.loudspeaker, std::string("w1"));
    QCOMPARE(line.input, std::string("m1"));
    QCOMPARE(line.page.p1(), QPointF(-1.5, -1.0));
    QCOMPARE(line.page.p2(), QPointF(-1.5, -2.5));
    QVERIFY(!line.lit && !line.labelled);
}

void TestLayers::a_highlighted_ring_is_lit_and_labelled() {
    Stage_fixture f;
    QTRY_VERIFY_WITH_TIMEOUT(f.analysis.result() && !f.analysis.result()->rings.empty(), 30000);
    const Ring ring = f.analysis.result()->rings.front();
    f.view.set_highlight(ring);
    QTRY_VERIFY(has_lines(f.view) && f.view.layers().loops().back().lit);
    QVERIFY(f.view.layers().loops().back().labelled);
    QCOMPARE(f.view.layers().loops().back().hz, ring.hz);
    QCOMPARE(f.view.shown_frequency(), ring.hz);
    QSignalSpy told(&f.view, &PlanView::shown_frequency_changed);
    OverlayChoice choice{OverlayKind::feedback, text_of("m1"), {}, 0.85, 500.0};
    f.view.set_overlay(choice);
    QCOMPARE(f.view.shown_frequency(), 500.0);
    choice.hz.reset();
    choice.band = 20;  // 2 kHz by IEC 61260-1
    f.view.set_overlay(choice);
    QVERIFY(std::abs(f.view.shown_frequency() - 1995.26) < 0.01);
    QCOMPARE(told.count(), 2);
    f.view.set_overlay({});
    QCOMPARE(f.view.shown_frequency(), ring.hz);
    f.view.set_highlight(std::nullopt);
    QTRY_VERIFY(!f.view.layers().loops().back().lit);
}

/// Source: a supercardioid a = 0.37 has its nulls where 0.37 + 0.63 cos = 0, at 126 degrees (Eargle, The Microphone
/// Book).
void TestLayers::lobes_of_the_selection_with_nulls() {
    Show show = small_stage();
    std::get<Microphone>(show.inputs.front().transducer).pattern = PatternName::supercardioid;
    Stage_fixture f(show);
    f.selection.set({text_of("m1")});
    const LobeItem& item = f.view.layers().lobes();
    QCOMPARE(item.lobes().size(), std::size_t{1});
    const Lobe& lobe = item.lobes().front();
    QCOMPARE(lobe.nulls.size(), std::size_t{2});
    for (const QLineF& ray : lobe.nulls) {
        const Vec2 away = to_plan(ray.p2()) - to_plan(ray.p1());
        const double yaw = degrees(std::atan2(away.x, -away.y));
        QVERIFY2(std::abs(std::abs(turn_degrees(180.0, yaw)) - 126.0) <= 2.0, qPrintable(QString::number(yaw)));
    }
    f.selection.set({text_of("p1")});
    QVERIFY(item.lobes().empty());
}

void TestLayers::a_ghost_shows_only_what_moves() {
    Stage_fixture f;
    Show ghost = f.document.show();
    move_by(ghost, {"w1"}, {0.5, 0.0});
    f.view.set_ghost(ghost);
    QCOMPARE(f.view.layers().ghost().looks().size(), std::size_t{1});
    QCOMPARE(f.view.layers().ghost().looks().front().id, text_of("w1"));
    f.view.set_ghost(std::nullopt);
    QVERIFY(f.view.layers().ghost().looks().empty());
}

void TestLayers::the_whole_plan_fits() {
    Stage_fixture f;
    f.view.zoom_fit();
    const QRect room = f.port()->rect();
    const double margin = 0.02 * room.width();
    for (const QString& id : f.view.plan_scene().ids()) {
        const QRect box = f.view.mapFromScene(f.view.plan_scene().bounds_of({id})).boundingRect();
        QVERIFY(room.adjusted(int(margin), int(margin), -int(margin), -int(margin)).contains(box));
    }
}

void TestLayers::the_scale_bar_is_true() {
    QCOMPARE(scale_bar_length(100.0, Units::metric), 1.0);
    QCOMPARE(scale_bar_length(30.0, Units::metric), 5.0);
    Stage_fixture f;
    const QPoint a = f.at(0, 2), b = f.at(1, 2);
    QCOMPARE(b.x() - a.x(), 100);
}

void TestLayers::snapping_pulls_to_lines() {
    SnapField field;
    field.neighbours = {{1.234, 3.0}};
    const Snapped near = snapped({1.21, 2.96}, field);
    QCOMPARE(near.at.x, 1.234);
    QCOMPARE(near.at.y, 3.0);
    QVERIFY(near.neighbour_x && near.neighbour_y);
    const Snapped centre = snapped({0.04, 1.51}, field);
    QCOMPARE(centre.at.x, 0.0);
    QVERIFY(centre.guide_x && !centre.neighbour_x);
    QCOMPARE(centre.at.y, 1.5);
    const Snapped grid = snapped({1.03, -0.04}, field);
    QCOMPARE(grid.at.x, 1.0);
    QCOMPARE(grid.at.y, 0.0);
    QVERIFY(!grid.guide_x && !grid.guide_y);
}

/// Source: 343.2 m/text_of at 20 degrees (ISO 9613-1): 3.432 m take 10 ms and hold ten waves of 1 kHz.
void TestLayers::figures_of_the_measuring_tool() {
    QLocale::setDefault(QLocale::c());
    const Show show = small_stage();
    const QString text = measure_text(show, {0, 0, 0}, {3.432, 0, 0}, 1000.0);
    QVERIFY2(text.contains(text_of("3.43 m")) && text.contains(text_of("10.0 ms")) &&
                 text.contains(text_of("10.0 waves")) && text.contains(text_of("90")),
             qPrintable(text));
    const QString pair = pair_text(show, "w1", "m1");
    QVERIFY2(pair.startsWith(text_of("Wedge w1 to Voice m1: 2.00 m")) && pair.contains(text_of("axis")),
             qPrintable(pair));
    QCOMPARE(pair_text(show, "w1", "nobody"), QString());
}

void TestLayers::nothing_in_view_stays_from_another_show() {
    Stage_fixture f;
    f.selection.set({text_of("w1")});
    f.view.set_overlay({OverlayKind::feedback, text_of("m1"), {}, 0.85, {}});
    f.document.replace(Show{}, {}, false);
    QCoreApplication::processEvents();
    QVERIFY(f.selection.ids().isEmpty());
    QCOMPARE(f.view.overlay().kind, OverlayKind::none);
    QVERIFY(f.view.plan_scene().ids().isEmpty());
    QTRY_VERIFY(!has_lines(f.view));
    (void)f.view.grab();
}

HOWLMAP_TEST(TestLayers)

}  // namespace howlmap::app

#include "test_layers.moc"
