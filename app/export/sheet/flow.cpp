// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/flow.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QTextLayout>
#include <utility>

namespace howlmap::app {
namespace {
constexpr double kFooter = 16.0;
constexpr double kLeading = 1.5;  ///< points between paragraphs, times two
}  // namespace

QFont sheet_font(Type type) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setStyleHint(QFont::SansSerif);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Without shaping there are no ligatures, so that a search of the PDF for "floor" finds it.
    font.setStyleStrategy(QFont::PreferNoShaping);
    switch (type) {
        case Type::title:
            font.setPixelSize(17);
            font.setBold(true);
            break;
        case Type::heading:
            font.setPixelSize(11);
            font.setBold(true);
            break;
        case Type::body:
            font.setPixelSize(9);
            break;
        case Type::small:
            font.setPixelSize(7);
            break;
    }
    return font;
}

QString fitted_words(const QString& text, Type type, double width) {
    const QFontMetricsF metrics(sheet_font(type));
    QString out, word;
    const auto close_word = [&] {
        if (metrics.horizontalAdvance(word) > width)
            for (qsizetype k = 1; k < word.size(); ++k) {
                const qsizetype from = word.lastIndexOf(u'\n', k - 1) + 1;
                if (metrics.horizontalAdvance(word.mid(from, k - from + 1)) > width && k > from) word.insert(k, u'\n');
            }
        out += word;
        word.clear();
    };
    for (const QChar c : text) {
        if (!c.isSpace()) {
            word += c;
            continue;
        }
        close_word();
        out += c;
    }
    close_word();
    return out;
}

Flow::Flow(QPainter& painter, Page page, std::function<void()> next_page)
    : painter_(painter), page_(std::move(page)), next_page_(std::move(next_page)) {
    const double m = page_.margin_pt;
    body_ = QRectF(QPointF(0, 0), page_.size_pt).adjusted(m, m, -m, -m - kFooter);
    y_ = body_.top();
    draw_frame();
}

void Flow::draw_frame() {
    const double top = body_.bottom() + 6.0;
    painter_.setPen(QPen(Qt::black, 0.4));
    painter_.drawLine(QPointF(body_.left(), top), QPointF(body_.right(), top));
    const QRectF foot(body_.left(), top + 2.0, body_.width(), kFooter);
    const QString count = page_.total > 0
                              ? QCoreApplication::translate("Sheet", "page %1 of %2").arg(number_).arg(page_.total)
                              : QCoreApplication::translate("Sheet", "page %1").arg(number_);
    const QFontMetricsF metrics(sheet_font(Type::small));
    const double side = foot.width() * 0.3;
    text(QRectF(foot.left(), foot.top(), foot.width() * 0.38, foot.height()),
         metrics.elidedText(page_.header, Qt::ElideRight, foot.width() * 0.38), Type::small);
    text(QRectF(foot.left() + foot.width() * 0.4, foot.top(), side, foot.height()), page_.version, Type::small,
         Qt::AlignHCenter | Qt::AlignTop);
    text(QRectF(foot.right() - side, foot.top(), side, foot.height()), count, Type::small,
         Qt::AlignRight | Qt::AlignTop);
}

void Flow::need(double height) {
    if (room_left() < height && !at_top()) break_page();
}

void Flow::break_page() {
    next_page_();
    ++number_;
    y_ = body_.top();
    draw_frame();
}

void Flow::skip(double height) { y_ = std::min(y_ + height, body_.bottom()); }

QRectF Flow::take(double height) {
    need(height);
    const QRectF rect(body_.left(), y_, body_.width(), height);
    y_ += height;
    return rect;
}

void Flow::heading(const QString& words, double keep_with_next) {
    const double height = text_height(words, Type::heading, width());
    need(height + keep_with_next);
    if (!at_top()) skip(spacing().gap);
    text(take(height), words, Type::heading);
    painter_.setPen(QPen(Qt::black, 0.8));
    painter_.drawLine(QPointF(left(), y_ + 1.0), QPointF(left() + width(), y_ + 1.0));
    skip(5.0);
}

void Flow::paragraph(const QString& words, Type type) {
    const double height = text_height(words, type, width());
    if (height <= body_height())
        text(take(height), words, type);
    else
        lines(words, type);
    skip(2.0 * kLeading);
}

/// A text that is longer than a page, line by line.
void Flow::lines(const QString& words, Type type) {
    QTextLayout layout(QString(words).replace(u'\n', QChar::LineSeparator), sheet_font(type));
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width());
        const QString part = layout.text().mid(line.textStart(), line.textLength()).remove(QChar::LineSeparator);
        text(take(line.height()), part, type);
    }
    layout.endLayout();
}

double Flow::text_height(const QString& words, Type type, double wide) const {
    const QFontMetricsF metrics(sheet_font(type));
    return metrics.boundingRect(QRectF(0, 0, wide, 1e6), Qt::TextWordWrap, fitted_words(words, type, wide)).height() +
           1.0;
}

void Flow::text(const QRectF& rect, const QString& words, Type type, int flags) {
    painter_.setFont(sheet_font(type));
    painter_.setPen(Qt::black);
    painter_.drawText(rect, flags | Qt::TextWordWrap | Qt::TextDontClip, fitted_words(words, type, rect.width()));
}

}  // namespace howlmap::app
