// SPDX-License-Identifier: GPL-3.0-or-later
// What the plan says in figures while the hand is on it: a drag, the measuring tool, a loop under the pointer.
#include <QHelpEvent>
#include <QSignalSpy>
#include <QToolTip>
#include <cmath>

#include "app/canvas/drag_reading.h"
#include "app/canvas/overlay/plan_layers.h"
#include "core/analysis/analysis.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

double margin_of(const Show& show) {
    const auto result = analyse(show, {.tolerance = false, .rings = false, .listening = false, .earlier = {}});
    return result && result->margin_db ? *result->margin_db : std::nan("");
}

QString tenth(double db) { return QString::number(std::round(db * 10.0) / 10.0 + 0.0, 'f', 1); }

/// Pixels of the accent, which is the only blue on the page, within 3 pixels of a line between two points.
int accent_along(Stage_fixture& f, QPoint from, QPoint to) {
    const QImage picture = f.port()->grab().toImage();
    const QRect strip = QRect(from, to).normalized().adjusted(-3, -3, 3, 3);
    int found = 0;
    for (int y = strip.top(); y <= strip.bottom(); ++y)
        for (int x = strip.left(); x <= strip.right(); ++x)
            found += qBlue(picture.pixel(x, y)) - qRed(picture.pixel(x, y)) > 40 ? 1 : 0;
    return found;
}

/// Presses, pulls and holds.
void pull(Stage_fixture& f, QPoint from, QPoint to, Qt::KeyboardModifiers keys = {}) {
    QTest::mousePress(f.port(), Qt::LeftButton, keys, from);
    for (int i = 1; i <= 8; ++i) f.move_to(from + (to - from) * i / 8, keys);
}

void let_go(Stage_fixture& f, QPoint at) { QTest::mouseRelease(f.port(), Qt::LeftButton, {}, at); }

QString last_reading(const QSignalSpy& readings) {
    return readings.isEmpty() ? QString() : readings.last()[0].toString();
}

/// The map stands at 1 kHz, so that waves are counted there.
void choose_1_khz(Stage_fixture& f) {
    f.view.set_overlay({OverlayKind::feedback, QStringLiteral("m1"), {}, 0.85, 1000.0});
}

}  // namespace

class TestReadings : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void initTestCase() { QLocale::setDefault(QLocale::c()); }
    void a_drag_says_what_it_endangers_and_what_it_costs();
    void a_drag_of_what_endangers_nothing_says_the_margin_alone();
    void a_reading_stays_within_a_narrow_plan();
    void what_pulled_is_drawn_while_it_pulls();
    void the_centre_line_is_drawn_while_it_pulls();
    void places_are_measured_by_mouse();
    void objects_are_measured_from_their_centres();
    void objects_are_measured_by_keys();
    void what_is_measured_is_followed();
    void a_loop_says_its_figures_under_the_pointer();
};

void TestReadings::a_drag_says_what_it_endangers_and_what_it_costs() {
    Stage_fixture f;
    QTRY_VERIFY_WITH_TIMEOUT(f.analysis.result() && f.analysis.fresh(), 30000);
    const double before = margin_of(f.document.show());
    const DragReading& reading = f.view.reading();
    QVERIFY(!reading.isVisible());
    pull(f, f.at(-1.5, 1.0), f.at(-0.5, 1.0));
    QVERIFY(reading.isVisible());
    QCOMPARE(f.loudspeaker("w1").position, (Vec3{-0.5, 1.0, 0.3}));
    QTRY_VERIFY_WITH_TIMEOUT(f.analysis.fresh(), 30000);
    const double now = margin_of(f.document.show());
    QVERIFY(std::abs(now - before) > 0.5);  // or the test would say nothing
    // By hand: from (-0.5, 1, 0.3) to (-1.5, 2.5, 1.6) it is the root of 1 + 2.25 + 1.69, 2.22 m, said as 2.20; the
    // microphone looks upstage, and the wedge lies 1.5 m of it behind: arccos(-1.5 / 2.2226) = 132.4 degrees.
    QVERIFY2(reading.text().contains(QStringLiteral("Wedge w1 to Voice m1: 2.20 m, 132° off the microphone's axis")),
             qPrintable(reading.text()));
    const QString change = (now < before ? QString() : QStringLiteral("+")) + tenth(now - before);
    QTRY_VERIFY2(reading.text().contains(
                     QStringLiteral("Margin as drawn %1 dB (%2 dB since the start)").arg(tenth(now), change)),
                 qPrintable(reading.text() + u'|' + tenth(now) + u'|' + change));
    QVERIFY(f.view.rect().contains(reading.geometry()));
    let_go(f, f.at(-0.5, 1.0));
    QVERIFY(!reading.isVisible());
}

