// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/recent_files.h"

#include <QDir>
#include <QFileInfo>
#include <QMenu>

#include "app/settings/preferences.h"
#include "app/window/action_table.h"

namespace howlmap::app {
namespace {
constexpr auto kKey = "recent";
constexpr qsizetype kMost = 10;
}  // namespace

QStringList RecentFiles::paths() const {
    return settings()->value(QLatin1StringView(kKey)).toStringList().mid(0, kMost);
}

void RecentFiles::add(const QString& path) {
    QStringList all = paths();
    all.removeAll(path);
    all.prepend(path);
    settings()->setValue(QLatin1StringView(kKey), all.mid(0, kMost));
}

void RecentFiles::clear() { settings()->remove(QLatin1StringView(kKey)); }

void RecentFiles::fill(QMenu* menu) {
    menu->clear();
    for (const QString& path : paths()) {
        const bool there = QFileInfo::exists(path);
        const QString name = QFileInfo(path).completeBaseName();
        QAction* action = menu->addAction(there ? name : tr("%1 (not there any more)").arg(name));
        action->setEnabled(there);
        explain(action, QDir::toNativeSeparators(path));
        connect(action, &QAction::triggered, this, [this, path] { Q_EMIT chosen(path); });
    }
    if (menu->isEmpty()) {
        QAction* none = menu->addAction(tr("No show was opened yet"));
        none->setEnabled(false);
        explain(none, tr("Shows that you open are listed here."));
        return;
    }
    menu->addSeparator();
    QAction* forget = menu->addAction(tr("Forget these"));
    explain(forget, tr("Empties this list; no file is touched."));
    connect(forget, &QAction::triggered, this, &RecentFiles::clear);
}

}  // namespace howlmap::app
