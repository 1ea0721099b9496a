// SPDX-License-Identifier: GPL-3.0-or-later
// The hands of a user at the whole window: they press keys, click, drag and type, and know nothing of the show.
#pragma once
#include <QtTest>
#include <functional>

#include "app/panels/inspector/field_row.h"
#include "app/panels/inspector/members_button.h"
#include "app/panels/inspector/number_rows.h"
#include "app/window/main_window.h"

class QComboBox;
class QTableView;

namespace howlmap::app {

class Hands {
  public:
    explicit Hands(MainWindow& window);

    // Keys.
    void press(const QKeySequence& keys);  ///< a shortcut, wherever the focus is
    void type(const QString& text);        ///< into what has the focus
    void key(Qt::Key key, Qt::KeyboardModifiers with = {});

    // Panels: each is brought up by its shortcut.
    QWidget* panel(const char* id);
    void click(QWidget* widget, QPoint at);
    void click(QWidget* widget) { click(widget, widget->rect().center()); }
    void click_button(QWidget* panel, const QString& text);

    // The plan, in metres.
    void look_at(QPointF from, QPointF to);  ///< zooms and pans by wheel and middle button until both are in view
    void drag_on_plan(Vec2 from, Vec2 to, Qt::KeyboardModifiers with = {});
    void click_on_plan(Vec2 at, Qt::KeyboardModifiers with = {});

    // Parts. The words must leave the wanted part first in the list.
    void place_by_enter(const QString& words);
    void place_by_double_click(const QString& words);
    void place_by_drop(const QString& words, Vec2 at);

    // Inspector, of whatever is selected.
    void enter(const Field& field, const QVariant& value);
    void tick_members(MembersButton& button, const QStringList& members);
    void enter_rows(const QString& table, const NumberRows& rows);

    // Tables of a panel.
    void enter_cell(QTableView& table, const QModelIndex& cell, const QString& text);
    void choose_cell(QTableView& table, const QModelIndex& cell, const QString& text);
    void tick_cell(QTableView& table, const QModelIndex& cell);

    /// Does something that asks for a file name, and types it.
    void with_file_name(const std::function<void()>& what, const QString& name);

    /// Does something that asks for a printer, and has it printed to a file.
    void print_to_file(const std::function<void()>& what, const QString& name);

    void drop_file(const QString& path);  ///< from the file manager, onto the window

    PlanView& plan() { return window_.plan(); }

  private:
    void wake();
    void find_part(const QString& words);
    void choose_in(QComboBox& box, int index);
    void drag_pixels(QWidget* widget, QPoint from, QPoint to, Qt::MouseButton button, Qt::KeyboardModifiers with);

    MainWindow& window_;
};

}  // namespace howlmap::app
