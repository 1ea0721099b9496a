// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings/figures.h"

#include <QLocale>
#include <cmath>

#include "core/report/check_text.h"
#include "core/report/words.h"

namespace howlmap::app {

namespace {
QLocale plain_locale() {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale;
}

double rounded(double value, int decimals) {
    const double unit = std::pow(10.0, decimals);
    return std::round(value * unit) / unit + 0.0;  // no minus zero
}
}  // namespace

QString decimal_text(double value, int decimals) {
    return plain_locale().toString(rounded(value, decimals), 'f', decimals);
}
QString number_text(double value, int decimals) {
    return plain_locale().toString(rounded(value, decimals), 'g', QLocale::FloatingPointShortest);
}
QString hz_text(double hz) { return qstr(report::hz_words(hz)); }
QString band_text(double nominal_hz) { return qstr(report::band_words(nominal_hz)); }
QString margin_text(std::optional<double> db) { return qstr(report::margin_words(db)); }
QString gain_text(double db) {
    const double rounded = std::round(db * 10.0) / 10.0 + 0.0;  // no "-0.0"
    return QStringLiteral("%1%2 dB").arg(rounded < 0.0 ? QString() : QStringLiteral("+"), decimal_text(rounded, 1));
}
QString note_text(const Ring& ring) { return qstr(report::note_words(ring)); }
QString name_text(const Show& show, const std::string& id) { return qstr(report::object_name(show, id)); }

std::optional<double> count_on(const AnalysisResult& result) {
    return result.tolerance ? result.tolerance->margin_p05_db : std::nullopt;
}

}  // namespace howlmap::app
