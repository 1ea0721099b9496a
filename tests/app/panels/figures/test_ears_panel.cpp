// SPDX-License-Identifier: GPL-3.0-or-later
// The Ears panel: its figures are those of `check`; what the solvers find is one step and holds what it promised.
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QTableView>

#include "app/panels/ears/ears_model.h"
#include "app/panels/ears/ears_panel.h"
#include "app/panels/ears/ears_words.h"
#include "app/settings/figures.h"
#include "core/listening/exposure.h"
#include "core/show/find.h"
#include "tests/app/panels/figures/window_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestEarsPanel : public QObject {
    Q_OBJECT
    test::WindowFixture stage_;
    EarsPanel* panel_ = nullptr;

    QString cell(int row, PlayersModel::Column column) {
        return panel_->players().model()->index(row, column).data().toString();
    }
    void press(const char* name) {
        stage_.find<QPushButton>(name)->click();
        QTRY_VERIFY_WITH_TIMEOUT(!panel_->busy(), 120000);
    }
    void open(const char* example) {
        stage_.open(example, 10, "ears");
        panel_ = stage_.window()->findChild<EarsPanel*>();
        stage_.settle();
        QTRY_VERIFY_WITH_TIMEOUT(!panel_->busy(), 30000);
    }

  private Q_SLOTS:
    void cleanup() { stage_.close(); }

    void figuresAreThoseOfCheck() {
        open("duo");
        const QJsonArray players = stage_.checked()[QStringLiteral("performers")].toArray();
        QCOMPARE(panel_->players().model()->rowCount(), static_cast<int>(players.size()));
        for (int row = 0; row < players.size(); ++row) {
            const QJsonObject player = players[row].toObject();
            QCOMPARE(cell(row, PlayersModel::own), dba_text(player[QStringLiteral("own_dba")].toDouble()));
            QCOMPARE(cell(row, PlayersModel::hear_margin),
                     db_text(player[QStringLiteral("hear_margin_db")].toDouble()));
            QCOMPARE(cell(row, PlayersModel::niosh), minutes_text(player[QStringLiteral("niosh_minutes")].toDouble()));
            QCOMPARE(cell(row, PlayersModel::osha), minutes_text(player[QStringLiteral("osha_minutes")].toDouble()));
            const double dose = niosh_dose_pct(player[QStringLiteral("ear_dba")].toDouble(), 90.0);
            QVERIFY(cell(row, PlayersModel::dose).startsWith(QString::number(qRound(dose))));
        }
        const auto* house = stage_.find<QTableView>("house")->model();
        const QJsonArray places = stage_.checked()[QStringLiteral("house")].toArray();
        QVERIFY(!places.isEmpty());
        QCOMPARE(house->rowCount(), static_cast<int>(places.size()));
        for (int row = 0; row < places.size(); ++row) {
            const QJsonObject place = places[row].toObject();
            QCOMPARE(house->index(row, 1).data().toString(), dba_text(place[QStringLiteral("wash_dba")].toDouble()));
            QCOMPARE(house->index(row, 2).data().toString(),
                     db_text(place[QStringLiteral("against_target_db")].toDouble()));
        }
        const QString first = stage_.find<QLabel>("house_words")->text();
        QVERIFY2(first.startsWith(house->index(0, 0).data().toString()), qPrintable(first));
        QVERIFY2(first.contains(QStringLiteral("Wedge")) && first.contains(QStringLiteral("What helps")),
                 qPrintable(first));
        QVERIFY(stage_.find<QTableView>("loads")->model()->rowCount() > 0);
        QVERIFY(stage_.find<QTableView>("ear_bands")->model()->rowCount() > 5);
    }
    void howAPlayerHearsAndTheTargetAreEditedHere() {
        open("duo");
        QAbstractItemModel* model = panel_->players().model();
        const QModelIndex way = model->index(0, PlayersModel::hears);
        QVERIFY(way.flags() & Qt::ItemIsEditable);
        QVERIFY(model->setData(way, PlayersModel::ways_of_hearing()[1], Qt::EditRole));
        QCOMPARE(stage_.show().performers[0].hears, Hears::in_ear);
        QVERIFY(!model->setData(way, QStringLiteral("by telephone"), Qt::EditRole));
        stage_.document().undo();
        QCOMPARE(stage_.show().performers[0].hears, Hears::loudspeakers);
    }
    /// The seal counts for in-ear players alone; her own acoustic sound can be taken away again; nonsense is refused.
    void sealAndOwnSoundAreTypedHere() {
        open("duo");
        QAbstractItemModel* model = panel_->players().model();
        const QModelIndex seal = model->index(0, PlayersModel::seal), own = model->index(0, PlayersModel::acoustic);
        QVERIFY(!(seal.flags() & Qt::ItemIsEditable));
        QVERIFY(model->setData(model->index(0, PlayersModel::hears), PlayersModel::ways_of_hearing()[1], Qt::EditRole));
        QSignalSpy refused(qobject_cast<PlayersModel*>(model), &PlayersModel::refused);
        QVERIFY(model->setData(seal, QStringLiteral("18,5 dB"), Qt::EditRole));
        QCOMPARE(stage_.show().performers[0].seal_db, 18.5);
        QVERIFY(!model->setData(seal, QStringLiteral("tight"), Qt::EditRole));
        QVERIFY(!model->setData(own, QStringLiteral("900"), Qt::EditRole));
        QCOMPARE(refused.count(), 2);
        QVERIFY(model->setData(own, QStringLiteral("86"), Qt::EditRole));
        QCOMPARE(stage_.show().performers[0].own_acoustic_dba.value(), 86.0);
        stage_.settle();
        const QJsonObject player = stage_.checked()[QStringLiteral("performers")].toArray()[0].toObject();
        QCOMPARE(cell(0, PlayersModel::own), dba_text(player[QStringLiteral("own_dba")].toDouble()));
        QVERIFY(model->setData(own, QString(), Qt::EditRole));
        QVERIFY(!stage_.show().performers[0].own_acoustic_dba);
    }
    void aWishIsMetAndIsOneStep() {
        open("duo");
        const int steps = stage_.document().undo_stack().count();
        panel_->players().setCurrentIndex(panel_->players().model()->index(0, 0));
        const double now = *stage_.window()->analysis().result()->performers[0].own_dba;
        panel_->set_wish(WishKind::own_level, std::round(now) - 2.0);
        press("solve_one");
        QVERIFY2(panel_->answer().contains(QStringLiteral("then")), qPrintable(panel_->answer()));
        press("apply_sends");
        QCOMPARE(stage_.document().undo_stack().count(), steps + 1);
        stage_.settle();
        const auto own = stage_.window()->analysis().result()->performers[0].own_dba;
        QVERIFY2(std::abs(*own - (std::round(now) - 2.0)) < 0.1, qPrintable(QString::number(*own)));
        stage_.document().undo();
    }
    /// What was found for the show as it was does not take back what was done to the mixes meanwhile.
    void anEditWhileItSolvesIsNotLost() {
        open("duo");
        panel_->players().setCurrentIndex(panel_->players().model()->index(0, 0));
        panel_->set_wish(WishKind::own_level, 80.0);
        stage_.find<QPushButton>("solve_one")->click();
        stage_.document().edit(QStringLiteral("Rename"), [](Show& show) { show.mixes[0].name = "Meanwhile"; });
        QTRY_VERIFY_WITH_TIMEOUT(!panel_->busy(), 120000);
        press("apply_sends");
        QCOMPARE(stage_.show().mixes[0].name, std::string("Meanwhile"));
        QCOMPARE(stage_.document().undo_stack().undoText(), QStringLiteral("Rename"));
        press("solve_one");  // once more, and it is good
        press("apply_sends");
        QCOMPARE(stage_.show().mixes[0].name, std::string("Meanwhile"));
        QVERIFY(stage_.document().undo_stack().undoText() != QStringLiteral("Rename"));
    }
    /// A level that cannot be had is told in dBA: how near it comes, and why no nearer.
    void aWishBeyondReachSaysHowNearItComes() {
        open("duo");
        panel_->players().setCurrentIndex(panel_->players().model()->index(0, 0));
        panel_->set_wish(WishKind::own_level, 130.0);
        press("solve_one");
        const QString answer = panel_->answer();
        QVERIFY2(answer.contains(QStringLiteral(" dBA instead of 130.0 dBA. ")), qPrintable(answer));
        QVERIFY2(answer.contains(QStringLiteral("Sends in ")), qPrintable(answer));
    }
    void louderCostsAreTold() {
        open("duo");
        press("spiral");
        for (const Mix& mix : stage_.show().mixes)
            if (!mix.loudspeakers.empty())
                QVERIFY2(panel_->answer().contains(QString::fromStdString(mix.name)), qPrintable(panel_->answer()));
        QVERIFY2(panel_->answer().contains(QRegularExpression(QStringLiteral("Lena -\\d\\.\\d dB, turns up \\d"))),
                 qPrintable(panel_->answer()));
        QVERIFY2(panel_->answer().section(u'\n', 1, 1).startsWith(QStringLiteral("Mix Lena: ")),  // 3.9 dB against 3.3
                 qPrintable(panel_->answer()));
        QVERIFY(!stage_.find<QPushButton>("apply_sends")->isEnabled());
    }
    void nobodyIsNamedByAnIdentifier() {
        open("sixteen-inputs");
        const auto says = [this](const std::string& words) {
            return panel_->answer().contains(QRegularExpression(QStringLiteral("\\b%1\\b").arg(qstr(words))));
        };
        panel_->set_wish(WishKind::hear_margin, 40.0);
        press("quietest");
        int names = 0;
        for (const Performer& player : stage_.show().performers) {
            QVERIFY2(!says(player.id), qPrintable(panel_->answer()));
            names += says(player.name) ? 1 : 0;
        }
        QVERIFY2(names > 0, qPrintable(panel_->answer()));
        press("spiral");
        for (const Backline& item : stage_.show().backline)
            QVERIFY2(says(item.name) && !says(item.id), qPrintable(panel_->answer()));
    }
    /// The quietest stage of the largest example, against what `check` says of it, to 0.1 dB.
    void quietestStageIsConfirmedByCheck() {
        open("sixteen-inputs");
        constexpr double kWanted = 0.0;
        panel_->set_wish(WishKind::hear_margin, kWanted);
        const int steps = stage_.document().undo_stack().count();
        press("quietest");
        QVERIFY2(panel_->answer().contains(QStringLiteral("sends change")), qPrintable(panel_->answer()));
        press("apply_sends");
        QCOMPARE(stage_.document().undo_stack().count(), steps + 1);
        const QJsonObject figures = stage_.checked();
        int hearing = 0;
        for (const auto& value : figures[QStringLiteral("performers")].toArray()) {
            const QJsonObject player = value.toObject();
            const auto margin = player[QStringLiteral("hear_margin_db")];
            const Performer* performer =
                find_by_id(stage_.show().performers, player[QStringLiteral("id")].toString().toStdString());
            if (margin.isNull() || performer->hears == Hears::acoustic) continue;
            QVERIFY2(margin.toDouble() > kWanted - 0.1, qPrintable(player[QStringLiteral("id")].toString()));
            ++hearing;
        }
        QVERIFY(hearing >= 4);
        const QString told =
            QString::number(figures[QStringLiteral("margin_db")].toDouble(), 'f', 1) + QStringLiteral(" dB.");
        QVERIFY2(panel_->answer().contains(QStringLiteral("then ") + told), qPrintable(told + panel_->answer()));
    }
};

HOWLMAP_TEST(TestEarsPanel)

}  // namespace howlmap::app

#include "test_ears_panel.moc"
