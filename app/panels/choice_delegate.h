// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>
#include <QStyledItemDelegate>
#include <functional>

namespace howlmap::app {

/// Edits a table cell by choosing from a list that is asked for when the editor opens.
class ChoiceDelegate : public QStyledItemDelegate {
    Q_OBJECT
  public:
    ChoiceDelegate(std::function<QStringList()> choices, QObject* parent);
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

  private:
    std::function<QStringList()> choices_;
};

}  // namespace howlmap::app
