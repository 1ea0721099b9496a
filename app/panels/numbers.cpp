// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/numbers.h"

#include <QLocale>
#include <QRegularExpression>

namespace howlmap::app {

std::optional<double> number_of(const QString& text) {
    static const QRegularExpression form(QStringLiteral("^\\s*([+\\-\u2212]?\\d*(?:[.,]\\d*)?)\\s*[a-zA-Z%°³]*\\s*$"));
    const auto match = form.match(text);
    if (!match.hasMatch()) return std::nullopt;
    QString digits = match.captured(1);
    digits.replace(QLatin1Char(','), QLatin1Char('.')).replace(QChar(0x2212), QLatin1Char('-'));
    bool ok = false;
    const double value = QLocale::c().toDouble(digits, &ok);
    if (!ok) return std::nullopt;
    return value;
}

}  // namespace howlmap::app
