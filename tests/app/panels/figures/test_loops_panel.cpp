// SPDX-License-Identifier: GPL-3.0-or-later
// The Loops panel: one card a ring, worst first; its figures and its words are those of the analysis.
#include <QLabel>
#include <QListView>

#include "app/canvas/plan_view.h"
#include "app/panels/common/card.h"
#include "app/panels/response/response_panel.h"
#include "app/settings/figures.h"
#include "core/report/check_text.h"
#include "core/show/find.h"
#include "tests/app/panels/figures/window_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestLoopsPanel : public QObject {
    Q_OBJECT
    test::WindowFixture stage_;
    QListView* list_ = nullptr;

    void click(int row) {
        const QModelIndex index = list_->model()->index(row, 0);
        list_->scrollTo(index);
        QTest::mouseClick(list_->viewport(), Qt::LeftButton, {}, list_->visualRect(index).center());
    }

  private Q_SLOTS:
    void initTestCase() {
        stage_.open("duo", 20, "loops");
        list_ = stage_.find<QListView>("rings");
        stage_.settle();
        QTRY_VERIFY(list_->model()->rowCount() > 1);
    }
    void cleanupTestCase() { stage_.close(); }

    void cardsAreTheRingsOfCheck() {
        const QJsonArray rings = stage_.checked()[QStringLiteral("rings")].toArray();
        QCOMPARE(list_->model()->rowCount(), static_cast<int>(rings.size()));
        for (int row = 0; row < list_->model()->rowCount(); ++row) {
            const QJsonObject ring = rings[row].toObject();
            const QModelIndex card = list_->model()->index(row, 0);
            QVERIFY(card.data().toString().startsWith(hz_text(ring[QStringLiteral("hz")].toDouble())));
            QVERIFY(card.data().toString().contains(ring[QStringLiteral("note")].toString()));
            QVERIFY(card.data(kAsDrawn).toString().contains(margin_text(ring[QStringLiteral("margin_db")].toDouble())));
            QVERIFY(card.data(kAside).toString().contains(band_text(ring[QStringLiteral("band_hz")].toDouble())));
            QVERIFY(!card.data(Qt::AccessibleTextRole).toString().isEmpty());
        }
    }
    void aCardLightsPlanAndResponse() {
        click(1);
        const auto result = stage_.window()->analysis().result();
        QVERIFY(stage_.window()->spotlight().ring());
        QCOMPARE(stage_.window()->spotlight().ring()->hz, result->rings[1].hz);
        QVERIFY(stage_.window()->plan().highlight());
        QCOMPARE(stage_.window()->plan().highlight()->hz, result->rings[1].hz);
        auto* response = stage_.window()->findChild<ResponsePanel*>();
        QCOMPARE(response->mix(), result->rings[1].strongest_mix);
    }
    void wordsAreRightToTheDigit() {
        click(0);
        const Ring& ring = stage_.window()->analysis().result()->rings.front();
        const QString why = stage_.find<QLabel>("ring_why")->text();
        QVERIFY2(why.contains(qstr(report::ring_words(stage_.show(), ring)).toHtmlEscaped()), qPrintable(why));
        QVERIFY2(why.contains(qstr(report::build_up_words(ring.build_up_db_per_s))), qPrintable(why));
        QVERIFY2(why.contains(QString::number(std::abs(ring.turns), 'f', 1)), qPrintable(why));
        QVERIFY2(why.contains(QStringLiteral("%1 %").arg(qRound(100.0 * ring.shares.front().share))), qPrintable(why));
        // Words round to a tenth what the straight line between the two, and the speed of sound, make of it.
        const auto* input = find_by_id(stage_.show().inputs, ring.strongest_input);
        const auto* speaker = find_by_id(stage_.show().loudspeakers, ring.strongest_loudspeaker);
        const double kelvin = stage_.show().air.temperature_c + 273.15;
        const double waves =
            length(input->position - speaker->position) * ring.hz / (343.2 * std::sqrt(kelvin / 293.15));
        QVERIFY2(std::abs(waves - ring.whole_waves) < 1e-6, qPrintable(QString::number(waves - ring.whole_waves)));
    }
    void whatIsLookedAtIsFollowedWhileThingsMove() {
        click(0);
        const double hz = stage_.window()->spotlight().ring()->hz;
        stage_.document().edit(QStringLiteral("Warmer"), [](Show& show) { show.air.temperature_c += 0.5; });
        stage_.settle();
        QVERIFY(stage_.window()->spotlight().ring());
        QVERIFY(std::abs(std::log2(stage_.window()->spotlight().ring()->hz / hz)) < 1.0 / 12.0);
        stage_.document().undo();
    }
    void withoutLoopsItSaysWhatToDo() {
        stage_.document().edit(QStringLiteral("No sends"), [](Show& show) {
            for (Mix& mix : show.mixes) mix.sends.clear();
        });
        stage_.settle();
        QVERIFY(!list_->isVisibleTo(stage_.window()));
        stage_.document().undo();
    }
};

HOWLMAP_TEST(TestLoopsPanel)

}  // namespace howlmap::app

#include "test_loops_panel.moc"