void TestReadings::a_drag_of_what_endangers_nothing_says_the_margin_alone() {
    Stage_fixture f;
    QTRY_VERIFY_WITH_TIMEOUT(f.analysis.result() && f.analysis.fresh(), 30000);
    pull(f, f.at(1.5, 1.0), f.at(2.5, 1.0));  // nothing is sent to this one
    QVERIFY(f.view.reading().isVisible());
    QVERIFY2(!f.view.reading().text().contains(QStringLiteral("axis")), qPrintable(f.view.reading().text()));
    QTRY_VERIFY2(f.view.reading().text().contains(QStringLiteral("+0.0 dB since the start")),
                 qPrintable(f.view.reading().text()));
    QTest::keyClick(&f.view, Qt::Key_Escape);
    QVERIFY(!f.view.reading().isVisible());
    let_go(f, f.at(2.5, 1.0));
}

void TestReadings::a_reading_stays_within_a_narrow_plan() {
    Stage_fixture f;
    QTRY_VERIFY_WITH_TIMEOUT(f.analysis.result() && f.analysis.fresh(), 30000);
    f.view.resize(560, 360);
    pull(f, f.at(-1.5, 1.0), f.at(-1.0, 1.0));
    const DragReading& reading = f.view.reading();
    QVERIFY(reading.width() < f.view.viewport()->width() && 2 * reading.width() > f.view.viewport()->width());
    for (const int x : {5, 140, 280, 420, 540})
        for (const int y : {5, 170, 330}) {
            f.move_to({x, y});
            QVERIFY2(f.view.viewport()->geometry().contains(reading.geometry()), qPrintable(QString::number(x)));
            QVERIFY(!reading.geometry().contains(f.view.viewport()->mapTo(&f.view, QPoint(x, y))));
        }
    QTest::keyClick(&f.view, Qt::Key_Escape);
    let_go(f, {280, 170});
}

void TestReadings::what_pulled_is_drawn_while_it_pulls() {
    Stage_fixture f;
    const QPoint from = f.at(1.5, 1.0), to = f.at(0.5, 3.03);  // beside the player at (-1.5, 3)
    const auto guide = [&] { return accent_along(f, f.at(-1.0, 3.0), f.at(0.0, 3.0)); };
    QCOMPARE(guide(), 0);
    pull(f, from, to);
    QCOMPARE(f.loudspeaker("w2").position.y, 3.0);
    const int drawn = guide();
    QVERIFY2(drawn > 30, qPrintable(QString::number(drawn)));  // dashes along a metre of 100 pixels
    f.move_to(to, Qt::AltModifier);
    QVERIFY(f.loudspeaker("w2").position.y != 3.0);
    QCOMPARE(guide(), 0);
    f.move_to(to);
    QVERIFY(guide() > 30);
    let_go(f, to);
    QCOMPARE(guide(), 0);
}

void TestReadings::the_centre_line_is_drawn_while_it_pulls() {
    Stage_fixture f;
    const QPoint from = f.at(1.5, 1.0), to = f.at(0.03, 1.7);
    const auto guide = [&] { return accent_along(f, f.at(0.0, 3.5), f.at(0.0, 5.0)); };
    QCOMPARE(guide(), 0);
    pull(f, from, to);
    QCOMPARE(f.loudspeaker("w2").position.x, 0.0);
    QVERIFY(guide() > 45);
    let_go(f, to);
    QCOMPARE(guide(), 0);
}

