// SPDX-License-Identifier: GPL-3.0-or-later
// A verb makes the program work on its own: no window, no display. One file a verb, one row in verbs.cpp.
#pragma once
#include <QCommandLineParser>
#include <QStringList>
#include <optional>

#include "app/command_line/console.h"

namespace howlmap::app {

/// What a verb was given, already checked against its description.
struct Arguments {
    const QCommandLineParser& options;
    QStringList operands;  ///< as many as Verb::operands names
    bool json = false;

    bool has(const char* option) const { return options.isSet(QString::fromLatin1(option)); }
    QString value(const char* option) const { return options.value(QString::fromLatin1(option)); }
};

struct Verb {
    const char* name;
    const char* operands;  ///< names of the operands, separated by spaces: "SHOW"
    const char* summary;   ///< one line for --help
    bool draws;            ///< needs fonts and painting: runs on the offscreen platform; has no machine form to print
    /// Adds the verb's own options (--json, --help and --version come by themselves); may be null.
    void (*describe)(QCommandLineParser& options);
    /// Does the work. Never called with bad usage.
    Status (*run)(const Arguments& arguments, Console& console);
};

/// Text of the command line in the user's language.
QString cli_text(const char* source);

/// Shorthand for describe(): an option with a value.
void add_value_option(QCommandLineParser& options, const QStringList& names, const char* what, const char* value_name);

/// A numeric option in [low, high], C locale. Absent: `missing`. Complains and gives none if it is no such number.
std::optional<double> number_option(const Arguments& arguments, const char* option, double missing, double low,
                                    double high, Console& console);

}  // namespace howlmap::app
