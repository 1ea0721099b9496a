// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QIcon>

namespace howlmap::app {

/// One of resources/icons by its file name, drawn in the text colour of the palette at the time of painting.
/// A name without a file gives an empty icon.
QIcon icon(const QString& name);

}  // namespace howlmap::app
