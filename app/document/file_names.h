// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <filesystem>

namespace howlmap::app {

/// File name as the system wants it.
std::filesystem::path to_path(const QString& name);

}  // namespace howlmap::app
