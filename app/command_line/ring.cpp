// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/shows.h"
#include "app/command_line/verbs.h"
#include "core/report/audio_text.h"

namespace howlmap::app {
namespace {

void describe_ring(QCommandLineParser& options) {
    add_value_option(options, {QStringLiteral("show")},
                     QT_TRANSLATE_NOOP("command_line", "say which loops of this show could make each howl"), "SHOW");
}

Status run_ring(const Arguments& arguments, Console& console) {
    std::optional<Show> show;
    if (arguments.has("show") && !(show = open_show(arguments.value("show"), console))) return Status::refused;
    auto reader = RecordingReader::open(to_path(arguments.operands[0]));
    if (!reader) return console.complain(QString::fromStdString(reader.error()));
    const auto findings = find_howls(std::move(*reader));
    if (!findings) return console.complain(QString::fromStdString(findings.error()));
    SuspectLists suspects;
    if (show)
        for (const Howl& howl : findings->howls) suspects.push_back(loops_for_frequency(*show, howl.hz));
    console.out << (arguments.json ? ring_json(*findings, suspects)
                                   : report::ring_text(*findings, suspects, show ? &*show : nullptr));
    return Status::done;
}

}  // namespace

const Verb ring_verb{
    "ring",
    "REC.wav",
    QT_TRANSLATE_NOOP("command_line", "which frequency howls in a recording, which band to pull, which loop it may be"),
    false,
    describe_ring,
    run_ring};

}  // namespace howlmap::app
