// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/common/card.h"

#include <QApplication>
#include <QLabel>
#include <QListView>
#include <QPainter>
#include <utility>

#include "app/export/risk_scale.h"
#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

constexpr int kEdge = 8, kGap = 2, kMark = 4, kAsideGap = 8;

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

/// Side by side from the left: the headline, and what stands beside it where there is room.
void draw_headline(QPainter& painter, const QRect& room, const QFont& font, const QString& headline,
                   const QString& aside) {
    QFont bold = font;
    bold.setWeight(QFont::DemiBold);
    const QString head = QFontMetrics(bold).elidedText(headline, Qt::ElideRight, room.width());
    painter.setFont(bold);
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, head);
    const QRect rest = room.adjusted(QFontMetrics(bold).horizontalAdvance(head) + kAsideGap, 0, 0, 0);
    if (QFontMetrics(font).horizontalAdvance(aside) > rest.width()) return;
    painter.setFont(font);
    painter.drawText(rest, Qt::AlignLeft | Qt::AlignVCenter, aside);
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
    const QString drawn = index.data(kAsDrawn).toString();
    painter->drawText(lower, Qt::AlignRight | Qt::AlignVCenter, drawn);
    const QRect words = lower.adjusted(0, 0, -lines.small.horizontalAdvance(drawn) - kEdge, 0);
    painter->drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                      lines.small.elidedText(index.data(kWords).toString(), Qt::ElideRight, words.width()));
    draw_headline(*painter, upper.adjusted(0, 0, -lines.large.horizontalAdvance(counted) - kEdge / 2, 0),
                  tabular(option.font), headline, index.data(kAside).toString());
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
