// SPDX-License-Identifier: GPL-3.0-or-later
// Typing into panels: undo wherever the cursor stands, first of what is being typed, then of the show; and what is
// typed without Enter is not lost when the show is saved or closed.
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>

#include "app/window/file_actions.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "tests/app/canvas/hands.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestTyping : public QObject {
    Q_OBJECT
    std::unique_ptr<MainWindow> window_;
    std::unique_ptr<Hands> hands_;

    const Show& show() { return window_->document().show(); }
    void enter(const char* label, const QVariant& value) {
        const auto fields = common_fields() + loudspeaker_fields();
        const auto found = std::find_if(fields.begin(), fields.end(),
                                        [&](const Field& field) { return field.label == QLatin1StringView(label); });
        QVERIFY2(found != fields.end(), label);
        hands_->enter(*found, value);
    }

    QTemporaryDir folder_;
    const QString file_ = folder_.filePath(QStringLiteral("typed.howlmap"));
    void save_beside() {
        QVERIFY(save_atomically(file_.toStdString(), write_show(show())));
        QVERIFY(window_->files().open(file_));
        window_->selection().set({QString::fromStdString(show().loudspeakers.front().id)});
    }
    /// Into the field for the name, without Enter.
    void type_name(const char* text) {
        QWidget* inspector = hands_->panel("inspector");
        for (FieldRow* row : inspector->findChildren<FieldRow*>())
            if (row->field().label == QStringLiteral("Name")) {
                hands_->click(row->editor());
                hands_->key(Qt::Key_A, Qt::ControlModifier);
                return hands_->type(QLatin1StringView(text));
            }
        QFAIL("no field for the name");
    }

  private Q_SLOTS:
    void init() {
        window_ = std::make_unique<MainWindow>();
        window_->resize(1280, 800);
        window_->show();
        QVERIFY(window_->files().open_example(QStringLiteral(":/examples/duo.howlmap")));
        hands_ = std::make_unique<Hands>(*window_);
        window_->selection().set({QString::fromStdString(show().loudspeakers.front().id)});
    }
    void cleanup() {
        if (window_) window_->document().set_clean();
        hands_.reset();
        window_.reset();
    }
    void a_figure_of_the_inspector_is_taken_back_at_once() {
        const Show before = show();
        enter("Name", QStringLiteral("my wedge"));
        QCOMPARE(show().loudspeakers.front().name, std::string("my wedge"));
        QVERIFY(qobject_cast<QLineEdit*>(QApplication::focusWidget()));
        hands_->press(QKeySequence::Undo);
        QVERIFY(show() == before);
        QCOMPARE(qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(),
                 QString::fromStdString(before.loudspeakers.front().name));
        hands_->press(QKeySequence::Redo);
        QCOMPARE(show().loudspeakers.front().name, std::string("my wedge"));
    }
    void what_is_being_typed_is_taken_back_first() {
        enter("Name", QStringLiteral("my wedge"));
        const Show before = show();
        hands_->type(QStringLiteral("xyz"));
        hands_->press(QKeySequence::Undo);
        QVERIFY(show() == before);
        QVERIFY(!qobject_cast<QLineEdit*>(QApplication::focusWidget())->text().contains(QStringLiteral("xyz")));
    }
    void what_is_typed_without_enter_is_saved() {
        save_beside();
        for (const char* name : {"one", "two"}) {
            type_name(name);
            QVERIFY(show().loudspeakers.front().name != name);
            hands_->press(QKeySequence::Save);
            const auto saved = load_show(file_.toStdString());
            QVERIFY(saved);
            QCOMPARE(saved->show.loudspeakers.front().name, std::string(name));
            QVERIFY(!window_->document().modified());
            // The cursor stays where it was.
            QCOMPARE(qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(), QLatin1StringView(name));
        }
        type_name("three");
        QString asked;
        QTimer::singleShot(0, qApp, [&asked] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (!box) return;
            asked = box->text();
            box->button(QMessageBox::Save)->click();
        });
        QVERIFY(window_->close());
        QVERIFY2(asked.contains(QStringLiteral("typed")), qPrintable(asked));
        QCOMPARE(load_show(file_.toStdString())->show.loudspeakers.front().name, std::string("three"));
    }
    void a_window_may_go_while_something_is_typed() {
        type_name("half a na");
        window_->document().set_clean();
        window_.reset();
    }
    void a_send_is_taken_back_from_its_field() {
        QWidget* mixes = hands_->panel("mixes");
        auto* table = mixes->findChild<QTableView*>();
        const Show before = show();
        hands_->click(table->viewport(), table->visualRect(table->model()->index(0, 0)).center());
        auto* level = mixes->findChild<QDoubleSpinBox*>();
        QVERIFY(level->isEnabled());
        level->setFocus();
        hands_->key(Qt::Key_A, Qt::ControlModifier);
        hands_->type(QStringLiteral("77"));
        hands_->key(Qt::Key_Return);
        QVERIFY(!(show() == before));
        hands_->press(QKeySequence::Undo);
        QVERIFY(show() == before);
    }
};

HOWLMAP_TEST(TestTyping)

}  // namespace howlmap::app

#include "test_typing.moc"
