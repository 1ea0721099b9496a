// SPDX-License-Identifier: GPL-3.0-or-later
// What one sees of the plan: fitting, panning, scale bar, rulers; and selecting by keys.
#include <QScrollBar>

#include "app/canvas/plan_furniture.h"
#include "app/canvas/plan_rulers.h"
#include "core/file/write.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// Pixels of a row (or, down, of a column) of a picture that differ from the one at its beginning.
QList<int> marks_along(const QImage& picture, int at, bool down = false) {
    QList<int> found;
    const auto pixel = [&](int i) { return down ? picture.pixel(at, i) : picture.pixel(i, at); };
    for (int i = 0; i < (down ? picture.height() : picture.width()); ++i)
        if (pixel(i) != pixel(0)) found.append(i);
    return found;
}

QPoint place_of_view(Stage_fixture& f) { return f.at(0.0, 3.0); }

}  // namespace

class TestView : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void keys_select_all_none_and_the_same_kind();
    void fitting_shows_everything_with_air_around();
    void the_selection_fits_the_view();
    void space_and_the_left_button_pan();
    void scroll_bars_pan();
    void the_scale_bar_is_true_to_scale();
    void rulers_count_from_centre_line_and_stage_edge_data();
    void rulers_count_from_centre_line_and_stage_edge();
    void rulers_mark_the_pointer_and_can_go();
    void figures_of_rulers_stand_apart();
};

