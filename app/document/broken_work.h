// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QString>
#include <functional>

namespace howlmap::app {

/// Who is told, in the interface thread, when work of any Worker broke off with an error of the program; the latest
/// takes the place of the one before. As long as `listener` lives.
void on_broken_work(QObject* listener, std::function<void(const QString& reason)> tell);

}  // namespace howlmap::app
