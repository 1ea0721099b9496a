// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/parts/part_delegate.h"

#include <QApplication>
#include <QPainter>
#include <algorithm>

#include "app/export/symbol.h"
#include "app/panels/parts/part_list.h"

namespace howlmap::app {
namespace {

constexpr int kIcon = 24, kGap = 6;

void paint_icon(QPainter& painter, const QRect& box, const QString& kind, const QPalette& palette) {
    const Symbol& symbol = symbol_named(kind, false);
    const double size = std::max(symbol.bounds.width(), symbol.bounds.height());
    if (size <= 0.0) return;
    PlanStyle style;
    style.ink = Ink::from(palette);
    style.px = size / (kIcon - 2);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(QRectF(box).center());
    painter.scale(1.0 / style.px, 1.0 / style.px);
    painter.translate(-symbol.bounds.center());
    paint_symbol(painter, symbol, style, 1.0, palette.color(QPalette::Text));
    painter.restore();
}

/// On one line where it fits, else what it is over which one: the words after the comma tell parts apart.
void paint_name(QPainter& painter, const QRect& room, const QString& name, const QFontMetrics& metrics) {
    const qsizetype comma = name.indexOf(QLatin1Char(','));
    QStringList lines{name};
    if (comma > 0 && metrics.horizontalAdvance(name) > room.width())
        lines = {name.left(comma + 1), name.mid(comma + 1).trimmed()};
    for (QString& line : lines) line = metrics.elidedText(line, Qt::ElideRight, room.width());
    painter.drawText(room, Qt::AlignVCenter | Qt::AlignLeft, lines.join(QLatin1Char('\n')));
}

}  // namespace

void PartDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Part* part = static_cast<const PartList*>(index.model())->part_at(index);
    if (!part) return QStyledItemDelegate::paint(painter, option, index);
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    row.text.clear();
    const QStyle* style = row.widget ? row.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &row, painter, row.widget);

    QPalette palette = option.palette;
    const bool selected = option.state & QStyle::State_Selected;
    if (selected) palette.setColor(QPalette::Text, palette.color(QPalette::HighlightedText));
    const QRect icon(option.rect.left() + kGap, option.rect.center().y() - kIcon / 2, kIcon, kIcon);
    paint_icon(*painter, icon, part->symbol, palette);
    painter->setPen(palette.color(QPalette::Text));
    const QRect text = option.rect.adjusted(kIcon + 2 * kGap, 0, -kGap, 0);
    paint_name(*painter, text, part->name, option.fontMetrics);
}

QSize PartDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QSize size = QStyledItemDelegate::sizeHint(option, index);
    return {size.width() + kIcon + 2 * kGap,
            std::max({size.height(), kIcon + kGap, 2 * option.fontMetrics.height() + 2})};
}

}  // namespace howlmap::app
