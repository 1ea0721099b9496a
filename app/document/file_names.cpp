// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/file_names.h"

#include <QFile>

namespace howlmap::app {

std::filesystem::path to_path(const QString& name) { return {QFile::encodeName(name).toStdString()}; }

}  // namespace howlmap::app
