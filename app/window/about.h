// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

class QWidget;

namespace howlmap::app {

/// Version, licence, every library linked with its licence, where files are kept. Rich text.
QString about_text();
void show_about(QWidget* parent);

}  // namespace howlmap::app
