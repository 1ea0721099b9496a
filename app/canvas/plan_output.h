// SPDX-License-Identifier: GPL-3.0-or-later
// The plan as it is shown, on paper and in files: with the map and the loops that are shown now, always ink on paper.
#pragma once
#include <QString>

#include "app/document/trouble.h"
#include "app/export/plan_export.h"

class QPrinter;

namespace howlmap::app {

class PlanView;

/// What is shown now, for paper. Map and loops are left out when the screen shows none.
PlanDrawing drawing_of(PlanView& view);
/// Writes the plan; the ending of the name says what kind.
Outcome save_picture(PlanView& view, const QString& file, const PlanFile& options);
/// The same beside the interface thread; the plan's messages tell when it is done, or why not.
void start_writing(PlanView& view, const QString& file, const PlanFile& options);
/// One page, at the printer's page size and resolution.
void print_onto(PlanView& view, QPrinter& printer);

/// The same with dialogs: file name, printer, preview.
void export_picture(PlanView& view);
void print_plan(PlanView& view);
void preview_plan(PlanView& view);
/// The whole plan to the clipboard, as a picture and as SVG.
void copy_picture(PlanView& view);

}  // namespace howlmap::app
