// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/dock_layout.h"

#include <QAction>
#include <QDockWidget>
#include <QMainWindow>
#include <QToolBar>

#include "app/settings/icons.h"
#include "app/settings/preferences.h"
#include "app/window/action_table.h"

namespace howlmap::app {
namespace {

constexpr int kStateVersion = 1;  ///< of the stored arrangement; count up when panels change places
constexpr auto kGeometry = "window/geometry";
constexpr auto kState = "window/state";
constexpr int kSideWidth = 350, kPartsWidth = 190, kBottomHeight = 270;

}  // namespace

DockLayout::DockLayout(QMainWindow& window, const Workspace& workspace) : QObject(&window), window_(window) {
    window_.setDockOptions(QMainWindow::AllowTabbedDocks | QMainWindow::AllowNestedDocks | QMainWindow::AnimatedDocks);
    window_.setTabPosition(Qt::AllDockWidgetAreas, QTabWidget::North);
    window_.setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
    for (const PanelEntry& entry : panel_table()) add(entry, workspace);
    arrange();
}

void DockLayout::add(const PanelEntry& entry, const Workspace& workspace) {
    const QString id = QString::fromLatin1(entry.id), title = panel_text(entry.title), hint = panel_text(entry.hint);
    auto* dock = new QDockWidget(title, &window_);
    dock->setObjectName(id);
    dock->setAccessibleName(title);
    dock->setAccessibleDescription(hint);
    dock->setWhatsThis(hint);
    dock->setProperty("area", static_cast<int>(entry.area));
    QWidget* panel = entry.make(workspace, dock);
    panel->setAccessibleName(title);
    dock->setWidget(panel);
    // A dock behind another's tab counts as visible and only lies off the window. Its panel is hidden, so that it rests
    // and Tab passes it by; its place keeps the size.
    QSizePolicy policy = panel->sizePolicy();
    policy.setRetainSizeWhenHidden(true);
    panel->setSizePolicy(policy);
    connect(dock, &QDockWidget::visibilityChanged, panel, &QWidget::setVisible);
    explain(dock->toggleViewAction(), hint);
    docks_.append(dock);

    auto* action = new QAction(icon(id), title, &window_);
    action->setObjectName(QStringLiteral("panel.") + id);
    action->setShortcut(QKeySequence(QString::fromLatin1(entry.keys), QKeySequence::PortableText));
    explain(action, hint);
    connect(action, &QAction::triggered, this, [this, id] { bring_up(id); });
    window_.addAction(action);
    actions_.append(action);
}

void DockLayout::arrange() {
    QHash<int, QDockWidget*> first;
    for (QDockWidget* dock : docks_) {
        const int area = dock->property("area").toInt();
        dock->setFloating(false);
        window_.addDockWidget(static_cast<Qt::DockWidgetArea>(area), dock);
        if (first.contains(area)) window_.tabifyDockWidget(first[area], dock);
        if (!first.contains(area)) first[area] = dock;
        dock->show();
    }
    const auto size = [&](Qt::DockWidgetArea area, int pixels, Qt::Orientation way) {
        if (QDockWidget* dock = first.value(area)) window_.resizeDocks({dock}, {pixels}, way);
    };
    size(Qt::RightDockWidgetArea, kSideWidth, Qt::Horizontal);
    size(Qt::LeftDockWidgetArea, kPartsWidth, Qt::Horizontal);
    size(Qt::BottomDockWidgetArea, kBottomHeight, Qt::Vertical);
    for (QDockWidget* dock : first) dock->raise();
}

void DockLayout::restore() {
    const auto stored = settings();
    window_.restoreGeometry(stored->value(QLatin1StringView(kGeometry)).toByteArray());
    window_.restoreState(stored->value(QLatin1StringView(kState)).toByteArray(), kStateVersion);
}

void DockLayout::save() const {
    const auto stored = settings();
    stored->setValue(QLatin1StringView(kGeometry), window_.saveGeometry());
    stored->setValue(QLatin1StringView(kState), plan_alone() ? before_alone_ : window_.saveState(kStateVersion));
}

void DockLayout::reset() {
    before_alone_.clear();
    for (QToolBar* bar : window_.findChildren<QToolBar*>(Qt::FindDirectChildrenOnly)) bar->show();
    arrange();
}

void DockLayout::set_plan_alone(bool alone) {
    if (alone == plan_alone()) return;
    if (!alone) {
        window_.restoreState(std::exchange(before_alone_, {}), kStateVersion);
        return;
    }
    before_alone_ = window_.saveState(kStateVersion);
    for (QDockWidget* dock : docks_) dock->hide();
    for (QToolBar* bar : window_.findChildren<QToolBar*>(Qt::FindDirectChildrenOnly)) bar->hide();
}

void DockLayout::bring_up(const QString& id) {
    QDockWidget* found = dock(id);
    if (!found) return;
    found->show();
    found->raise();
    found->widget()->show();  // a hidden one takes no focus
    found->widget()->setFocus(Qt::ShortcutFocusReason);
}

QDockWidget* DockLayout::dock(const QString& id) const {
    for (QDockWidget* dock : docks_)
        if (dock->objectName() == id) return dock;
    return nullptr;
}

QString DockLayout::panel_of(const QWidget* widget) const {
    for (QDockWidget* dock : docks_)
        if (widget && (dock == widget || dock->isAncestorOf(widget))) return dock->objectName();
    return {};
}

}  // namespace howlmap::app
