// SPDX-License-Identifier: GPL-3.0-or-later
// The panel against the core: what it shows, what it previews, what it applies and what undo brings back.
#include <QAbstractButton>
#include <QApplication>
#include <QCheckBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QListView>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QUndoStack>
#include <limits>

#include "app/panels/common/card.h"
#include "app/settings/cure_choices.h"
#include "app/settings/figures.h"
#include "app/window/dock_layout.h"
#include "app/window/file_actions.h"
#include "app/window/main_window.h"
#include "core/cures/cures.h"
#include "core/file/write.h"
#include "core/units/bands.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestCuresPanel : public QObject {
    Q_OBJECT
    MainWindow* window_ = nullptr;
    Show asked_;
    CureReport expected_;

    template <class Widget>
    Widget* find(const char* name) {
        return window_->findChild<Widget*>(QLatin1StringView(name));
    }
    QListView& list() { return *find<QListView>("cures"); }
    void wait_for_plan() { QTRY_VERIFY_WITH_TIMEOUT(find<QAbstractButton>("apply_plan")->isEnabled(), 120000); }
    std::string written() { return write_show(window_->document().show()); }

  private Q_SLOTS:
    void initTestCase() {
        window_ = new MainWindow;
        window_->resize(1280, 800);
        window_->show();
        QVERIFY(QTest::qWaitForWindowExposed(window_));
        QVERIFY(window_->files().open_example(QStringLiteral(":/examples/fiddle-and-wedge.howlmap")));
        window_->document().edit(QStringLiteral("Louder, with fewer draws"), [](Show& show) {
            show.tolerance.draws = 30;
            for (Mix& mix : show.mixes)
                for (Send& send : mix.sends) send.level_db += 4.0;
        });
        asked_ = window_->document().show();
        expected_ = *find_cures(asked_);
        QVERIFY(!expected_.plan.steps.empty());
        window_->docks().bring_up(QStringLiteral("cures"));
        wait_for_plan();
    }
    void cleanupTestCase() {
        window_->document().set_clean();
        delete window_;
    }

    void figuresAreTheCores() {
        const QAbstractItemModel& model = *list().model();
        QCOMPARE(model.rowCount(), static_cast<int>(expected_.cures.size()));
        for (int row = 0; row < model.rowCount(); ++row) {
            const Cure& cure = expected_.cures[static_cast<std::size_t>(row)];
            const QModelIndex index = model.index(row, 0);
            if (cure.count_on_gain_db) QCOMPARE(index.data(kCountOn).toString(), gain_text(*cure.count_on_gain_db));
            if (cure.margin_gain_db) QVERIFY(index.data(kAsDrawn).toString().contains(gain_text(*cure.margin_gain_db)));
            QCOMPARE(index.data(Qt::ToolTipRole).toString(), qstr(cure.instruction));
            QVERIFY(index.data(kWords).toString().contains(decimal_text(cure.trouble, 1)));  // what it is ranked by
            if (!cure.margins_after.margin_p05_db) QCOMPARE(index.data(kCountOn).toString(), margin_text({}));
        }
        QVERIFY(!find<QProgressBar>("cures_progress")->isVisible());
        QCOMPARE(list().currentIndex().row(), 0);  // the best, whichever was found first
    }
    void showsTheFiguresBeforeAndAfter() {
        const Cure& first = expected_.cures.front();
        list().setCurrentIndex(list().model()->index(0, 0));
        find<QAbstractButton>("why_cure")->setChecked(true);
        const QString words = find<QLabel>("cure_detail")->text();
        QVERIFY(words.contains(margin_text(expected_.before.margin_p05_db)));
        QVERIFY(words.contains(margin_text(first.margins_after.margin_p05_db)));
        find<QAbstractButton>("why_cure")->setChecked(false);
    }
    void previewsTheCureUnderTheMouse() {
        QEvent leave(QEvent::Leave);
        QCoreApplication::sendEvent(list().viewport(), &leave);
        QVERIFY(!window_->spotlight().preview());
        const QPoint place = list().visualRect(list().model()->index(0, 0)).center();
        QTest::mouseMove(list().viewport(), place - QPoint(3, 3));
        QTest::mouseMove(list().viewport(), place);
        QTRY_VERIFY(window_->spotlight().preview());
        QVERIFY(*window_->spotlight().preview()->show == expected_.cures.front().after);
        QCoreApplication::sendEvent(list().viewport(), &leave);
        QVERIFY(!window_->spotlight().preview());
        QVERIFY(window_->document().show() == asked_);
    }
    void tellsManySettingsAsATableByMix() {
        const auto bands = std::ranges::find(expected_.cures, CureKind::graphic_bands, &Cure::kind);
        QVERIFY(bands != expected_.cures.end());
        const int row = static_cast<int>(bands - expected_.cures.begin());
        list().setCurrentIndex(list().model()->index(row, 0));
        const QString words = find<QLabel>("cure_detail")->text();
        for (const Mix& mix : bands->after.mixes)
            for (const auto& [band, db] : mix.graphic_eq) {
                const QString line = band_text(kNominalThirdOctaves[static_cast<std::size_t>(band)]) +
                                     QStringLiteral("</td><td align=\"right\">&nbsp;&nbsp;") + number_text(db, 1);
                QVERIFY2(words.contains(line), qPrintable(line));
            }
    }
    void fitsASmallScreenAndKeepsItsButtonsInPlace() {
        const QPoint place = find<QAbstractButton>("apply_cure")->mapTo(window_, QPoint());
        QVERIFY2(window_->minimumSizeHint().width() <= 1280, qPrintable(QString::number(window_->width())));
        find<QAbstractButton>("why_cure")->setChecked(true);
        QCoreApplication::processEvents();
        QCOMPARE(find<QAbstractButton>("apply_cure")->mapTo(window_, QPoint()), place);
        find<QAbstractButton>("why_cure")->setChecked(false);
    }
    void appliesOneAsOneStep() {
        const std::string before = written();
        const int steps = window_->document().undo_stack().index();
        list().setCurrentIndex(list().model()->index(0, 0));
        list().setFocus();
        QTest::keyClick(&list(), Qt::Key_Return);
        QCOMPARE(window_->document().undo_stack().index(), steps + 1);
        QVERIFY(window_->document().show() == expected_.cures.front().after);
        QVERIFY(!find<QAbstractButton>("apply_cure")->isEnabled());  // what is listed is for another show
        QVERIFY(list().hasFocus());
        window_->document().undo();
        QCOMPARE(QByteArray::fromStdString(written()), QByteArray::fromStdString(before));
    }
    void appliesThePlanAsOneStep() {
        wait_for_plan();
        const std::string before = written();
        const int steps = window_->document().undo_stack().index();
        find<QAbstractButton>("apply_plan")->click();
        QCOMPARE(window_->document().undo_stack().index(), steps + 1);
        QVERIFY(window_->document().show() == expected_.plan.show);
        QTRY_VERIFY_WITH_TIMEOUT(window_->analysis().counted() && window_->analysis().fresh(), 60000);
        const auto counted = count_on(*window_->analysis().result());
        const auto& after = expected_.plan.after.margin_p05_db;
        QCOMPARE(counted.has_value(), after.has_value());
        QVERIFY(!counted || std::abs(*counted - *after) < 0.05);
        window_->document().undo();
        QCOMPARE(QByteArray::fromStdString(written()), QByteArray::fromStdString(before));
    }
    void rulesOutAKindThatCannotBeHad() {
        wait_for_plan();
        const CureKind first = expected_.cures.front().kind;
        const QString name = QStringLiteral("offer_") + QLatin1StringView(to_string(first));
        QTimer::singleShot(0, window_, [&name] {
            auto* dialog = QApplication::activeModalWidget();
            dialog->findChild<QCheckBox*>(name)->setChecked(false);
            dialog->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok)->click();
        });
        find<QAbstractButton>("cure_kinds")->click();
        QVERIFY(!find<QAbstractButton>("apply_plan")->isEnabled());  // made for other choices
        wait_for_plan();
        CureOptions options;
        options.weights.set(first, std::numeric_limits<double>::infinity());
        const CureReport without = *find_cures(asked_, options);
        QCOMPARE(list().model()->rowCount(), static_cast<int>(without.cures.size()));
        for (int row = 0; row < list().model()->rowCount(); ++row)
            QCOMPARE(list().model()->index(row, 0).data(Qt::ToolTipRole).toString(),
                     qstr(without.cures[static_cast<std::size_t>(row)].instruction));
        CureChoices().save();
    }
    void saysWhenThereIsNothingToCure() {
        window_->document().edit(QStringLiteral("Silence"), [](Show& show) {
            for (Mix& mix : show.mixes) mix.sends.clear();
        });
        QTRY_VERIFY_WITH_TIMEOUT(find<QLabel>("cures_empty")->isVisible(), 60000);
        QTRY_VERIFY(find<QLabel>("cures_empty")->text().startsWith(QStringLiteral("Nothing can ring here")));
        QVERIFY(!find<QAbstractButton>("apply_plan")->isEnabled());
    }
};

HOWLMAP_TEST(TestCuresPanel)

}  // namespace howlmap::app

#include "test_cures_panel.moc"
