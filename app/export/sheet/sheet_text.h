// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QCoreApplication>
#include <QString>

namespace howlmap::app {

/// A text of the sheet in the user's language.
inline QString sheet_text(const char* english) { return QCoreApplication::translate("Sheet", english); }

}  // namespace howlmap::app
