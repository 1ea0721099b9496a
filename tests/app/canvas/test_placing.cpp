// SPDX-License-Identifier: GPL-3.0-or-later
// Parts by keys alone: Enter puts what is marked into the middle of what is seen of the plan.
#include "app/window/file_actions.h"
#include "tests/app/canvas/hands.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestPlacing : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void enter_places_in_the_middle_of_the_view() {
        MainWindow window;
        window.resize(1280, 800);
        window.show();
        Hands hands(window);
        window.files().new_show();
        for (const Vec2 look : {Vec2{0.0, 2.0}, Vec2{9.0, 7.5}, Vec2{-6.0, -4.0}}) {
            hands.look_at({look.x - 0.5, look.y - 0.5}, {look.x + 0.5, look.y + 0.5});
            const QRect port = hands.plan().viewport()->rect();
            const Vec2 middle = hands.plan().plan_point(port.center());
            hands.place_by_enter(QStringLiteral("wedge 12"));
            const Show& show = window.document().show();
            QVERIFY(!show.loudspeakers.empty());
            const Loudspeaker& placed = show.loudspeakers.back();
            QVERIFY2(length(placed.position.xy() - middle) < 0.01, qPrintable(QStringLiteral("%1 %2 for %3 %4")
                                                                                  .arg(placed.position.x)
                                                                                  .arg(placed.position.y)
                                                                                  .arg(middle.x)
                                                                                  .arg(middle.y)));
            // It is selected and the plan has the keys, so that the arrows move it at once.
            QCOMPARE(window.selection().ids(), QStringList{QString::fromStdString(placed.id)});
            const double x = placed.position.x;
            hands.key(Qt::Key_Right, Qt::ShiftModifier);
            QVERIFY(std::abs(window.document().show().loudspeakers.back().position.x - x - 0.1) < 1e-9);
        }
        QCOMPARE(window.document().show().loudspeakers.size(), std::size_t{3});
        window.document().set_clean();
    }
};

HOWLMAP_TEST(TestPlacing)

}  // namespace howlmap::app

#include "test_placing.moc"
