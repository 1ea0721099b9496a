// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/shows.h"
#include "app/command_line/verbs.h"
#include "core/report/audio_text.h"

namespace howlmap::app {
namespace {

void describe_hear(QCommandLineParser& options) {
    add_value_option(options, {QStringLiteral("o"), QStringLiteral("output")},
                     QT_TRANSLATE_NOOP("command_line", "the WAV file to write (needed)"), "OUT.wav");
    add_value_option(options, {QStringLiteral("raise")},
                     QT_TRANSLATE_NOOP("command_line", "raise all sends by so many decibels, -60 to 60"), "DB");
    add_value_option(options, {QStringLiteral("source")},
                     QT_TRANSLATE_NOOP("command_line", "a recording to play instead of the built-in phrase"), "IN.wav");
    add_value_option(
        options, {QStringLiteral("input")},
        QT_TRANSLATE_NOOP("command_line", "the input to play into; if not given, the one that feeds the first ring"),
        "ID");
}

Status run_hear(const Arguments& arguments, Console& console) {
    if (!arguments.has("output"))
        return console.complain(cli_text(QT_TRANSLATE_NOOP("command_line", "-o OUT.wav is missing")));
    if (const auto refused = refuse_other_endings(arguments.value("output"), ".wav", console)) return *refused;
    const auto raise = number_option(arguments, "raise", 0.0, -60.0, 60.0, console);
    if (!raise) return Status::refused;
    const auto show = open_show(arguments.operands[0], console);
    if (!show) return Status::refused;
    HearOptions options;
    options.raise_db = *raise;
    options.input = arguments.value("input").toStdString();
    if (arguments.has("source")) {
        auto source = read_source(to_path(arguments.value("source")));
        if (!source) return console.complain(QString::fromStdString(source.error()));
        options.source = std::move(*source);
    }
    const auto result = hear(*show, std::move(options), to_path(arguments.value("output")));
    if (!result)
        return console.complain(QString::fromStdString(result.error().message),
                                result.error().kind == HearError::Kind::output ? Status::not_written : Status::refused);
    console.out << (arguments.json ? hear_json(*result) : report::hear_text(*result, *show));
    return Status::done;
}

}  // namespace

const Verb hear_verb{
    "hear",
    "SHOW",
    QT_TRANSLATE_NOOP("command_line", "lets you hear the loops: rising, ringing, howling; peaks limited"),
    false,
    describe_hear,
    run_hear};

}  // namespace howlmap::app
