// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>
#include <string>

#include "app/export/map_picture.h"
#include "app/export/sheet/advance_sheet.h"
#include "core/units/job.h"

namespace howlmap::app {

/// What the plan of a sheet shows besides the objects.
struct SheetPlanLook {
    bool loops = false;                     ///< the loops that matter as lines
    std::shared_ptr<const MapPicture> map;  ///< under the objects, if there
};

/// Draws the plan of a sheet in points: ink on paper. The content must outlive the block.
PlanBlock plan_of_sheet(const SheetContent& content, const SheetPlanLook& look);

/// The input whose feedback map tells most: the one that hears the first ring; empty without a ring.
std::string input_of_first_ring(const AnalysisResult& result);
/// Feedback map of an input for a sheet, ink on paper; the sentence says why it cannot be made. Slow: not for the
/// interface thread.
tl::expected<std::shared_ptr<const MapPicture>, QString> sheet_map(const Show& show, const std::string& input,
                                                                   const Job& job = {});

}  // namespace howlmap::app
