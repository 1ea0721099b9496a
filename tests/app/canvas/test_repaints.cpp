// SPDX-License-Identifier: GPL-3.0-or-later
// What the plan paints anew while the hand moves: what moved, together with what hangs on it, and nothing else.
#include <QScrollBar>
#include <QSignalSpy>

#include "app/canvas/drag_reading.h"
#include "app/canvas/items/guides.h"
#include "app/canvas/items/object_item.h"
#include "app/canvas/overlay/plan_layers.h"
#include "app/export/ground.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// Counts how often a widget is painted.
class Paints : public QObject {
  public:
    explicit Paints(QWidget* widget) { widget->installEventFilter(this); }
    int count = 0;

  protected:
    bool eventFilter(QObject*, QEvent* event) override {
        count += event->type() == QEvent::Paint ? 1 : 0;
        return false;
    }
};

void take_hold(Stage_fixture& f, QPoint from, QPoint to, Qt::KeyboardModifiers keys = {}) {
    QTest::mousePress(f.port(), Qt::LeftButton, keys, from);
    for (int i = 1; i <= 8; ++i) f.move_to(from + (to - from) * i / 8, keys);
}

void release(Stage_fixture& f, QPoint at) { QTest::mouseRelease(f.port(), Qt::LeftButton, {}, at); }

}  // namespace

class TestRepaints : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void a_loop_goes_with_its_loudspeaker_in_the_same_picture();
    void between_two_guides_nothing_is_painted_anew();
    void a_name_without_room_is_no_item_at_the_origin();
    void rings_belong_to_what_is_chosen_or_under_the_pointer();
    void a_reading_leaves_the_scroll_bars_alone();
    void words_around_the_stage_make_way_when_the_hand_rests();
};

void TestRepaints::a_loop_goes_with_its_loudspeaker_in_the_same_picture() {
    Stage_fixture f;
    QTRY_VERIFY_WITH_TIMEOUT(!f.view.layers().loops().empty(), 30000);
    take_hold(f, f.at(-1.5, 1.0), f.at(-0.5, 1.0));  // no event is let through in between
    QCOMPARE(f.loudspeaker("w1").position.x, -0.5);
    QCOMPARE(f.view.layers().loops().back().page.p1(), QPointF(-0.5, -1.0));
    release(f, f.at(-0.5, 1.0));
}

void TestRepaints::between_two_guides_nothing_is_painted_anew() {
    Show show = small_stage();
    show.loudspeakers.push_back(wedge("w3", {3.5, 5.5}));
    Stage_fixture f(show);
    const QPoint to = f.at(3.53, 2.53);  // below w3, beside the microphone at (-1.5, 2.5)
    take_hold(f, f.at(1.5, 1.0), f.at(3.3, 2.3));
    QCoreApplication::processEvents();
    QSignalSpy painted(&f.view.plan_scene(), &QGraphicsScene::changed);
    f.move_to(to);
    QCOMPARE(f.loudspeaker("w2").position.xy(), (Vec2{3.5, 2.5}));
    QCOMPARE(f.view.guides().lines().size(), std::size_t{2});
    QTRY_VERIFY(!painted.empty());
    const auto covers = [&](QPointF place) {
        for (const auto& signal : painted)
            for (const QRectF& rect : signal[0].value<QList<QRectF>>())
                if (rect.contains(place)) return true;
        return false;
    };
    QVERIFY(covers({1.0, -2.5}) && covers({3.5, -4.0}));
    QVERIFY(!covers({1.0, -4.0}));
    release(f, to);
}

