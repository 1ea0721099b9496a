// SPDX-License-Identifier: GPL-3.0-or-later
// The command line is looked at before any application object exists: without a display a window would abort the
// program.
#pragma once
#include <QStringList>

#include "app/command_line/verbs.h"

namespace howlmap::app {

/// What the arguments ask for.
struct Request {
    enum class Kind {
        window,   ///< no verb: the window, with the shows named
        verb,     ///< a verb
        help,     ///< --help or help, also "help VERB"
        version,  ///< --version
        unknown   ///< a bare word that is neither a verb nor a file, or an unknown option
    } kind = Kind::window;
    const Verb* verb = nullptr;
    QStringList arguments;  ///< what follows the verb; the shows of a window
};

/// Decides by the arguments alone (program name excluded).
Request request_of(const QStringList& arguments);

/// Runs anything but a window. Needs an application object (QGuiApplication if the verb draws). Catches what a verb
/// throws.
int run(const Request& request, Console& console);

}  // namespace howlmap::app
