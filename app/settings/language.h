// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QLocale>

namespace howlmap::app {

/// Lets the program, Qt's own dialogs and the sentences of the core speak a language; English where there is no
/// translation. Needs an application object; call before windows and other threads.
void speak(const QLocale& locale);

}  // namespace howlmap::app
