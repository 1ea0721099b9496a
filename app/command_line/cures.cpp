// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/cures.h"

#include "app/command_line/shows.h"
#include "app/command_line/verbs.h"
#include "core/file/write.h"
#include "core/report/cures_json.h"
#include "core/report/cures_text.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

void describe_cures(QCommandLineParser& options) {
    add_value_option(options, {QStringLiteral("input")},
                     QT_TRANSLATE_NOOP("command_line", "only cures for the loops that this input hears"), "ID");
    add_value_option(options, {QStringLiteral("apply")}, QT_TRANSLATE_NOOP("command_line", "write the show with the plan applied"),
                     "OUT.howlmap");
}

Status run_cures(const Arguments& arguments, Console& console) {
    const auto show = open_show(arguments.operands[0], console);
    if (!show) return Status::refused;
    CureOptions options;
    options.input = arguments.value("input").toStdString();
    if (arguments.has("input") && !find_by_id(show->inputs, options.input))
        return console.complain(cli_text(QT_TRANSLATE_NOOP("command_line", "%1: there is no input \"%2\"."))
                                    .arg(arguments.operands[0], arguments.value("input")));
    const auto report = find_cures(*show, options);
    console.out << (arguments.json ? cures_json(*report) : report::cures_text(*report));
    if (!arguments.has("apply")) return Status::done;
    return write_output(arguments.value("apply"), write_show(report->plan.show), console);
}

}  // namespace

const Verb cures_verb{
    "cures", "SHOW",         QT_TRANSLATE_NOOP("command_line", "ranked cures and the plan, always at equal loudness"),
    false,   describe_cures, run_cures};

}  // namespace howlmap::app
