// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/parts/part_delegate.h"

#include <QApplication>
#include <QPainter>

#include "app/export/symbol.h"
#include "app/panels/parts/part_list.h"

namespace howlmap::app {
namespace {

constexpr int kIcon = 24, kRowHeight = 30, kGap = 6;

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
    painter->drawText(text, Qt::AlignVCenter | Qt::AlignLeft,
                      option.fontMetrics.elidedText(part->name, Qt::ElideRight, text.width()));
}

QSize PartDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QSize size = QStyledItemDelegate::sizeHint(option, index);
    return {size.width() + kIcon + 2 * kGap, std::max(size.height(), kRowHeight)};
}

}  // namespace howlmap::app
