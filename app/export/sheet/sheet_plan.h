// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/export/sheet/advance_sheet.h"

namespace howlmap::app {

/// Draws the plan of a sheet in points: ink on paper, loop lines left out unless `loops`. The content must outlive the
/// drawer.
PlanDrawer plan_of_sheet(const SheetContent& content, bool loops);

}  // namespace howlmap::app
