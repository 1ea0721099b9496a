// SPDX-License-Identifier: GPL-3.0-or-later
// What a newcomer sees once: cautions and three steps. Gone when dismissed, also at the next start; Help brings them
// back.
#include <QAbstractButton>
#include <QAction>
#include <QDockWidget>
#include <QLabel>

#include "app/settings/preferences.h"
#include "app/window/action_table.h"
#include "app/window/dock_layout.h"
#include "app/window/first_start.h"
#include "app/window/main_window.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

template <class Strip>
Strip& strip_of(MainWindow& window) {
    window.show();
    return *window.findChild<Strip*>();
}

void press(const QWidget& strip, const char* text) {
    for (auto* button : strip.findChildren<QAbstractButton*>())
        if (button->text() == QLatin1StringView(text)) return button->click();
    QFAIL(text);
}

QString text_of(const QWidget& strip) { return strip.findChild<QLabel*>()->text(); }

}  // namespace

class TestFirstSteps : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void init() { settings()->remove(QStringLiteral("strips")); }
    void cleanup() { settings()->remove(QStringLiteral("strips")); }

    void threeStepsBringTheirPanelsAndEnd() {
        MainWindow window;
        auto& tour = strip_of<TourStrip>(window);
        QVERIFY(tour.isVisible());
        QVERIFY(text_of(tour).contains(QStringLiteral("1 of 3")));
        const auto panel = [&](const char* id) { return window.docks().dock(QLatin1StringView(id))->widget(); };
        press(tour, "Next");
        QVERIFY(text_of(tour).contains(QStringLiteral("2 of 3")));
        QTRY_VERIFY(panel("loops")->isVisible());
        press(tour, "Next");
        QVERIFY(text_of(tour).contains(QStringLiteral("3 of 3")));
        QTRY_VERIFY(panel("cures")->isVisible());
        press(tour, "Back");
        QVERIFY(text_of(tour).contains(QStringLiteral("2 of 3")));
        press(tour, "Next");
        press(tour, "Done");
        QVERIFY(!tour.isVisible());
        MainWindow next_start;
        QVERIFY(!strip_of<TourStrip>(next_start).isVisible());
    }
    void theTourIsDismissedForEverAtOnce() {
        MainWindow window;
        press(strip_of<TourStrip>(window), "Not again");
        QVERIFY(!window.findChild<TourStrip*>()->isVisible());
        MainWindow next_start;
        auto& tour = strip_of<TourStrip>(next_start);
        QVERIFY(!tour.isVisible());
        next_start.actions_table().at("help.tour")->trigger();
        QVERIFY(tour.isVisible());
        QVERIFY(text_of(tour).contains(QStringLiteral("1 of 3")));
    }
    void cautionsStayUntilUnderstood() {
        MainWindow window;
        press(strip_of<CautionStrip>(window), "Understood");
        QVERIFY(!window.findChild<CautionStrip*>()->isVisible());
        QVERIFY(window.findChild<TourStrip*>()->isVisible());  // each on its own
        MainWindow next_start;
        auto& cautions = strip_of<CautionStrip>(next_start);
        QVERIFY(!cautions.isVisible());
        next_start.actions_table().at("help.cautions")->trigger();
        QVERIFY(cautions.isVisible());
        QVERIFY(text_of(cautions).size() > 100);
    }
};

HOWLMAP_TEST(TestFirstSteps)

}  // namespace howlmap::app

#include "test_first_steps.moc"
