// SPDX-License-Identifier: GPL-3.0-or-later
// The actions of the plan, made once and shared by menus, tool bar and context menu. Undo and redo are the window's
// own.
#pragma once
#include <QList>
#include <QObject>

class QAction;
class QMenu;

namespace howlmap::app {

class PlanView;

class PlanActions : public QObject {
    Q_OBJECT
  public:
    explicit PlanActions(PlanView& view);

    QAction *cut, *copy, *paste, *duplicate, *remove, *select_all, *select_none, *select_same_kind;
    QAction *turn_left, *turn_right, *mirror, *lock;
    QAction *align_left, *align_centre, *align_right, *align_front, *align_middle, *align_back;
    QAction *spread_across, *spread_depth;
    QAction *zoom_in, *zoom_out, *zoom_fit, *zoom_selection, *zoom_actual;
    QAction *snapping, *grid, *rulers;
    QAction *export_picture, *print, *preview, *copy_picture;
    QAction *tool_select, *tool_measure, *tool_outline;

    QList<QAction*> edit_group() const;     ///< cut .. select same kind
    QList<QAction*> arrange_group() const;  ///< turn, mirror, align, spread, lock
    QList<QAction*> view_group() const;     ///< zoom, snapping, grid, rulers
    QList<QAction*> tool_group() const;
    QList<QAction*> output_group() const;  ///< write, print, preview, copy as picture
    /// The menu of the right mouse button and of the Menu key.
    void fill_context_menu(QMenu& menu) const;

  private:
    void make_output();
    void refresh();
    PlanView& view_;
};

}  // namespace howlmap::app
