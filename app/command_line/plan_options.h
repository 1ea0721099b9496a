// SPDX-License-Identifier: GPL-3.0-or-later
// What the verbs that draw a plan have in common.
#pragma once
#include <QFont>
#include <optional>

#include "app/command_line/verb.h"
#include "app/export/plan_export.h"

namespace howlmap::app {

/// --output, --dpi, --size, --transparent.
void add_plan_options(QCommandLineParser& options);
/// The file that the options ask for; complains and gives none when they do not make sense.
std::optional<PlanFile> plan_file_option(const Arguments& arguments, Console& console);
/// A font that is there without a desktop, with the application's as first choice.
QFont page_font();
/// Draws and writes.
Status write_plan(const Show& show, const PlanDrawing& drawing, const PlanFile& file, const QString& name,
                  Console& console);

}  // namespace howlmap::app
