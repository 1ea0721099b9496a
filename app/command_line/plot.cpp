// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/plan_options.h"
#include "app/command_line/shows.h"
#include "app/command_line/verbs.h"
#include "app/export/plan_export.h"
#include "core/analysis/analysis.h"

namespace howlmap::app {
namespace {

void describe_plot(QCommandLineParser& options) {
    add_plan_options(options);
    options.addOption(
        {QStringLiteral("loops"), cli_text(QT_TRANSLATE_NOOP("command_line", "draw the loops that matter as lines"))});
}

Status run_plot(const Arguments& arguments, Console& console) {
    const auto file = plan_file_option(arguments, console);
    if (!file) return Status::refused;
    const auto show = open_show(arguments.operands[0], console);
    if (!show) return Status::refused;
    PlanDrawing drawing;
    drawing.font = page_font();
    if (arguments.has("loops")) {
        AnalysisOptions options;
        options.tolerance = options.listening = false;
        if (auto result = analyse(*show, options))
            drawing.analysis = std::make_shared<const AnalysisResult>(std::move(*result));
    }
    return write_plan(*show, drawing, *file, arguments.value("output"), console);
}

}  // namespace

const Verb plot_verb{"plot", "SHOW",        QT_TRANSLATE_NOOP("command_line", "the drawn plan as SVG, PDF or PNG"),
                     true,   describe_plot, run_plot};

}  // namespace howlmap::app
