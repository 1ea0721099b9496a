// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/common/card.h"

#include <QApplication>
#include <QLabel>
#include <QListView>
#include <QPainter>
#include <algorithm>
#include <utility>

#include "app/export/risk_scale.h"
#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

constexpr int kEdge = 8, kGap = 2, kMark = 4;

struct Lines {
    QFontMetrics large, small;
    explicit Lines(const QStyleOptionViewItem& option) : large(figure_font(option.font)), small(tabular(option.font)) {}
    int height() const { return large.height() + small.height() + kGap + 2 * kEdge - 4; }
};

void draw_mark(QPainter& painter, const QRect& rect, const QVariant& risk, const QPalette& palette) {
    if (!risk.isValid()) return;
    const double value = risk.toDouble();
    if (value <= 0.0) return;
    QColor colour = RiskScale(6.0, is_dark(palette)).solid(value);
    painter.fillRect(QRect(rect.left(), rect.top() + 1, kMark, rect.height() - 2), colour);
}

}  // namespace

QSize CardDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {160, Lines(option).height()};
}

void CardDelegate::paint(QPainter* painter, const QStyleOptionViewItem& given, const QModelIndex& index) const {
    QStyleOptionViewItem option = given;
    initStyleOption(&option, index);
    const QString headline = std::exchange(option.text, {});
    (option.widget ? option.widget->style() : QApplication::style())
        ->drawControl(QStyle::CE_ItemViewItem, &option, painter, option.widget);
    draw_mark(*painter, option.rect, index.data(kRisk), option.palette);

    const bool selected = option.state & QStyle::State_Selected;
    const bool enabled = option.state & QStyle::State_Enabled;
    painter->save();
    painter->setPen(option.palette.color(enabled ? QPalette::Active : QPalette::Disabled,
                                         selected ? QPalette::HighlightedText : QPalette::Text));
    const Lines lines(option);
    const QRect body = option.rect.adjusted(kEdge + kMark, kEdge - 2, -kEdge, 2 - kEdge);
    const QRect upper(body.left(), body.top(), body.width(), lines.large.height());
    const QRect lower(body.left(), upper.bottom() + kGap, body.width(), lines.small.height());

    const QString counted = index.data(kCountOn).toString();
    painter->setFont(figure_font(option.font));
    painter->drawText(upper, Qt::AlignRight | Qt::AlignVCenter, counted);
    painter->setFont(tabular(option.font));
    const int right_width = std::max(lines.large.horizontalAdvance(counted),
                                     lines.small.horizontalAdvance(index.data(kAsDrawn).toString())) +
                            kEdge;
    painter->drawText(lower, Qt::AlignRight | Qt::AlignVCenter, index.data(kAsDrawn).toString());
    const int left_width = body.width() - right_width;
    painter->drawText(QRect(lower.topLeft(), QSize(left_width, lower.height())), Qt::AlignLeft | Qt::AlignVCenter,
                      lines.small.elidedText(index.data(kWords).toString(), Qt::ElideRight, left_width));
    QFont head = tabular(option.font);
    head.setWeight(QFont::DemiBold);
    painter->setFont(head);
    painter->drawText(QRect(upper.topLeft(), QSize(left_width, upper.height())), Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetrics(head).elidedText(headline, Qt::ElideRight, left_width));
    painter->restore();
}

void show_as_cards(QListView& list, QAbstractItemModel& model, const char* object_name,
                   const QString& accessible_name) {
    list.setObjectName(QString::fromLatin1(object_name));
    list.setModel(&model);
    list.setItemDelegate(new CardDelegate(&list));
    list.setUniformItemSizes(true);
    list.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list.setFrameShape(QFrame::NoFrame);
    list.setAccessibleName(accessible_name);
}

void set_up_sentence(QLabel& label, int margin) {
    label.setWordWrap(true);
    label.setMargin(margin);
    label.setAlignment(Qt::AlignTop);
}

}  // namespace howlmap::app
