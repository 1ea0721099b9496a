// SPDX-License-Identifier: GPL-3.0-or-later
// Every window that the program can show, open and filled, for the tests that walk through all of them.
#pragma once
#include <QDir>
#include <QDockWidget>
#include <QStandardPaths>
#include <QtTest>
#include <functional>
#include <memory>
#include <vector>

#include "app/lesson/hear_window.h"
#include "app/lesson/lesson_window.h"
#include "app/panels/cures/kinds_dialog.h"
#include "app/panels/panel_table.h"
#include "app/window/dock_layout.h"
#include "app/window/file_actions.h"
#include "app/window/help_viewer.h"
#include "app/window/main_window.h"
#include "app/window/preferences_dialog.h"
#include "app/window/recovery_dialog.h"
#include "app/window/sheet_dialog.h"

namespace howlmap::app {

/// The main window with the folk band on a screen of 1280 x 800, figures there.
inline std::unique_ptr<MainWindow> filled_window() {
    auto window = std::make_unique<MainWindow>();
    window->resize(1280, 800);
    window->show();
    window->files().open_example(QStringLiteral(":/examples/folk-band-six.howlmap"));
    window->document().edit(QStringLiteral("Fewer draws"), [](Show& show) { show.tolerance.draws = 20; });
    window->document().set_clean();
    const bool counted =
        QTest::qWaitFor([&] { return window->analysis().counted() && window->analysis().fresh(); }, 120000);
    if (!counted) qWarning("the figures did not come");
    QApplication::setActiveWindow(window.get());
    return window;
}

/// Looks at every window: each panel of the main window in front with something selected, then the others one by one.
inline void for_every_window(const std::function<void(QWidget& window, const QString& name)>& look) {
    const auto main = filled_window();
    const Show& show = main->document().show();
    main->selection().set({QString::fromStdString(show.inputs.front().id)});
    for (const PanelEntry& entry : panel_table()) {
        const QString id = QLatin1StringView(entry.id);
        main->docks().bring_up(id);
        QCoreApplication::processEvents();
        look(*main->docks().dock(id)->widget(), id);
    }
    look(*main, QStringLiteral("main"));
    const auto show_and_look = [&](QWidget& window, const char* name) {
        window.show();
        QApplication::setActiveWindow(&window);
        QTest::qWait(50);
        look(window, QLatin1StringView(name));
    };
    LessonWindow lesson(main->document(), {}, nullptr);
    lesson.resize(1280, 800);
    show_and_look(lesson, "lesson");
    HearWindow hear(main->document(), main->analysis(), nullptr);
    show_and_look(hear, "hear");
    SheetDialog sheet(main->document(), main->analysis());
    sheet.resize(1280, 800);
    show_and_look(sheet, "sheet");
    PreferencesDialog preferences(nullptr);
    show_and_look(preferences, "preferences");
    KindsDialog kinds(nullptr);
    show_and_look(kinds, "kinds");
    RecoveryDialog recovery({Recoverable{}}, nullptr);
    show_and_look(recovery, "recovery");
    HelpViewer help(nullptr);
    help.open(QStringLiteral("loops"));
    show_and_look(help, "help");
    main->document().set_clean();
}

}  // namespace howlmap::app
