// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/canvas/hands.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDockWidget>
#include <QFileDialog>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QPointer>
#include <QPrintDialog>
#include <QPushButton>
#include <QTableView>

#include "app/canvas/plan_view.h"
#include "app/panels/inspector/inspector_panel.h"
#include "app/panels/inspector/number_table.h"
#include "app/panels/parts/part_list.h"
#include "app/panels/parts/parts_panel.h"
#include "app/window/dock_layout.h"

namespace howlmap::app {
namespace {

/// What a user would type for a value: a number with its unit, as exact as it is.
QString typed(const Field& field, const QVariant& value) {
    if (!value.isValid()) return {};
    const QString number = QString::number(value.toDouble(), 'g', 12);
    if (field.kind == FieldKind::length) return number + QStringLiteral(" m");
    return field.unit.isEmpty() ? number : number + QLatin1Char(' ') + field.unit;
}

int index_of(const Field& field, const Show& show, const QVariant& value) {
    const QList<Choice> choices = field.choices(show);
    for (int i = 0; i < choices.size(); ++i)
        if (choices[i].value == value) return i;
    return -1;
}

/// After the first failure the hands rest.
bool failed() { return QTest::currentTestFailed(); }

}  // namespace

Hands::Hands(MainWindow& window) : window_(window) {
    qApp->setActiveWindow(&window);
    QVERIFY(QTest::qWaitForWindowExposed(&window));
}

/// After a menu or a list has closed the window is the active one again; no window manager sees to it here.
void Hands::wake() {
    if (QApplication::activeModalWidget() || QApplication::activePopupWidget()) return;
    if (QApplication::activeWindow() != &window_) qApp->setActiveWindow(&window_);
}

void Hands::press(const QKeySequence& keys) {
    if (failed()) return;
    wake();
    QWidget* focus = QApplication::focusWidget();
    QTest::keySequence(focus ? focus : &window_, keys);
}

void Hands::type(const QString& text) {
    if (failed()) return;
    wake();
    QVERIFY(QApplication::focusWidget());
    QTest::keyClicks(QApplication::focusWidget(), text);
}

void Hands::key(Qt::Key key, Qt::KeyboardModifiers with) {
    if (failed()) return;
    wake();
    QVERIFY(QApplication::focusWidget());
    QTest::keyClick(QApplication::focusWidget(), key, with);
    QCoreApplication::processEvents();  // tables take what was typed a moment after Enter
}

QWidget* Hands::panel(const char* id) {
    for (const QAction* action : window_.docks().actions())
        if (action->objectName() == QStringLiteral("panel.") + QLatin1StringView(id)) press(action->shortcut());
    QDockWidget* dock = window_.docks().dock(QLatin1StringView(id));
    QCoreApplication::processEvents();
    return dock->isVisible() && !dock->visibleRegion().isEmpty() ? dock->widget() : nullptr;
}

void Hands::click(QWidget* widget, QPoint at) {
    if (failed()) return;
    wake();
    QTest::mouseClick(widget, Qt::LeftButton, {}, at);
}

void Hands::click_button(QWidget* panel, const QString& text) {
    if (failed()) return;
    for (QPushButton* button : panel->findChildren<QPushButton*>())
        if (button->text() == text && button->isVisible()) return click(button);
    QFAIL(qPrintable(QStringLiteral("no button ") + text));
}

void Hands::drag_pixels(QWidget* widget, QPoint from, QPoint to, Qt::MouseButton button, Qt::KeyboardModifiers with) {
    if (failed()) return;
    QTest::mousePress(widget, button, with, from);
    for (int i = 1; i <= 8; ++i) {
        const QPoint at = from + (to - from) * i / 8;
        QMouseEvent move(QEvent::MouseMove, at, widget->mapToGlobal(at), Qt::NoButton, button, with);
        QCoreApplication::sendEvent(widget, &move);
    }
    QTest::mouseRelease(widget, button, with, to);
}

void Hands::look_at(QPointF from, QPointF to) {
    if (failed()) return;
    QWidget* port = plan().viewport();
    press(QKeySequence(Qt::CTRL | Qt::Key_0));
    const auto seen = [&](QPointF p) {
        return port->rect().adjusted(20, 20, -20, -20).contains(plan().viewport_point({p.x(), p.y()}));
    };
    for (int i = 0; i < 20 && !(seen(from) && seen(to)); ++i) {
        const QPoint middle = port->rect().center();
        QWheelEvent turn(middle, port->mapToGlobal(middle), {}, {0, -120}, Qt::NoButton, {}, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(port, &turn);
        const QPointF half = (from + to) / 2.0;
        drag_pixels(port, middle, middle + (middle - plan().viewport_point({half.x(), half.y()})), Qt::MiddleButton,
                    {});
    }
}

void Hands::drag_on_plan(Vec2 from, Vec2 to, Qt::KeyboardModifiers with) {
    if (failed()) return;
    look_at({from.x, from.y}, {to.x, to.y});
    drag_pixels(plan().viewport(), plan().viewport_point(from), plan().viewport_point(to), Qt::LeftButton, with);
}

void Hands::click_on_plan(Vec2 at, Qt::KeyboardModifiers with) {
    if (failed()) return;
    look_at({at.x, at.y}, {at.x, at.y});
    QTest::mouseClick(plan().viewport(), Qt::LeftButton, with, plan().viewport_point(at));
}

void Hands::find_part(const QString& words) {
    if (failed()) return;
    auto* parts = qobject_cast<PartsPanel*>(panel("parts"));
    QVERIFY(parts);
    click(&parts->search());
    key(Qt::Key_A, Qt::ControlModifier);
    type(words);
}

void Hands::place_by_enter(const QString& words) {
    if (failed()) return;
    find_part(words);
    key(Qt::Key_Return);
}

void Hands::place_by_double_click(const QString& words) {
    if (failed()) return;
    find_part(words);
    QListView& list = window_.findChild<PartsPanel*>()->list();
    const QPoint at = list.visualRect(list.currentIndex()).center();
    click(list.viewport(), at);
    QTest::mouseDClick(list.viewport(), Qt::LeftButton, {}, at);
}

/// What the plan gets when a part is let go over it. (The drag itself runs a loop of the window system; the test of the
/// real pointer does that.)
void Hands::place_by_drop(const QString& words, Vec2 at) {
    if (failed()) return;
    find_part(words);
    auto* parts = window_.findChild<PartsPanel*>();
    look_at({at.x, at.y}, {at.x, at.y});
    const std::unique_ptr<QMimeData> mime(parts->parts().mimeData({parts->list().currentIndex()}));
    QVERIFY(mime);
    QWidget* port = plan().viewport();
    const QPoint pixel = plan().viewport_point(at);
    QDragEnterEvent enter(pixel, Qt::CopyAction, mime.get(), Qt::LeftButton, {});
    QCoreApplication::sendEvent(port, &enter);
    QDragMoveEvent move(pixel, Qt::CopyAction, mime.get(), Qt::LeftButton, {});
    QCoreApplication::sendEvent(port, &move);
    QDropEvent drop(pixel, Qt::CopyAction, mime.get(), Qt::LeftButton, {});
    QCoreApplication::sendEvent(port, &drop);
}

void Hands::choose_in(QComboBox& box, int index) {
    if (failed()) return;
    QVERIFY(index >= 0);
    if (!box.view()->isVisible()) QTest::keyClick(&box, Qt::Key_F4);
    QTRY_VERIFY(box.view()->isVisible());
    QTest::keyClick(box.view(), Qt::Key_Home);
    for (int i = 0; i < index; ++i) QTest::keyClick(box.view(), Qt::Key_Down);
    const QPointer<QAbstractItemView> list = box.view();  // other units make the Inspector anew, the box with it
    QTest::keyClick(list, Qt::Key_Return);
    QTRY_VERIFY(!list || !list->isVisible());
}

void Hands::enter(const Field& field, const QVariant& value) {
    if (failed()) return;
    auto* inspector = qobject_cast<InspectorPanel*>(panel("inspector"));
    QVERIFY(inspector);
    for (FieldRow* row : inspector->findChildren<FieldRow*>()) {
        if (row->field().group != field.group || row->field().label != field.label || !row->isVisible()) continue;
        inspector->ensureWidgetVisible(row);
        QWidget* editor = row->editor();
        if (qobject_cast<QCheckBox*>(editor)) return click(editor, {9, editor->height() / 2});
        if (auto* button = qobject_cast<MembersButton*>(editor)) return tick_members(*button, value.toStringList());
        click(editor);
        if (auto* box = qobject_cast<QComboBox*>(editor))
            return choose_in(*box, index_of(field, window_.document().show(), value));
        QVERIFY2(editor->hasFocus(), qPrintable(field.label));
        key(Qt::Key_A, Qt::ControlModifier);
        key(Qt::Key_Delete);
        const bool words = field.kind == FieldKind::text || field.kind == FieldKind::paragraph;
        type(words ? value.toString() : typed(field, value));
        key(field.kind == FieldKind::paragraph ? Qt::Key_Tab : Qt::Key_Return);
        QVERIFY2(row->trouble().isEmpty(), qPrintable(field.label + u' ' + row->trouble()));
        return;
    }
    QFAIL(qPrintable(QStringLiteral("no field ") + field.label));
}

/// One entry of the menu after the other, which closes each time.
void Hands::tick_members(MembersButton& button, const QStringList& members) {
    const Field field = qobject_cast<FieldRow*>(button.parentWidget())->field();
    const QList<Choice> choices = field.choices(window_.document().show());
    for (int i = 0; i < choices.size(); ++i) {
        const bool wanted = members.contains(choices[i].value.toString());
        if (failed() || button.menu()->actions()[i]->isChecked() == wanted) continue;
        // The click comes back only when the menu has closed.
        QTimer::singleShot(20, button.menu(), [&button, i] {
            QMenu& menu = *button.menu();
            QTest::mouseClick(&menu, Qt::LeftButton, {}, menu.actionGeometry(menu.actions()[i]).center());
        });
        click(&button);
        QTRY_COMPARE(button.menu()->actions()[i]->isChecked(), wanted);
        QCoreApplication::processEvents();  // what was ticked is set once the menu is gone
    }
}

void Hands::enter_rows(const QString& title, const NumberRows& rows) {
    if (failed()) return;
    auto* inspector = qobject_cast<InspectorPanel*>(panel("inspector"));
    for (NumberTable* table : inspector->findChildren<NumberTable*>()) {
        if (table->model().source().title != title) continue;
        inspector->ensureWidgetVisible(table);
        auto* view = table->findChild<QTableView*>();
        for (std::size_t r = 0; r < rows.size(); ++r) {
            if (static_cast<int>(r) == table->model().rowCount()) click_button(table, NumberTable::tr("Add"));
            for (std::size_t c = 0; c < rows[r].size(); ++c)
                enter_cell(*view, table->model().index(static_cast<int>(r), static_cast<int>(c)),
                           QString::number(rows[r][c], 'g', 12));
            if (rows[r].name.isEmpty()) continue;
            enter_cell(*view, table->model().index(static_cast<int>(r), static_cast<int>(rows[r].size())),
                       rows[r].name);
        }
        return;
    }
    QFAIL(qPrintable(QStringLiteral("no table ") + title));
}

void Hands::enter_cell(QTableView& table, const QModelIndex& cell, const QString& text) {
    if (failed()) return;
    QVERIFY(cell.isValid());
    table.scrollTo(cell);
    click(table.viewport(), table.visualRect(cell).center());
    key(Qt::Key_F2);
    QVERIFY(qobject_cast<QLineEdit*>(QApplication::focusWidget()));
    key(Qt::Key_A, Qt::ControlModifier);
    type(text);
    key(Qt::Key_Return);
}

void Hands::choose_cell(QTableView& table, const QModelIndex& cell, const QString& text) {
    if (failed()) return;
    table.scrollTo(cell);
    click(table.viewport(), table.visualRect(cell).center());
    key(Qt::Key_F2);
    auto* box = qobject_cast<QComboBox*>(QApplication::focusWidget());
    QVERIFY(box);
    choose_in(*box, box->findText(text));
}

void Hands::tick_cell(QTableView& table, const QModelIndex& cell) {
    if (failed()) return;
    table.scrollTo(cell);
    click(table.viewport(), table.visualRect(cell).center());
    key(Qt::Key_Space);
}

/// Without a printer the dialog offers a file; with one, it is the last of the list.
void Hands::print_to_file(const std::function<void()>& what, const QString& name) {
    if (failed()) return;
    int looked = 0;
    bool printed = false;
    QTimer wait;
    QObject::connect(&wait, &QTimer::timeout, [&] {
        auto* dialog = qobject_cast<QPrintDialog*>(QApplication::activeModalWidget());
        if (!dialog) return;
        if (++looked > 100) return dialog->reject();
        auto* printers = dialog->findChild<QComboBox*>(QStringLiteral("printers"));
        auto* file = dialog->findChild<QLineEdit*>(QStringLiteral("filename"));
        const auto* box = dialog->findChild<QDialogButtonBox*>();
        if (!printers || !file || !box) return dialog->reject();
        printers->setCurrentIndex(printers->count() - 1);
        file->setFocus();
        QTest::keySequence(file, QKeySequence::SelectAll);
        QTest::keyClicks(file, name);
        printed = true;
        for (QAbstractButton* button : box->buttons())
            if (box->buttonRole(button) == QDialogButtonBox::AcceptRole)
                return QTest::mouseClick(button, Qt::LeftButton);
    });
    wait.start(20);
    what();
    QVERIFY(printed);
}

void Hands::drop_file(const QString& path) {
    if (failed()) return;
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(path)});
    const QPoint at(window_.rect().center());
    QDragEnterEvent enter(at, Qt::CopyAction, &mime, Qt::LeftButton, {});
    QCoreApplication::sendEvent(&window_, &enter);
    QVERIFY(enter.isAccepted());
    QDropEvent drop(at, Qt::CopyAction, &mime, Qt::LeftButton, {});
    QCoreApplication::sendEvent(&window_, &drop);
}

void Hands::with_file_name(const std::function<void()>& what, const QString& name) {
    if (failed()) return;
    int looked = 0;
    bool typed_name = false;
    QString told;
    QTimer wait;
    QObject::connect(&wait, &QTimer::timeout, [&] {
        if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
            told = box->text() + u' ' + box->informativeText();
            return box->reject();
        }
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        if (!dialog) return;
        if (++looked > 100) return dialog->reject();  // it does not take the name: no waiting for ever
        auto* edit = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
        if (!std::exchange(typed_name, true)) {
            // Pasted: the dialog completes what is typed while it is typed, sooner or later.
            QApplication::clipboard()->setText(name);
            QTest::keySequence(edit, QKeySequence::SelectAll);
            QTest::keySequence(edit, QKeySequence::Paste);
        }
        // The first click only closes the list of names that fit.
        const auto* box = dialog->findChild<QDialogButtonBox*>();
        for (QAbstractButton* button : box->buttons())
            if (box->buttonRole(button) == QDialogButtonBox::AcceptRole)
                return QTest::mouseClick(button, Qt::LeftButton);
    });
    wait.start(20);
    what();
    QVERIFY(typed_name);
    QVERIFY2(told.isEmpty(), qPrintable(told));
}

}  // namespace howlmap::app