void TestView::keys_select_all_none_and_the_same_kind() {
    Stage_fixture f;
    f.view.setFocus();
    QTest::keyClick(&f.view, Qt::Key_A, Qt::ControlModifier);
    QCOMPARE(f.selection.ids().size(), f.view.plan_scene().ids().size());
    QTest::keyClick(&f.view, Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
    QVERIFY(f.selection.ids().isEmpty());
    f.selection.set({QStringLiteral("w2")});
    QTest::keyClick(&f.view, Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(f.selection.ids(), QStringList({QStringLiteral("w1"), QStringLiteral("w2")}));
    QCOMPARE(f.steps(), 0);
}

void TestView::fitting_shows_everything_with_air_around() {
    for (const QSize size : {QSize(1100, 900), QSize(500, 800), QSize(900, 320)}) {
        Stage_fixture f(small_stage(), size);
        f.view.zoom_fit();
        const QRectF port = f.port()->rect();
        const double air_x = 0.02 * port.width(), air_y = 0.02 * port.height();
        const QRectF inner = port.adjusted(air_x, air_y, -air_x, -air_y);
        const PlanScene& scene = f.view.plan_scene();
        for (const QString& id : scene.ids())
            QVERIFY2(inner.contains(f.view.viewportTransform().mapRect(scene.bounds_of({id}))), qPrintable(id));
        for (const Vec2& corner : f.document.show().stage.outline)
            QVERIFY(inner.contains(QPointF(f.view.viewport_point(corner))));
    }
}

void TestView::the_selection_fits_the_view() {
    Stage_fixture f;
    f.selection.set({QStringLiteral("w1"), QStringLiteral("m1")});
    f.view.zoom_selection();
    const QRectF there = f.view.viewportTransform().mapRect(f.view.plan_scene().bounds_of(f.selection.ids()));
    const QRectF port = f.port()->rect();
    QVERIFY(port.adjusted(0.02 * port.width(), 0.02 * port.height(), -0.02 * port.width(), -0.02 * port.height())
                .contains(there));
    QVERIFY(there.height() > port.height() / 4.0);
}

void TestView::space_and_the_left_button_pan() {
    Stage_fixture f;
    for (int i = 0; i < 6; ++i) f.view.zoom_in();
    f.selection.set({QStringLiteral("w1")});
    const std::string before = write_show(f.document.show());
    const QPoint was = place_of_view(f), from = f.at(-1.5, 1.0);  // on the wedge: it stays where it is
    QTest::keyPress(&f.view, Qt::Key_Space);
    QCOMPARE(f.port()->cursor().shape(), Qt::OpenHandCursor);
    f.drag(from, from + QPoint(50, -30));
    QTest::keyRelease(&f.view, Qt::Key_Space);
    QCOMPARE(place_of_view(f) - was, QPoint(50, -30));
    QCOMPARE(write_show(f.document.show()), before);
    QCOMPARE(f.selection.ids(), QStringList({QStringLiteral("w1")}));
    QCOMPARE(f.steps(), 0);
    QVERIFY(f.port()->cursor().shape() != Qt::OpenHandCursor);
    const QPoint wedge = f.at(-1.5, 1.0);
    f.drag(wedge, wedge + QPoint(0, 40));  // the key is up: now it is the wedge that moves
    QCOMPARE(f.steps(), 1);
}

void TestView::scroll_bars_pan() {
    Stage_fixture f;
    for (int i = 0; i < 6; ++i) f.view.zoom_in();
    const std::string before = write_show(f.document.show());
    const QPoint was = place_of_view(f);
    f.view.horizontalScrollBar()->setValue(f.view.horizontalScrollBar()->value() + 50);
    f.view.verticalScrollBar()->setValue(f.view.verticalScrollBar()->value() - 20);
    QCOMPARE(place_of_view(f) - was, QPoint(-50, 20));
    QCOMPARE(write_show(f.document.show()), before);
    QVERIFY(f.view.horizontalScrollBar()->isVisible() && f.view.verticalScrollBar()->isVisible());
}

void TestView::the_scale_bar_is_true_to_scale() {
    Stage_fixture f;
    auto* furniture = f.view.findChild<PlanFurniture*>();
    f.view.clearFocus();  // its frame would count
    for (const auto& [zooms, metres] : {std::pair(0, 1.0), std::pair(3, 0.5), std::pair(-7, 5.0)}) {
        f.view.zoom_actual();
        for (int i = 0; i < std::abs(zooms); ++i) zooms > 0 ? f.view.zoom_in() : f.view.zoom_out();
        QImage picture(furniture->size(), QImage::Format_RGB32);
        picture.fill(Qt::white);
        furniture->render(&picture, {}, {}, QWidget::RenderFlags());
        const QList<int> bar = marks_along(picture, picture.height() - 15);
        QVERIFY(!bar.isEmpty());
        const double drawn = bar.last() - bar.first();
        QVERIFY2(std::abs(drawn - metres * f.view.pixels_per_metre()) <= 2.0, qPrintable(QString::number(drawn)));
    }
}

void TestView::rulers_count_from_centre_line_and_stage_edge_data() {
    QTest::addColumn<Units>("units");
    QTest::addColumn<double>("step");  // metres between two figures at 100 pixels a metre
    QTest::newRow("metres") << Units::metric << 0.5;
    QTest::newRow("feet") << Units::imperial << 2 * 0.3048;
}

void TestView::rulers_count_from_centre_line_and_stage_edge() {
    QFETCH(const Units, units);
    QFETCH(const double, step);
    Show show = small_stage();
    show.display.units = units;
    Stage_fixture f(show);
    const QImage across = const_cast<PlanRuler&>(f.view.rulers().across()).grab().toImage();
    const QImage depth = const_cast<PlanRuler&>(f.view.rulers().depth()).grab().toImage();
    const QList<int> xs = marks_along(across, across.height() - 7), ys = marks_along(depth, depth.width() - 7, true);
    QVERIFY(xs.size() > 5 && ys.size() > 5);
    const auto near = [](const QList<int>& marks, int pixel) {
        return std::any_of(marks.begin(), marks.end(), [&](int mark) { return std::abs(mark - pixel) <= 1; });
    };
    for (int i = -3; i <= 3; ++i) QVERIFY2(near(xs, f.at(i * step, 0.0).x()), qPrintable(QString::number(i)));
    for (int i = 0; i <= 5; ++i) QVERIFY2(near(ys, f.at(0.0, i * step).y()), qPrintable(QString::number(i)));
    QVERIFY(!near(xs, f.at(0.5 * step, 0.0).x()));
    f.view.horizontalScrollBar()->setValue(f.view.horizontalScrollBar()->value() + 33);
    QVERIFY(const_cast<PlanRuler&>(f.view.rulers().across()).grab().toImage() != across);
}

void TestView::rulers_mark_the_pointer_and_can_go() {
    Stage_fixture f;
    auto& across = const_cast<PlanRuler&>(f.view.rulers().across());
    const QImage without = across.grab().toImage();
    f.move_to(f.at(1.23, 2.0));
    const QImage with = across.grab().toImage();
    const int x = f.at(1.23, 2.0).x();
    QVERIFY(with.pixel(x, 3) != without.pixel(x, 3));
    QCOMPARE(with.pixel(x + 9, across.height() - 1), without.pixel(x + 9, across.height() - 1));
    const int width = f.port()->width();
    QTest::keyClick(&f.view, Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    QVERIFY(!across.isVisible() && !f.view.rulers_visible());
    QCOMPARE(f.port()->width(), width + kRulerPx);
}

void TestView::figures_of_rulers_stand_apart() {
    for (const double pixels : {4.0, 13.0, 60.0, 100.0, 777.0, 4000.0}) {
        const double step = ruler_step(pixels);
        QVERIFY(step * pixels >= 48.0);
        QVERIFY(step * pixels < 48.0 * 2.6);
        const double digit = step / std::pow(10.0, std::floor(std::log10(step * (1.0 + 1e-9))));
        QVERIFY2(std::abs(digit - 1) < 1e-6 || std::abs(digit - 2) < 1e-6 || std::abs(digit - 5) < 1e-6,
                 qPrintable(QString::number(step)));
    }
}

HOWLMAP_TEST(TestView)

}  // namespace howlmap::app

#include "test_view.moc"
