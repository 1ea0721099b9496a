// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/export/sheet/written_pages.h"

#include <QFile>
#include <QRectF>
#include <QRegularExpression>
#include <QTest>
#include <algorithm>
#include <cmath>

#include "tests/support/run_to_end.h"

namespace howlmap::app::test {

QString run(const QString& program, const QStringList& arguments) {
    const howlmap::test::Ended ended = howlmap::test::run_to_end(program, arguments);
    return ended.status == 0 ? QString::fromUtf8(ended.out) : QString();
}

QString without_breaks(QString text) {
    return text.replace(QChar::Nbsp, u' ').replace(QRegularExpression(QStringLiteral("\\s+")), QStringLiteral(" "));
}

void write(const QByteArray& bytes, const QString& path) {
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    QCOMPARE(file.write(bytes), bytes.size());
}

namespace {
/// Middles of the dark runs of a row of pixels.
QList<double> runs_of(const QImage& page, int y, int from, int to) {
    constexpr int kDark = 110;  // grid lines are lighter
    QList<double> middles;
    for (int x = from; x < to; ++x) {
        if (qGray(page.pixel(x, y)) > kDark) continue;
        const int start = x;
        while (x < to && qGray(page.pixel(x, y)) <= kDark) ++x;
        middles.append((start + x - 1) / 2.0);
    }
    return middles;
}
}  // namespace

QPair<double, double> widths_on(const QImage& page) {
    double stage = 0.0, bar = 0.0;
    for (int y = page.height() / 10; y < page.height() * 9 / 10; ++y) {
        const QList<double> all = runs_of(page, y, 0, page.width());
        if (all.size() == 2) stage = std::max(stage, all[1] - all[0]);
        // The bar is the only thing with three ticks near the left margin; words follow it.
        const QList<double> left = runs_of(page, y, 0, page.width() / 2);
        if (left.size() >= 3 && left[0] < page.width() / 8 && std::abs(left[0] + left[2] - 2.0 * left[1]) < 3.0)
            bar = std::max(bar, left[2] - left[0]);
    }
    return {stage, bar};
}

void check_boxes(const QString& xml, int least_pages) {
    static const QRegularExpression page_line(QStringLiteral("<page width=\"([0-9.]+)\" height=\"([0-9.]+)\">"));
    static const QRegularExpression word_line(QStringLiteral(
        "<word xMin=\"([0-9.-]+)\" yMin=\"([0-9.-]+)\" xMax=\"([0-9.-]+)\" yMax=\"([0-9.-]+)\">([^<]*)"));
    QRectF page;
    QList<QPair<QRectF, QString>> words;
    int pages = 0;
    for (const QString& line : xml.split(QLatin1Char('\n'))) {
        if (const auto match = page_line.match(line); match.hasMatch()) {
            page = QRectF(0, 0, match.captured(1).toDouble(), match.captured(2).toDouble());
            words.clear();
            ++pages;
        }
        const auto match = word_line.match(line);
        if (!match.hasMatch()) continue;
        const QRectF box(QPointF(match.captured(1).toDouble(), match.captured(2).toDouble()),
                         QPointF(match.captured(3).toDouble(), match.captured(4).toDouble()));
        QVERIFY2(page.contains(box), qPrintable(match.captured(5)));
        for (const auto& [other, text] : words) {
            // Boxes hold a font's full ascent and descent, so lines touch by a part of their height.
            const QRectF common = box.intersected(other);
            QVERIFY2(common.width() < 0.6 || common.height() < 0.4 * std::min(box.height(), other.height()),
                     qPrintable(QStringLiteral("page %1: %2 over %3").arg(pages).arg(match.captured(5), text)));
        }
        words.append({box, match.captured(5)});
    }
    QVERIFY(pages >= least_pages);
}

}  // namespace howlmap::app::test
