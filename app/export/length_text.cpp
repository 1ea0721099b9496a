// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/length_text.h"

#include <QLocale>
#include <cmath>

namespace howlmap::app {
namespace {
constexpr double kMetresPerInch = 0.0254;

QString feet_text(double metres, double inch_step) {
    const double inches = std::round(std::abs(metres) / kMetresPerInch / inch_step) * inch_step;
    const int feet = static_cast<int>(inches / 12.0);
    const double rest = inches - 12.0 * feet;
    const QString sign = metres < 0.0 && inches > 0.0 ? QStringLiteral("−") : QString();
    const QString tail = QLocale().toString(rest, 'f', std::abs(rest - std::round(rest)) > 0.01 ? 1 : 0);
    if (feet == 0) return QStringLiteral("%1%2\u2033").arg(sign, tail);
    return QStringLiteral("%1%2\u2032 %3\u2033").arg(sign).arg(feet).arg(tail);
}

QString metre_text(double metres) {
    QString digits = QLocale().toString(std::round(metres * 100.0) / 100.0, 'f', 2);
    if (digits.endsWith(u'0')) digits.chop(1);
    return digits + QStringLiteral(" m");
}
}  // namespace

QString length_text(double metres, Units units) {
    return units == Units::metric ? metre_text(metres) : feet_text(metres, 0.5);
}

QString coarse_length_text(double metres, Units units) {
    if (units == Units::imperial) return feet_text(metres, 1.0);
    return QLocale().toString(std::round(metres / 0.05) * 0.05, 'f', 2) + QStringLiteral(" m");
}

}  // namespace howlmap::app
