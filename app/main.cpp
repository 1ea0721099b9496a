// SPDX-License-Identifier: GPL-3.0-or-later
// Start-up only. The arguments are looked at before any application object is made, so that verbs work without a
// display.
#include <QApplication>
#include <QCoreApplication>
#include <QGuiApplication>
#include <QTimer>
#include <iostream>

#include "app/command_line/run.h"
#include "app/settings/language.h"
#include "app/settings/memory.h"
#include "app/settings/theme.h"
#include "app/window/main_window.h"

namespace {

using namespace howlmap::app;

QStringList arguments_of(int argc, char** argv) {
    QStringList arguments;
    for (int i = 1; i < argc; ++i) arguments.append(QString::fromLocal8Bit(argv[i]));
    return arguments;
}

bool has_display() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

void name_the_application() {
    QCoreApplication::setApplicationName(QStringLiteral("howlmap"));
    QCoreApplication::setOrganizationName(QStringLiteral("howlmap"));
    QCoreApplication::setApplicationVersion(QStringLiteral(HOWLMAP_VERSION));
}

int run_window(const QStringList& shows, int argc, char** argv) {
    give_memory_back();
    QApplication application(argc, argv);
    QApplication::setApplicationDisplayName(QStringLiteral("Howlmap"));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.howlmap.Howlmap"));
    speak(QLocale());
    apply_look(Preferences::load().look);
    MainWindow window;
    window.show();
    // After the first paint, so that questions stand in front of a window that is there.
    QTimer::singleShot(0, &window, [&] { window.start(shows); });
    return QApplication::exec();
}

int run_without_window(const Request& request, int argc, char** argv) {
    Console console{std::cout, std::cerr};
    if (request.verb && request.verb->draws) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        QGuiApplication application(argc, argv);
        speak(QLocale());
        return run(request, console);
    }
    // What a terminal reads is the same everywhere, for people and for scripts; sheets and plans speak the language.
    QCoreApplication application(argc, argv);
    return run(request, console);
}

}  // namespace

int main(int argc, char** argv) {
    QHashSeed::setDeterministicGlobalSeed();  // the fonts of a PDF stand in the order of a hash: the same every time
    name_the_application();
    const Request request = request_of(arguments_of(argc, argv));
    if (request.kind != Request::Kind::window) return run_without_window(request, argc, argv);
    if (!has_display()) {
        std::cerr << "howlmap: no display here; try \"howlmap check SHOW\" or \"howlmap --help\"\n";
        return static_cast<int>(Status::refused);
    }
    return run_window(request.arguments, argc, argv);
}
