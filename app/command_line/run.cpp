// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/run.h"

#include <QCommandLineParser>
#include <QFileInfo>
#include <algorithm>
#include <exception>

namespace howlmap::app {
namespace {

bool bare_word(const QString& text) {
    return !text.isEmpty() && std::ranges::all_of(text, [](QChar c) { return c.isLetter(); }) &&
           !QFileInfo::exists(text);
}

void describe(QCommandLineParser& parser, const Verb& verb) {
    parser.setApplicationDescription(cli_text(verb.summary));
    if (verb.describe) verb.describe(parser);
    if (!verb.draws)
        parser.addOption(
            {QStringLiteral("json"), cli_text(QT_TRANSLATE_NOOP("command_line", "print the machine form"))});
    parser.addOption({{QStringLiteral("h"), QStringLiteral("help")},
                      cli_text(QT_TRANSLATE_NOOP("command_line", "print this text"))});
    parser.addOption({{QStringLiteral("v"), QStringLiteral("version")},
                      cli_text(QT_TRANSLATE_NOOP("command_line", "print the version"))});
}

/// The parser's own first line has the options before the verb, where they cannot be given.
QString help_text(const QCommandLineParser& parser, const Verb& verb) {
    QString text = parser.helpText();
    return text.replace(0, text.indexOf(u'\n'),
                        cli_text(QT_TRANSLATE_NOOP("command_line", "Usage: howlmap %1 %2 [options]"))
                            .arg(QString::fromLatin1(verb.name), QString::fromLatin1(verb.operands)));
}

QString version_text() { return QStringLiteral("howlmap " HOWLMAP_VERSION "\n"); }

QString overview() {
    QString text = cli_text(QT_TRANSLATE_NOOP("command_line",
                                              "Usage: howlmap [SHOW]         open the window\n"
                                              "       howlmap VERB ...       work without one\n\n"
                                              "Verbs (howlmap VERB --help says more):\n"));
    for (const Verb& verb : verbs())
        text += QStringLiteral("  %1%2\n").arg(QString::fromLatin1(verb.name), -10).arg(cli_text(verb.summary));
    text += cli_text(
        QT_TRANSLATE_NOOP("command_line",
                          "\nOptions:\n"
                          "  --help      this text\n"
                          "  --version   the version\n\n"
                          "Exit status: 0 done (check: the margin to count on reaches the target), "
                          "1 check: it does not,\n2 the input is refused, 3 the output could not be written.\n"));
    return text;
}

Status bad_usage(const QString& message, const Verb& verb, Console& console) {
    return console.complain(cli_text(QT_TRANSLATE_NOOP("command_line", "%1\nTry \"howlmap %2 --help\"."))
                                .arg(message, QString::fromLatin1(verb.name)));
}

Status run_verb(const Verb& verb, const QStringList& arguments, Console& console) {
    QCommandLineParser parser;
    describe(parser, verb);
    const bool parsed =
        parser.parse(QStringList{QStringLiteral("howlmap"), QString::fromLatin1(verb.name)} + arguments);
    if (!parsed) return bad_usage(parser.errorText(), verb, console);
    if (parser.isSet(QStringLiteral("help"))) return console.print(help_text(parser, verb)), Status::done;
    if (parser.isSet(QStringLiteral("version"))) return console.print(version_text()), Status::done;

    const QStringList operands = parser.positionalArguments().mid(1);
    const QStringList wanted = QString::fromLatin1(verb.operands).split(u' ', Qt::SkipEmptyParts);
    if (operands.size() < wanted.size())
        return bad_usage(cli_text(QT_TRANSLATE_NOOP("command_line", "%1 is missing")).arg(wanted[operands.size()]),
                         verb, console);
    if (operands.size() > wanted.size())
        return bad_usage(
            cli_text(QT_TRANSLATE_NOOP("command_line", "\"%1\" is one too many")).arg(operands[wanted.size()]), verb,
            console);
    return verb.run({parser, operands, !verb.draws && parser.isSet(QStringLiteral("json"))}, console);
}

Status unknown(const QString& word, Console& console) {
    return console.complain(
        word.startsWith(u'-')
            ? cli_text(QT_TRANSLATE_NOOP("command_line", "unknown option \"%1\"; try \"howlmap --help\"")).arg(word)
            : cli_text(QT_TRANSLATE_NOOP("command_line", "\"%1\" is neither a verb nor a file; try \"howlmap --help\""))
                  .arg(word));
}

Status help(const Request& request, Console& console) {
    if (request.verb) return run_verb(*request.verb, {QStringLiteral("--help")}, console);
    return console.print(overview()), Status::done;
}

Status dispatch(const Request& request, Console& console) {
    switch (request.kind) {
        case Request::Kind::verb:
            return run_verb(*request.verb, request.arguments, console);
        case Request::Kind::help:
            return help(request, console);
        case Request::Kind::version:
            return console.print(version_text()), Status::done;
        default:
            return unknown(request.arguments.value(0), console);
    }
}

}  // namespace

Request request_of(const QStringList& arguments) {
    using Kind = Request::Kind;
    const QString first = arguments.value(0);
    if (const Verb* verb = find_verb(first)) return {Kind::verb, verb, arguments.mid(1)};
    if (first == u"--version" || first == u"-v") return {Kind::version, nullptr, {}};
    if (first == u"--help" || first == u"-h" || first == u"help")
        return {Kind::help, find_verb(arguments.value(1)), {}};
    if ((first.startsWith(u'-') && first != u"--") || bare_word(first)) return {Kind::unknown, nullptr, arguments};
    return {Kind::window, nullptr, first == u"--" ? arguments.mid(1) : arguments};
}

int run(const Request& request, Console& console) {
    Status status = Status::refused;
    try {
        status = dispatch(request, console);
    } catch (const std::exception& error) {
        status = console.complain(
            cli_text(QT_TRANSLATE_NOOP("command_line", "internal error: %1")).arg(QString::fromUtf8(error.what())));
    }
    console.out.flush();
    if (!console.out)
        status = console.complain(cli_text(QT_TRANSLATE_NOOP("command_line", "standard output could not be written")),
                                  Status::not_written);
    return static_cast<int>(status);
}

}  // namespace howlmap::app
