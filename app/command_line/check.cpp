// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/shows.h"
#include "app/command_line/verbs.h"
#include "core/analysis/analysis.h"
#include "core/report/analysis_json.h"
#include "core/report/check_text.h"

namespace howlmap::app {
namespace {

Status run_check(const Arguments& arguments, Console& console) {
    const auto show = open_show(arguments.operands[0], console);
    if (!show) return Status::refused;
    const auto result = analyse(*show);
    console.out << (arguments.json ? analysis_json(*result) : report::check_text(*show, *result));
    return result->verdict == Verdict::holds ? Status::done : Status::target_missed;
}

}  // namespace

const Verb check_verb{
    "check",
    "SHOW",
    QT_TRANSLATE_NOOP("command_line", "margins, verdict, ring list, worst pairs, ears, house, warnings"),
    false,
    nullptr,
    run_check};

}  // namespace howlmap::app
