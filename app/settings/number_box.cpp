// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings/number_box.h"

namespace howlmap::app {
namespace {
/// Either mark as that of the locale. Units hold neither.
QString with_mark_of(const QLocale& locale, QString text) {
    const QString mark = locale.decimalPoint();
    return text.replace(QLatin1Char(','), mark).replace(QLatin1Char('.'), mark);
}
}  // namespace

QValidator::State NumberBox::validate(QString& text, int& cursor) const {
    text = with_mark_of(locale(), text);
    return QDoubleSpinBox::validate(text, cursor);
}

double NumberBox::valueFromText(const QString& text) const {
    return QDoubleSpinBox::valueFromText(with_mark_of(locale(), text));
}

}  // namespace howlmap::app
