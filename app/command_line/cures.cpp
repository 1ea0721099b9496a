// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/cures.h"

#include <limits>

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
    add_value_option(options, {QStringLiteral("without")},
                     QT_TRANSLATE_NOOP("command_line", "kinds of cure that cannot be had here, as --json names them"),
                     "KIND,...");
    add_value_option(options, {QStringLiteral("apply")},
                     QT_TRANSLATE_NOOP("command_line", "write the show with the plan applied"), "OUT.howlmap");
}

/// Kinds that are ruled out by --without become endless trouble.
std::optional<Status> rule_out(const QString& list, TroubleWeights& weights, Console& console) {
    QStringList known;
    for (const CureKind kind : all_cure_kinds()) known << QString::fromLatin1(to_string(kind));
    for (const QString& name : list.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const auto place = known.indexOf(name);
        if (place < 0)
            return console.complain(
                cli_text(QT_TRANSLATE_NOOP("command_line", "--without: found \"%1\", expected some of %2"))
                    .arg(name, known.join(QLatin1Char(','))));
        weights.set(all_cure_kinds()[static_cast<std::size_t>(place)], std::numeric_limits<double>::infinity());
    }
    return std::nullopt;
}

Status run_cures(const Arguments& arguments, Console& console) {
    const auto show = open_show(arguments.operands[0], console);
    if (!show) return Status::refused;
    CureOptions options;
    options.input = arguments.value("input").toStdString();
    if (arguments.has("input") && !find_by_id(show->inputs, options.input))
        return console.complain(cli_text(QT_TRANSLATE_NOOP("command_line", "%1: there is no input \"%2\"."))
                                    .arg(arguments.operands[0], arguments.value("input")));
    if (const auto refused = rule_out(arguments.value("without"), options.weights, console)) return *refused;
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
