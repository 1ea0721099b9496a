// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/loops/ring_why.h"

#include <QCoreApplication>

#include "app/settings/figures.h"
#include "core/report/check_text.h"

namespace howlmap::app {
namespace {

constexpr std::size_t kShares = 5;

QString text(const char* english) { return QCoreApplication::translate("ring_why", english); }

QString growth(const Ring& ring) {
    const QString words = qstr(report::build_up_words(ring.build_up_db_per_s));
    return ring.margin_db > 0.0 ? text(QT_TRANSLATE_NOOP("ring_why", "As set it dies away: %1.")).arg(words)
                                : text(QT_TRANSLATE_NOOP("ring_why", "As set it builds up: %1.")).arg(words);
}

QString shares(const Show& show, const Ring& ring) {
    QString rows;
    for (std::size_t i = 0; i < std::min(kShares, ring.shares.size()); ++i) {
        const Share& share = ring.shares[i];
        rows +=
            QStringLiteral("<tr><td align=\"right\">%1 %&nbsp;&nbsp;</td><td>%2 → %3</td></tr>")
                .arg(qRound(100.0 * share.share))
                .arg(name_text(show, share.loudspeaker).toHtmlEscaped(), name_text(show, share.input).toHtmlEscaped());
    }
    return QStringLiteral("<table>%1</table>").arg(rows);
}

}  // namespace

QString ring_why(const Show& show, const Ring& ring, std::optional<double> count_on_db) {
    QString words = QStringLiteral("<p><b>%1.</b> ").arg(qstr(report::ring_words(show, ring)).toHtmlEscaped());
    words +=
        text(QT_TRANSLATE_NOOP("ring_why", "Filters, delays and the body make up the rest of the way round: %1 turns."))
            .arg(decimal_text(ring.turns, 1));
    words += u' ' + growth(ring);
    if (count_on_db)
        words += u' ' + text(QT_TRANSLATE_NOOP("ring_why", "In 95 of 100 stages it has %1 left or more."))
                            .arg(margin_text(count_on_db));
    return words + QStringLiteral("</p>") + shares(show, ring);
}

}  // namespace howlmap::app
