// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/shows.h"
#include "app/command_line/verbs.h"
#include "core/audio/recording.h"
#include "core/file/write.h"
#include "core/report/audio_text.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

constexpr double kLongest_s = 300.0;  // of a recording of taps

void describe_tap(QCommandLineParser& options) {
    add_value_option(options, {QStringLiteral("into")},
                     QT_TRANSLATE_NOOP("command_line", "give the modes to a pickup of this show"), "SHOW");
    add_value_option(options, {QStringLiteral("input")},
                     QT_TRANSLATE_NOOP("command_line", "the pickup, by its id in the show"), "ID");
    add_value_option(options, {QStringLiteral("o"), QStringLiteral("output")},
                     QT_TRANSLATE_NOOP("command_line", "where the show with the modes is written"), "OUT.howlmap");
}

Status put_into_show(const TapFindings& findings, const Arguments& arguments, Console& console) {
    auto show = open_show(arguments.value("into"), console);
    if (!show) return Status::refused;
    const QString id = arguments.value("input");
    Input* input = find_by_id(show->inputs, id.toStdString());
    if (!input)
        return console.complain(
            cli_text(QT_TRANSLATE_NOOP("command_line", "%1 has no input \"%2\"")).arg(arguments.value("into"), id));
    auto* pickup = std::get_if<Pickup>(&input->transducer);
    if (!pickup)
        return console.complain(
            cli_text(QT_TRANSLATE_NOOP("command_line", "input \"%1\" is no pickup, so it has no body modes")).arg(id));
    pickup->modes = body_modes(findings, pickup->modes);
    return write_output(arguments.value("output"), write_show(*show), console);
}

Status run_tap(const Arguments& arguments, Console& console) {
    if (arguments.has("into") != arguments.has("input") || arguments.has("into") != arguments.has("output"))
        return console.complain(cli_text(QT_TRANSLATE_NOOP("command_line", "--into, --input and -o belong together")));
    const auto recording = read_mono(to_path(arguments.operands[0]), kLongest_s);
    if (!recording) return console.complain(QString::fromStdString(recording.error()));
    const auto findings = tap_modes(recording->samples, recording->rate);
    if (!findings)
        return console.complain(
            QStringLiteral("%1: %2").arg(arguments.operands[0], QString::fromStdString(findings.error())));
    if (arguments.has("into"))
        if (const Status status = put_into_show(*findings, arguments, console); status != Status::done) return status;
    console.out << (arguments.json ? tap_json(*findings) : report::tap_text(*findings));
    return Status::done;
}

}  // namespace

const Verb tap_verb{
    "tap", "REC.wav",    QT_TRANSLATE_NOOP("command_line", "body modes (frequency, Q, level) of a tapped instrument"),
    false, describe_tap, run_tap};

}  // namespace howlmap::app
