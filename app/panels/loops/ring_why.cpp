// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/loops/ring_why.h"

#include <QCoreApplication>
#include <cmath>

#include "app/settings/figures.h"
#include "core/report/check_text.h"

namespace howlmap::app {
namespace {

constexpr std::size_t kShares = 5;
constexpr double kSeen = 0.05;  ///< of a wave, in one digit

QString text(const char* english) { return QCoreApplication::translate("ring_why", english); }

QString growth(const Ring& ring) {
    const QString words = qstr(report::build_up_words(ring.build_up_db_per_s));
    return ring.margin_db > 0.0 ? text(QT_TRANSLATE_NOOP("ring_why", "As set it dies away: %1.")).arg(words)
                                : text(QT_TRANSLATE_NOOP("ring_why", "As set it builds up: %1.")).arg(words);
}

/// What comes to the waves in the air until the sound is back, and whether that is whole: the strongest loop alone need
/// not be, where others ring with it.
QString rest_of_the_way(const Ring& ring) {
    const double waves = std::abs(ring.turns), round = ring.whole_waves + ring.turns;
    QString words = text(QT_TRANSLATE_NOOP("ring_why", "Filters, delays and the body change nothing of that."));
    if (waves >= kSeen)
        words = (ring.turns > 0.0 ? text(QT_TRANSLATE_NOOP("ring_why", "Filters, delays and the body add %1."))
                                  : text(QT_TRANSLATE_NOOP("ring_why", "Filters, delays and the body take away %1.")))
                    .arg(decimal_text(waves, 1));
    return words + u' ' +
           (std::abs(round - std::round(round)) < kSeen
                ? text(QT_TRANSLATE_NOOP("ring_why", "Together that is whole: it comes back in step."))
                : text(QT_TRANSLATE_NOOP("ring_why",
                                         "What is missing to a whole number comes from other paths and "
                                         "loops, which ring along.")));
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
    words += rest_of_the_way(ring) + u' ' + growth(ring);
    if (count_on_db)
        words += u' ' + text(QT_TRANSLATE_NOOP("ring_why", "In 95 of 100 stages it has %1 left or more."))
                            .arg(margin_text(count_on_db));
    return words + QStringLiteral("</p>") + shares(show, ring);
}

}  // namespace howlmap::app
