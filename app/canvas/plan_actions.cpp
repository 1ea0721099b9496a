// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_actions.h"

#include <QAction>
#include <QActionGroup>
#include <QClipboard>
#include <QGuiApplication>
#include <QMenu>
#include <QMimeData>

#include "app/canvas/plan_clipboard.h"
#include "app/canvas/plan_output.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"

namespace howlmap::app {
namespace {

/// Adds an action to the view: its shortcut works while the plan has the focus (unless changed), its tip names the
/// shortcut.
template <class F>
QAction* make(PlanView& view, QObject* owner, const QString& text, const QKeySequence& keys, const QString& what,
              F run) {
    auto* action = new QAction(text, owner);
    action->setShortcut(keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    QString plain = text;
    plain.remove(u'&');
    const QString shortcut =
        keys.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(keys.toString(QKeySequence::NativeText));
    action->setToolTip(plain + shortcut);
    action->setStatusTip(what);
    action->setWhatsThis(what);
    QObject::connect(action, &QAction::triggered, &view, run);
    view.addAction(action);
    return action;
}

QAction* checkable(QAction* action, bool on) {
    action->setCheckable(true);
    action->setChecked(on);
    return action;
}
}  // namespace

PlanActions::PlanActions(PlanView& view) : QObject(&view), view_(view) {
    PlanView* v = &view;
    cut = make(view, this, tr("Cu&t"), QKeySequence::Cut, tr("Moves the selected objects to the clipboard."),
               [v] { v->cut(); });
    copy = make(view, this, tr("&Copy"), QKeySequence::Copy, tr("Copies the selected objects."), [v] { v->copy(); });
    paste = make(view, this, tr("&Paste"), QKeySequence::Paste, tr("Puts the objects of the clipboard on the plan."),
                 [v] { v->paste(); });
    duplicate = make(view, this, tr("&Duplicate"), Qt::CTRL | Qt::Key_D,
                     tr("Doubles the selected objects with their mixes and sends."), [v] { v->duplicate_selected(); });
    remove = make(view, this, tr("&Remove"), QKeySequence::Delete, tr("Takes the selected objects off the stage."),
                  [v] { v->remove_selected(); });
    select_all = make(view, this, tr("Select &all"), QKeySequence::SelectAll, tr("Selects everything on the plan."),
                      [v] { v->select_all(); });
    select_none = make(view, this, tr("Select &none"), Qt::CTRL | Qt::SHIFT | Qt::Key_A, tr("Selects nothing."),
                       [v] { v->select_none(); });
    select_same_kind = make(view, this, tr("Select same &kind"), Qt::CTRL | Qt::SHIFT | Qt::Key_K,
                            tr("Selects all objects of the kinds that are selected."), [v] { v->select_same_kind(); });

    turn_left = make(view, this, tr("Turn &left"), Qt::Key_BracketLeft,
                     tr("Turns each selected object 15 degrees counter-clockwise."), [v] { v->turn_selected(15.0); });
    turn_right = make(view, this, tr("Turn &right"), Qt::Key_BracketRight,
                      tr("Turns each selected object 15 degrees clockwise."), [v] { v->turn_selected(-15.0); });
    mirror = make(view, this, tr("&Mirror"), Qt::CTRL | Qt::Key_M,
                  tr("Mirrors the selected objects about the centre line."), [v] { v->mirror_selected(); });
    lock = make(view, this, tr("Loc&k"), Qt::CTRL | Qt::Key_L,
                tr("Keeps the selected objects from being moved, turned or removed."),
                [v, this] { v->set_selected_locked(lock->isChecked()); });
    checkable(lock, false);
    align_left = make(view, this, tr("Align at the left"), {},
                      tr("Brings the selected objects to the one furthest left on the page (stage right)."),
                      [v] { v->align_selected(AlignTo::left); });
    align_centre = make(view, this, tr("Align in a column"), {},
                        tr("Brings the selected objects to one line from upstage to downstage."),
                        [v] { v->align_selected(AlignTo::centre); });
    align_right = make(view, this, tr("Align at the right"), {},
                       tr("Brings the selected objects to the one furthest right on the page (stage left)."),
                       [v] { v->align_selected(AlignTo::right); });
    align_front =
        make(view, this, tr("Align downstage"), {}, tr("Brings the selected objects to the one nearest the audience."),
             [v] { v->align_selected(AlignTo::front); });
    align_middle =
        make(view, this, tr("Align in a row"), {}, tr("Brings the selected objects to one line across the stage."),
             [v] { v->align_selected(AlignTo::middle); });
    align_back = make(view, this, tr("Align upstage"), {},
                      tr("Brings the selected objects to the one furthest from the audience."),
                      [v] { v->align_selected(AlignTo::back); });
    spread_across = make(view, this, tr("Spread across"), {},
                         tr("Makes the gaps between the selected objects equal across the stage."),
                         [v] { v->spread_selected(SpreadAlong::across); });
    spread_depth = make(view, this, tr("Spread in depth"), {},
                        tr("Makes the gaps between the selected objects equal from front to back."),
                        [v] { v->spread_selected(SpreadAlong::depth); });

    zoom_in =
        make(view, this, tr("Zoom &in"), QKeySequence::ZoomIn, tr("Shows the plan larger."), [v] { v->zoom_in(); });
    zoom_out =
        make(view, this, tr("Zoom &out"), QKeySequence::ZoomOut, tr("Shows the plan smaller."), [v] { v->zoom_out(); });
    zoom_fit = make(view, this, tr("&Whole plan"), Qt::CTRL | Qt::Key_0, tr("Fits the whole plan into the view."),
                    [v] { v->zoom_fit(); });
    zoom_selection = make(view, this, tr("Zoom to &selection"), Qt::CTRL | Qt::Key_2,
                          tr("Fits the selected objects into the view."), [v] { v->zoom_selection(); });
    zoom_actual =
        make(view, this, tr("&100 %"), Qt::CTRL | Qt::Key_1, tr("One metre is 100 pixels."), [v] { v->zoom_actual(); });
    snapping = checkable(
        make(view, this, tr("S&nap"), Qt::CTRL | Qt::SHIFT | Qt::Key_N,
             tr("Snaps to the grid, the centre line, neighbours, edges and walls while dragging. Alt suspends it."),
             [v, this] { v->set_snapping(snapping->isChecked()); }),
        true);
    grid = checkable(make(view, this, tr("&Grid"), Qt::CTRL | Qt::Key_G, tr("Shows the grid."),
                          [v, this] { v->set_grid_visible(grid->isChecked()); }),
                     true);
    rulers = checkable(make(view, this, tr("R&ulers"), Qt::CTRL | Qt::SHIFT | Qt::Key_R,
                            tr("Shows rulers: across from the centre line, in depth from the downstage edge."),
                            [v, this] { v->set_rulers_visible(rulers->isChecked()); }),
                       true);

    make_output();
    // These concern the plan as a whole and work wherever the focus is.
    for (QAction* action : {zoom_in, zoom_out, zoom_fit, zoom_actual, snapping, grid, rulers, export_picture, print,
                            preview, copy_picture})
        action->setShortcutContext(Qt::WindowShortcut);
    auto* tools = new QActionGroup(this);
    tool_select = checkable(make(view, this, tr("&Select"), Qt::Key_V, tr("Picks, moves and turns objects."),
                                 [v] { v->set_tool(ToolKind::select); }),
                            true);
    tool_measure = checkable(make(view, this, tr("&Measure"), Qt::Key_M,
                                  tr("Measures distance, bearing, travel time and waves between two places."),
                                  [v] { v->set_tool(ToolKind::measure); }),
                             false);
    tool_outline = checkable(make(view, this, tr("Stage &outline"), Qt::Key_O,
                                  tr("Pulls the corners of the stage; a point of an edge becomes a new corner."),
                                  [v] { v->set_tool(ToolKind::outline); }),
                             false);
    for (QAction* action : {tool_select, tool_measure, tool_outline}) tools->addAction(action);
    connect(&view, &PlanView::tool_changed, this, [this](ToolKind kind) {
        (kind == ToolKind::select    ? tool_select
         : kind == ToolKind::measure ? tool_measure
                                     : tool_outline)
            ->setChecked(true);
    });
    connect(&view.selection(), &Selection::changed, this, &PlanActions::refresh);
    connect(&view.plan_scene(), &PlanScene::objects_changed, this, &PlanActions::refresh);
    connect(QGuiApplication::clipboard(), &QClipboard::dataChanged, this, &PlanActions::refresh);
    refresh();
}

void PlanActions::make_output() {
    PlanView* v = &view_;
    export_picture = make(view_, this, tr("&Write plan..."), Qt::CTRL | Qt::SHIFT | Qt::Key_E,
                          tr("Writes the plan as PDF, SVG or PNG."), [v] { app::export_picture(*v); });
    print = make(view_, this, tr("&Print plan..."), QKeySequence::Print, tr("Prints the plan on one page, to scale."),
                 [v] { print_plan(*v); });
    preview = make(view_, this, tr("Print pre&view..."), Qt::CTRL | Qt::SHIFT | Qt::Key_P,
                   tr("Shows the page before it is printed."), [v] { preview_plan(*v); });
    copy_picture = make(view_, this, tr("Copy as p&icture"), Qt::CTRL | Qt::SHIFT | Qt::Key_C,
                        tr("Puts the whole plan on the clipboard as a picture."), [v] { app::copy_picture(*v); });
}

QList<QAction*> PlanActions::output_group() const { return {export_picture, print, preview, copy_picture}; }

QList<QAction*> PlanActions::edit_group() const {
    return {cut, copy, paste, duplicate, remove, select_all, select_none, select_same_kind};
}

QList<QAction*> PlanActions::arrange_group() const {
    return {turn_left,   turn_right,   mirror,     align_left,    align_centre, align_right,
            align_front, align_middle, align_back, spread_across, spread_depth, lock};
}

QList<QAction*> PlanActions::view_group() const {
    return {zoom_in, zoom_out, zoom_fit, zoom_selection, zoom_actual, snapping, grid, rulers};
}

QList<QAction*> PlanActions::tool_group() const { return {tool_select, tool_measure, tool_outline}; }

/// What cannot be done now is greyed.
void PlanActions::refresh() {
    int chosen = 0, locked = 0;
    for (const QString& id : view_.selection().ids()) {
        const ObjectLook& look = view_.plan_scene().look(id);
        chosen += look.id.isEmpty() ? 0 : 1;
        locked += look.locked ? 1 : 0;
    }
    for (QAction* action : {cut, copy, duplicate, remove, select_same_kind, turn_left, turn_right, mirror, lock,
                            zoom_selection, select_none})
        action->setEnabled(chosen > 0);
    for (QAction* action : {align_left, align_centre, align_right, align_front, align_middle, align_back})
        action->setEnabled(chosen > 1);
    for (QAction* action : {spread_across, spread_depth}) action->setEnabled(chosen > 2);
    lock->setChecked(chosen > 0 && locked == chosen);
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    paste->setEnabled(mime && mime->hasFormat(part_mime_type()));
}

void PlanActions::fill_context_menu(QMenu& menu) const {
    menu.addActions({cut, copy, paste, duplicate, remove});
    menu.addSeparator();
    menu.addActions({turn_left, turn_right, mirror});
    QMenu* arrange = menu.addMenu(tr("Align and spread"));
    arrange->addActions(
        {align_left, align_centre, align_right, align_front, align_middle, align_back, spread_across, spread_depth});
    menu.addAction(lock);
    menu.addSeparator();
    menu.addActions({select_same_kind, zoom_selection, zoom_fit});
}

}  // namespace howlmap::app