void TestRepaints::a_name_without_room_is_no_item_at_the_origin() {
    Show show = small_stage();
    for (int i = 0; i < 200; ++i) {  // more than there is room for
        Mark mark;
        mark.id = "mark" + std::to_string(i);
        mark.text = "Vocal microphone stand";
        mark.position = {-3.0 + 0.02 * i, 4.0 + 0.005 * i};
        show.marks.push_back(mark);
    }
    Stage_fixture f(show);
    int seen = 0, unseen = 0;
    for (const LabelItem* name : f.view.plan_scene().names()) {
        QCOMPARE(name->isVisible(), !name->place().rect.isEmpty());
        ++(name->isVisible() ? seen : unseen);
    }
    QVERIFY2(seen > 5 && unseen > 5, qPrintable(QStringLiteral("%1, %2").arg(seen).arg(unseen)));
}

/// What has no ring takes no room for one: what lies beside a move is not painted anew.
void TestRepaints::rings_belong_to_what_is_chosen_or_under_the_pointer() {
    Stage_fixture f;
    const auto accent = [&] {  // on a line upwards from the middle of a wedge: the ring crosses it, the handle does not
        const QImage picture = f.port()->grab().toImage();
        int found = 0;
        for (int y = f.at(1.5, 1.0).y() - 60; y < f.at(1.5, 1.0).y(); ++y) {
            const QRgb pixel = picture.pixel(f.at(1.5, 1.0).x(), y);
            found += qBlue(pixel) - qRed(pixel) > 40 ? 1 : 0;
        }
        return found;
    };
    QCOMPARE(accent(), 0);
    f.selection.set({QStringLiteral("w2")});
    QVERIFY(accent() > 0);
    f.selection.clear();
    QCOMPARE(accent(), 0);
    QMouseEvent over(QEvent::MouseMove, f.at(1.5, 1.0), f.port()->mapToGlobal(f.at(1.5, 1.0)), Qt::NoButton,
                     Qt::NoButton, {});
    QCoreApplication::sendEvent(f.port(), &over);
    QCOMPARE(f.view.plan_scene().hovered(), QStringLiteral("w2"));
    QVERIFY(accent() > 0);
    f.view.plan_scene().set_hovered({});
    QCOMPARE(accent(), 0);
}

void TestRepaints::a_reading_leaves_the_scroll_bars_alone() {
    Stage_fixture f;
    QTRY_VERIFY_WITH_TIMEOUT(f.analysis.result() && f.analysis.fresh(), 30000);
    take_hold(f, f.at(-1.5, 1.0), f.at(-1.0, 1.0));
    QTest::qWait(50);  // it has come, and been laid out
    const QString before = f.view.reading().text();
    Paints across(f.view.horizontalScrollBar()), down(f.view.verticalScrollBar()), plan(f.port());
    for (int i = 1; i <= 4; ++i) {
        f.move_to(f.at(-1.0 + 0.1 * i, 1.0));
        QCoreApplication::processEvents();
    }
    QVERIFY(f.view.reading().isVisible() && f.view.reading().text() != before);
    QVERIFY(plan.count > 0);
    QCOMPARE(across.count + down.count, 0);
    release(f, f.at(-0.6, 1.0));
}

void TestRepaints::words_around_the_stage_make_way_when_the_hand_rests() {
    Stage_fixture f;
    f.view.centerOn(0.0, -2.0);
    const QRectF word = stage_word_boxes(f.document.show(), f.view.plan_scene().style()).front();
    const QRect box = f.view.mapFromScene(word).boundingRect();
    const auto picture = [&] { return f.port()->grab(box).toImage(); };
    QCoreApplication::processEvents();
    const QImage before = picture();
    const QPoint to = f.at(word.center().x() + 0.7, -word.center().y());
    take_hold(f, f.at(-1.5, 3.0), to, Qt::AltModifier);  // no guide across the word
    QCoreApplication::processEvents();
    QVERIFY(stage_word_boxes(f.document.show(), f.view.plan_scene().style()).front() != word);  // or it would not show
    QCOMPARE(picture(), before);
    release(f, to);
    QTRY_VERIFY(picture() != before);
}

HOWLMAP_TEST(TestRepaints)

}  // namespace howlmap::app

#include "test_repaints.moc"
