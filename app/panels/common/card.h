// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of a list as small cards: a headline with what to count on beside it, larger, and one line of words. Two type
// sizes.
#pragma once
#include <QStyledItemDelegate>

class QLabel;
class QListView;

namespace howlmap::app {

/// What a model gives for a card, beside Qt::DisplayRole (the headline).
enum CardRole {
    kCountOn = Qt::UserRole + 1,  ///< QString: the figure that counts
    kAsDrawn,                     ///< QString: the figure beside it, smaller
    kWords,                       ///< QString: the line below
    kAside,                       ///< QString: beside the headline, lighter; may be empty
    kRisk                         ///< double 0..1: how near to ringing, for the mark at the edge; invalid: none
};

class CardDelegate : public QStyledItemDelegate {
    Q_OBJECT
  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

/// Makes a list show the rows of a model as cards, without a frame and without a scroll bar across.
void show_as_cards(QListView& list, QAbstractItemModel& model, const char* object_name, const QString& accessible_name);
/// A sentence in place of the list while there is nothing to show, at the top of its room.
void set_up_sentence(QLabel& label, int margin);

}  // namespace howlmap::app