/// By hand: at 20 degrees sound goes 343.2 m in a second (ISO 9613-1). 3 m across and 4 m upstage are 5 m, take
/// 14.6 ms and hold 14.6 waves of 1 kHz; they lead arctan(3 / -(-4)) to stage left of upstage: 143 degrees of yaw.
void TestReadings::places_are_measured_by_mouse() {
    Stage_fixture f(Show{}, {1100, 900});
    choose_1_khz(f);
    f.view.setFocus();
    QTest::keyClick(&f.view, Qt::Key_M);
    QCOMPARE(f.view.tool(), ToolKind::measure);
    QSignalSpy readings(&f.view, &PlanView::pointer_reading);
    const QPoint from = f.at(-2.0, 1.0), to = f.at(1.0, 5.0);
    pull(f, from, to);
    QCOMPARE(last_reading(readings), QStringLiteral("5.0 m, bearing 143°, 14.6 ms, 14.6 waves at 1.00 kHz"));
    let_go(f, to);
    QCOMPARE(last_reading(readings), QStringLiteral("5.0 m, bearing 143°, 14.6 ms, 14.6 waves at 1.00 kHz"));
    // The line stays to be read, until Esc; a second Esc puts the tool away.
    const QPoint middle = f.at(0.7, 4.6);
    QVERIFY(accent_along(f, middle, middle) > 3);
    QTest::keyClick(&f.view, Qt::Key_Escape);
    QCOMPARE(accent_along(f, middle, middle), 0);
    QCOMPARE(f.view.tool(), ToolKind::measure);
    QTest::keyClick(&f.view, Qt::Key_Escape);
    QCOMPARE(f.view.tool(), ToolKind::select);
    QCOMPARE(f.steps(), 0);
}

/// By hand: from the wedge at (-1.5, 1, 0.3) to the microphone at (-1.5, 2.5, 1.6) it is the root of 2.25 + 1.69,
/// 1.985 m, straight upstage, 5.8 ms and 5.8 waves; on the floor 1.5 m, 4.4 ms and waves.
void TestReadings::objects_are_measured_from_their_centres() {
    Stage_fixture f;
    choose_1_khz(f);
    f.view.set_tool(ToolKind::measure);
    QSignalSpy readings(&f.view, &PlanView::pointer_reading);
    f.drag(f.at(-1.5, 1.0), f.at(-1.5, 2.5));
    QCOMPARE(last_reading(readings), QStringLiteral("1.98 m, bearing 180°, 5.8 ms, 5.8 waves at 1.00 kHz"));
    f.drag(f.at(-1.5, 1.0), f.at(-1.5, 2.5), Qt::AltModifier);
    QCOMPARE(last_reading(readings), QStringLiteral("1.5 m, bearing 180°, 4.4 ms, 4.4 waves at 1.00 kHz"));
    QVERIFY(f.selection.ids().isEmpty());
}

void TestReadings::objects_are_measured_by_keys() {
    Stage_fixture f;
    choose_1_khz(f);
    f.view.setFocus();
    while (f.selection.ids() != QStringList{QStringLiteral("w1")}) QTest::keyClick(&f.view, Qt::Key_Tab);
    QTest::keyClick(&f.view, Qt::Key_M);
    QSignalSpy readings(&f.view, &PlanView::pointer_reading);
    // Upstage comes first: from the wedge back to the microphone, the player and the riser, which is no place.
    QTest::keyClick(&f.view, Qt::Key_Backtab, Qt::ShiftModifier);
    QCOMPARE(f.selection.ids(), QStringList{QStringLiteral("m1")});
    QCOMPARE(last_reading(readings), QStringLiteral("1.98 m, bearing 180°, 5.8 ms, 5.8 waves at 1.00 kHz"));
    QVERIFY(accent_along(f, f.at(-1.5, 1.5), f.at(-1.5, 2.0)) > 30);
    QTest::keyClick(&f.view, Qt::Key_Backtab, Qt::ShiftModifier);
    QCOMPARE(f.selection.ids(), QStringList{QStringLiteral("p1")});
    QVERIFY2(last_reading(readings).contains(QStringLiteral("bearing 180°")) && readings.count() == 2,
             qPrintable(last_reading(readings)));
    // Esc begins anew from where one is.
    QTest::keyClick(&f.view, Qt::Key_Escape);
    QTest::keyClick(&f.view, Qt::Key_Tab);
    QCOMPARE(f.selection.ids(), QStringList{QStringLiteral("m1")});
    QCOMPARE(readings.count(), 3);
    QVERIFY2(last_reading(readings).contains(QStringLiteral("bearing 0°")), qPrintable(last_reading(readings)));
    QCOMPARE(f.steps(), 0);
}

