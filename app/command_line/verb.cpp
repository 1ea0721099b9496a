// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/verb.h"

#include <QCoreApplication>
#include <QLocale>

namespace howlmap::app {

QString cli_text(const char* source) { return QCoreApplication::translate("command_line", source); }

void add_value_option(QCommandLineParser& options, const QStringList& names, const char* what, const char* value_name) {
    options.addOption(QCommandLineOption(names, cli_text(what), QString::fromLatin1(value_name)));
}

std::optional<double> number_option(const Arguments& arguments, const char* option, double missing, double low,
                                    double high, Console& console) {
    if (!arguments.has(option)) return missing;
    bool ok = false;
    const QString text = arguments.value(option);
    const double value = QLocale::c().toDouble(text, &ok);
    if (ok && value >= low && value <= high) return value;
    console.complain(cli_text(QT_TRANSLATE_NOOP("command_line", "--%1: found \"%2\", expected a number from %3 to %4"))
                         .arg(QString::fromLatin1(option), text)
                         .arg(low)
                         .arg(high));
    return std::nullopt;
}

}  // namespace howlmap::app
