// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/plan_style.h"

#include <QFontMetricsF>

namespace howlmap::app {
namespace {
QFont sized(const QFont& font, double size_px) {
    QFont result = font;
    result.setStyleStrategy(
        QFont::PreferNoShaping);  // no ligatures where a script needs none: "fi" stays findable in a PDF
    result.setPixelSize(std::max(1, static_cast<int>(std::lround(size_px))));
    return result;
}
}  // namespace

QSizeF text_size_px(const QString& text, const QFont& font, double size_px) {
    const QFontMetricsF metrics(sized(font, size_px));
    return {metrics.horizontalAdvance(text), metrics.height()};
}

void draw_text(QPainter& painter, QPointF at, const QString& text, const PlanStyle& style, double size_px,
               const QColor& colour, Anchor anchor, double turn_deg) {
    const QFont font = sized(style.font, size_px);
    const QFontMetricsF metrics(font);
    const double width = metrics.horizontalAdvance(text);
    const double left = anchor == Anchor::left ? 0.0 : anchor == Anchor::right ? -width : -width / 2.0;
    painter.save();
    painter.translate(at);
    painter.scale(style.px, style.px);
    if (turn_deg != 0.0) painter.rotate(turn_deg);
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(QPointF(left, (metrics.ascent() - metrics.descent()) / 2.0), text);
    painter.restore();
}

}  // namespace howlmap::app