void TestReadings::what_is_measured_is_followed() {
    Stage_fixture f;
    choose_1_khz(f);
    f.view.setFocus();
    f.selection.set({QStringLiteral("m1"), QStringLiteral("w1")});
    QSignalSpy readings(&f.view, &PlanView::pointer_reading);
    QTest::keyClick(&f.view, Qt::Key_M);
    QVERIFY2(last_reading(readings).startsWith(QStringLiteral("1.98 m, bearing 0°")),
             qPrintable(last_reading(readings)));
    f.selection.set({QStringLiteral("w1")});
    for (int i = 0; i < 10; ++i) QTest::keyClick(&f.view, Qt::Key_Down, Qt::ShiftModifier);
    // By hand: now 2.5 m along and 1.3 m up, 2.818 m.
    QCOMPARE(f.loudspeaker("w1").position.y, 0.0);
    QTRY_VERIFY2(last_reading(readings).startsWith(QStringLiteral("2.82 m, bearing 0°")),
                 qPrintable(last_reading(readings)));
    f.document.replace(Show{}, {}, false);
    QCoreApplication::processEvents();
    QCOMPARE(accent_along(f, f.at(-1.5, 0.5), f.at(-1.5, 2.0)), 0);
}

void TestReadings::a_loop_says_its_figures_under_the_pointer() {
    Stage_fixture f;
    QTRY_VERIFY_WITH_TIMEOUT(!f.view.layers().loops().empty(), 30000);
    const auto result = analyse(f.document.show(), {.tolerance = false, .earlier = {}});
    QVERIFY(result && !result->pairs.empty());
    const PairFigure& pair = result->pairs.front();
    QCOMPARE(pair.loudspeaker, std::string("w1"));
    const auto rest_at = [&](QPoint at) {
        QToolTip::hideText();
        (void)QTest::qWaitFor([] { return !QToolTip::isVisible(); });
        QHelpEvent help(QEvent::ToolTip, at, f.port()->mapToGlobal(at));
        QCoreApplication::sendEvent(f.port(), &help);
        return QToolTip::isVisible() ? QToolTip::text() : QString();
    };
    const QString said = rest_at(f.at(-1.5, 1.75));
    QVERIFY2(said.startsWith(QStringLiteral("Wedge w1 to Voice m1: this path alone leaves %1 dB, worst at ")
                                 .arg(tenth(-pair.loop_gain_db))),
             qPrintable(said));
    // "415 Hz" or "2.35 kHz", within half of the last digit.
    const QStringList words = said.split(u' ');
    const double hz = words[words.size() - 2].toDouble() * (words.last() == QStringLiteral("kHz") ? 1000.0 : 1.0);
    QVERIFY2(std::abs(hz - pair.worst_hz) <= 0.006 * pair.worst_hz, qPrintable(said));
    QVERIFY2(rest_at(f.at(0.3, 1.75)).isEmpty(), qPrintable(QToolTip::text()));
    QToolTip::hideText();
}

HOWLMAP_TEST(TestReadings)

}  // namespace howlmap::app

#include "test_readings.moc"
