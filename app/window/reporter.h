// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/document/trouble.h"

class QWidget;

namespace howlmap::app {

/// The one way in which the window says that something could not be done: what, in which file, where in it, what to do
/// now.
void report_trouble(QWidget* parent, const Trouble& trouble);

}  // namespace howlmap::app
