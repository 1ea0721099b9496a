// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace howlmap::app {
class MainWindow;
}

/// Prints how long the window was deaf at worst while the longest pieces of work ran, and how soon they end when an
/// edit makes them needless.
void gaps(howlmap::app::MainWindow& window);
