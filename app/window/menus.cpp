// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/menus.h"

#include <QAction>
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QTimer>
#include <QToolBar>

#include "app/canvas/plan_actions.h"
#include "app/canvas/plan_view.h"
#include "app/window/action_table.h"
#include "app/window/dock_layout.h"
#include "app/window/file_actions.h"
#include "app/window/overlay_bar.h"
#include "app/window/overlay_look.h"
#include "app/window/recent_files.h"

namespace howlmap::app {
namespace {

QString text(const char* english) { return QCoreApplication::translate("menus", english); }

QMenu* add_menu(QMenu* parent, const char* title, const char* sentence) {
    QMenu* menu = parent->addMenu(text(title));
    explain(menu->menuAction(), text(sentence));
    return menu;
}

QMenu* add_menu(QMenuBar* bar, const char* title, const char* sentence) {
    QMenu* menu = bar->addMenu(text(title));
    explain(menu->menuAction(), text(sentence));
    return menu;
}

QString title_of(const QString& resource) {
    QFile file(resource);
    if (!file.open(QIODevice::ReadOnly)) return resource;
    return QJsonDocument::fromJson(file.readAll())
        .object()[QStringLiteral("title")]
        .toString(QFileInfo(resource).baseName());
}

/// One action for each show of a resource folder.
void add_shows(QMenu* menu, const QString& folder, const QString& sentence,
               const std::function<void(const QString&)>& chosen) {
    for (const QString& name : QDir(folder).entryList({QStringLiteral("*.howlmap")})) {
        const QString resource = folder + u'/' + name;
        QAction* action = menu->addAction(title_of(resource));
        explain(action, sentence);
        QObject::connect(action, &QAction::triggered, menu, [chosen, resource] { chosen(resource); });
    }
}

void add_all(QMenu* menu, const ActionTable& actions, std::initializer_list<const char*> ids) {
    for (const char* id : ids) *id ? menu->addAction(actions.at(id)) : static_cast<void>(menu->addSeparator());
}

void fill_file(QMenu* menu, const MenuSources& from) {
    add_all(menu, from.actions, {"file.new"});
    QMenu* stages = add_menu(menu, QT_TRANSLATE_NOOP("menus", "New on a s&tage"),
                             QT_TRANSLATE_NOOP("menus", "Starts a show on an empty stage of a common kind."));
    add_shows(stages, QStringLiteral(":/stages"), text(QT_TRANSLATE_NOOP("menus", "Starts a show on this stage.")),
              [files = &from.files](const QString& resource) { files->new_on_stage(resource); });
    add_all(menu, from.actions, {"file.open"});
    QMenu* recent = add_menu(menu, QT_TRANSLATE_NOOP("menus", "Open &recent"),
                             QT_TRANSLATE_NOOP("menus", "The shows that were opened last."));
    QObject::connect(recent, &QMenu::aboutToShow, recent, [recent, files = &from.recent] { files->fill(recent); });
    from.recent.fill(recent);
    QMenu* examples = add_menu(menu, QT_TRANSLATE_NOOP("menus", "&Examples"),
                               QT_TRANSLATE_NOOP("menus", "Invented shows to learn from; each opens as a copy."));
    add_shows(examples, QStringLiteral(":/examples"), text(QT_TRANSLATE_NOOP("menus", "Opens a copy of this example.")),
              [files = &from.files](const QString& resource) { files->open_example(resource); });
    add_all(menu, from.actions, {"", "file.save", "file.save_as", "file.revert", "", "file.advance"});
    menu->addActions(from.plan.plan_actions().output_group());
    add_all(menu, from.actions, {"", "file.close", "file.quit"});
}

void fill_edit(QMenu* menu, const MenuSources& from) {
    add_all(menu, from.actions, {"edit.undo", "edit.redo", ""});
    menu->addActions(from.plan.plan_actions().edit_group());
    menu->addSeparator();
    menu->addActions(from.plan.plan_actions().arrange_group());
    add_all(menu, from.actions, {"", "edit.preferences"});
}

void fill_view(QMenu* menu, const MenuSources& from) {
    menu->addActions(from.plan.plan_actions().tool_group());
    menu->addSeparator();
    menu->addActions(from.plan.plan_actions().view_group());
    menu->addSeparator();
    menu->addActions(from.docks.actions());
    add_all(menu, from.actions, {"view.plan_alone", "view.full_screen", "view.reset"});
}

void add_tool_bar(QMainWindow& window, const MenuSources& from) {
    QToolBar* bar = window.addToolBar(text(QT_TRANSLATE_NOOP("menus", "Tools")));
    bar->setObjectName(QStringLiteral("tools"));
    bar->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    bar->setIconSize({18, 18});
    explain(bar->toggleViewAction(), text(QT_TRANSLATE_NOOP("menus", "Shows or hides the tool bar.")));
    bar->addActions({from.actions.at("file.open"), from.actions.at("file.save"), from.actions.at("edit.undo"),
                     from.actions.at("edit.redo")});
    bar->addSeparator();
    bar->addActions(from.plan.plan_actions().tool_group());
    bar->addSeparator();
    bar->addAction(from.plan.plan_actions().zoom_fit);
    bar->addAction(from.actions.at("view.plan_alone"));
    bar->addSeparator();
    bar->addWidget(new OverlayBar(from.plan, bar));
}

/// Frequency and opacity of the map: there while a map is.
void add_map_bar(QMainWindow& window, PlanView& plan) {
    window.addToolBarBreak();
    QToolBar* bar = window.addToolBar(text(QT_TRANSLATE_NOOP("menus", "Map")));
    bar->setObjectName(QStringLiteral("map"));
    bar->addWidget(new OverlayLook(plan, bar));
    explain(bar->toggleViewAction(), text(QT_TRANSLATE_NOOP("menus", "Shows or hides the frequency of the map.")));
    const auto follow = [bar, &plan] { bar->setVisible(plan.overlay().kind != OverlayKind::none); };
    QObject::connect(&plan, &PlanView::overlay_changed, bar, follow);
    QTimer::singleShot(0, bar, follow);  // after the layout of the last time
}

}  // namespace

void build_menus(QMainWindow& window, const MenuSources& sources) {
    QMenuBar* bar = window.menuBar();
    fill_file(add_menu(bar, QT_TRANSLATE_NOOP("menus", "&File"), QT_TRANSLATE_NOOP("menus", "Shows and files.")),
              sources);
    fill_edit(
        add_menu(bar, QT_TRANSLATE_NOOP("menus", "&Edit"), QT_TRANSLATE_NOOP("menus", "What is selected on the plan.")),
        sources);
    fill_view(add_menu(bar, QT_TRANSLATE_NOOP("menus", "&View"), QT_TRANSLATE_NOOP("menus", "Tools, zoom and panels.")),
              sources);
    add_all(add_menu(bar, QT_TRANSLATE_NOOP("menus", "&Lesson"),
                     QT_TRANSLATE_NOOP("menus", "To see and to hear why placement matters.")),
            sources.actions, {"lesson.open", "lesson.show", "", "lesson.hear"});
    QMenu* help = add_menu(bar, QT_TRANSLATE_NOOP("menus", "&Help"),
                           QT_TRANSLATE_NOOP("menus", "How it works, and what can hurt you."));
    add_all(help, sources.actions,
            {"help.contents", "help.whats_this", "", "help.tour", "help.cautions", "", "help.about"});
    add_tool_bar(window, sources);
    add_map_bar(window, sources.plan);
}

}  // namespace howlmap::app
