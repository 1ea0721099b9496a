// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/legend.h"

#include <QCoreApplication>
#include <QImage>
#include <algorithm>
#include <cmath>
#include <vector>

#include "app/export/risk_scale.h"

namespace howlmap::app {
namespace {
constexpr double kLegendTextPx = 11.0, kLeastTextPx = 8.0;
constexpr double kBarTop = 35.0, kBarHeight = 12.0, kPad = 8.0;
constexpr double kBelowDb = 3.0;  ///< how far below 0 dB the bar of a margin reaches
constexpr double kLevelTint = 150.0;

struct Bar {
    double left, right, low, high;
    double at(double value) const { return left + (right - left) * (value - low) / (high - low); }
};

QString caption(const MapGrid& grid) {
    switch (grid.kind) {
        case MapKind::feedback:
            return QCoreApplication::translate("Plan", "gain left before it rings, dB");
        case MapKind::loudspeaker:
            return QCoreApplication::translate("Plan", "gain left with the loudspeaker here, dB");
        case MapKind::level:
            return QCoreApplication::translate("Plan", "level at ear height, %1")
                .arg(QString::fromStdString(grid.unit));
        case MapKind::wash:
            return QCoreApplication::translate("Plan", "stage wash, %1").arg(QString::fromStdString(grid.unit));
    }
    return {};
}

std::vector<double> risk_ticks(double target_db) {
    std::vector<double> ticks = {0.0, 3.0, 6.0, 12.0};
    std::erase_if(ticks, [&](double t) { return t > 2.0 * target_db; });
    return ticks;
}

std::vector<double> level_ticks(const Bar& bar) {
    const double step = bar.high - bar.low > 15.0 ? 6.0 : 3.0;
    std::vector<double> ticks;
    for (double t = std::ceil(bar.low / step) * step; t <= bar.high; t += step) ticks.push_back(t);
    return ticks;
}

/// A bar of colours as one picture, so that neighbouring strips do not shine through each other.
template <class Colour>
void paint_bar(QPainter& painter, const Bar& bar, Colour colour) {
    QImage strip(static_cast<int>(bar.right - bar.left), 1, QImage::Format_ARGB32);
    for (int x = 0; x < strip.width(); ++x)
        strip.setPixel(x, 0, colour(bar.low + (bar.high - bar.low) * (x + 0.5) / strip.width()));
    painter.drawImage(QRectF(bar.left, kBarTop, bar.right - bar.left, kBarHeight), strip);
}

void paint_risk_bar(QPainter& painter, const Bar& bar, const MapPicture& picture, const PlanStyle& style) {
    const RiskScale scale(picture.target_db, style.ink.dark);
    paint_bar(painter, bar, [&](double margin) { return scale.colour(margin); });
    painter.setPen(style.pen(style.ink.paper, 1.2));
    for (double x = bar.left + 3.0; x + 2.0 < bar.at(0.0); x += 5.0)
        painter.drawLine(QLineF(x - 2.0, kBarTop + kBarHeight, x + 2.0, kBarTop));
}

void paint_level_bar(QPainter& painter, const Bar& bar, const PlanStyle& style) {
    const QColor ink = style.ink.ink;
    paint_bar(painter, bar, [&](double level) {
        return qRgba(ink.red(), ink.green(), ink.blue(),
                     static_cast<int>(kLevelTint * (level - bar.low) / (bar.high - bar.low)));
    });
}
}  // namespace

void paint_legend(QPainter& painter, QPointF upper_left, const MapPicture& picture, const PlanStyle& style,
                  double opacity) {
    painter.save();
    painter.translate(upper_left);
    painter.setPen(style.pen(style.ink.faint, 1.0));
    painter.setBrush(style.ink.paper);
    painter.drawRect(QRectF(QPointF(), kLegendSize));
    const bool risk = shows_risk(picture.grid->kind);
    Bar bar{kPad + 6.0, kLegendSize.width() - kPad - 8.0, -kBelowDb, 2.0 * picture.target_db};
    if (!risk) bar = {bar.left, bar.right, picture.low, std::max(picture.high, picture.low + 1.0)};
    const auto line = [&](double y, const QString& words, const QColor& ink) {
        const double room = kLegendSize.width() - 2.0 * kPad;
        double size = kLegendTextPx;
        while (size > kLeastTextPx && text_size_px(words, style.font, size).width() > room) size -= 0.5;
        QString fitting = words;
        while (fitting.size() > 8 && text_size_px(fitting, style.font, size).width() > room)
            fitting = fitting.left(fitting.size() - 2).trimmed() + QStringLiteral("…");
        draw_text(painter, {kPad, y}, fitting, style, size, ink, Anchor::left);
    };
    line(10.0, picture.title, style.ink.ink);
    line(26.0, caption(*picture.grid), style.ink.soft);
    painter.setOpacity(opacity);
    if (risk)
        paint_risk_bar(painter, bar, picture, style);
    else
        paint_level_bar(painter, bar, style);
    painter.setOpacity(1.0);
    painter.setPen(style.pen(style.ink.soft, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(bar.left, kBarTop, bar.right - bar.left, kBarHeight));
    for (const double tick : risk ? risk_ticks(picture.target_db) : level_ticks(bar)) {
        painter.setPen(style.pen(style.ink.ink, 1.0));
        painter.drawLine(QLineF(bar.at(tick), kBarTop + kBarHeight, bar.at(tick), kBarTop + kBarHeight + 3.0));
        draw_text(painter, {bar.at(tick), kBarTop + kBarHeight + 11.0}, QString::number(tick), style, kLegendTextPx,
                  style.ink.ink);
    }
    painter.restore();
}

}  // namespace howlmap::app
