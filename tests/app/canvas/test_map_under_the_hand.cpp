// SPDX-License-Identifier: GPL-3.0-or-later
// While something is dragged the map follows coarsely; the fine one waits for the hand to rest.
#include <chrono>

#include "app/canvas/overlay/map_service.h"
#include "core/show/edits.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {
constexpr double kFine = 0.05, kCoarse = 4 * kFine;  // metres between cells
constexpr int kSoonMs = 30'000, kAWhileMs = 300;

void go(Document& document, double metres) {
    document.update_gesture([&](Show& show) { move_by(show, {"w1"}, {metres, 0.0}); });
}
}  // namespace

class TestMapUnderTheHand : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void init() {
        document_ = std::make_unique<Document>();
        document_->replace(small_stage(), {}, false);
    }
    void the_fine_map_waits_and_the_next_move_ends_the_wait();
    void a_hand_that_rests_gets_the_fine_map_before_it_lets_go();

  private:
    double step(const MapService& maps) const { return maps.picture() ? maps.picture()->grid->step : 0.0; }
    void begin(MapService& maps) {
        maps.want(MapRequest{MapKind::feedback, "m1", {}});
        QTRY_VERIFY_WITH_TIMEOUT(maps.settled(), kSoonMs);
        QCOMPARE(step(maps), kFine);
        document_->begin_gesture(QStringLiteral("Move"));
    }
    std::unique_ptr<Document> document_;
};

/// The hand of this test would have to be still for an hour: no pause of the machine looks like a rest.
void TestMapUnderTheHand::the_fine_map_waits_and_the_next_move_ends_the_wait() {
    MapService maps(*document_, nullptr, std::chrono::hours(1));
    begin(maps);
    for (const double metres : {0.5, 1.0, 1.5}) {
        const auto before = maps.picture();
        go(*document_, metres);
        QTRY_VERIFY_WITH_TIMEOUT(maps.picture() != before, kSoonMs);
        QCOMPARE(step(maps), kCoarse);
        QTest::qWait(kAWhileMs);
        QCOMPARE(step(maps), kCoarse);
        QVERIFY(!maps.settled());
    }
    document_->end_gesture();
    document_->edit(QStringLiteral("Back"), [](Show& show) { move_by(show, {"w1"}, {-1.5, 0.0}); });
    QTRY_VERIFY_WITH_TIMEOUT(maps.settled(), kSoonMs);
    QCOMPARE(step(maps), kFine);
}

void TestMapUnderTheHand::a_hand_that_rests_gets_the_fine_map_before_it_lets_go() {
    MapService maps(*document_);
    begin(maps);
    go(*document_, 0.5);
    QTRY_VERIFY_WITH_TIMEOUT(maps.settled(), kSoonMs);
    QCOMPARE(step(maps), kFine);
    QVERIFY(document_->in_gesture());
    document_->cancel_gesture();
}

HOWLMAP_TEST(TestMapUnderTheHand)

}  // namespace howlmap::app

#include "test_map_under_the_hand.moc"
