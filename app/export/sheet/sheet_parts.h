// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/export/sheet/advance_sheet.h"
#include "app/export/sheet/flow.h"

namespace howlmap::app {

/// The title of a show, or that it has none.
QString title_of(const Show& show);
/// Those that are not empty, side by side: "Two Larks  ·  Cooper's Yard".
QString listed_parts(const QStringList& parts);

/// Everything that the options ask for, from the title to the cautions, down the pages.
void draw_parts(Flow& flow, const SheetContent& content, const SheetOptions& options, const PlanBlock& plan);

}  // namespace howlmap::app
