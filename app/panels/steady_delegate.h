// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QLineEdit>
#include <QStyledItemDelegate>

namespace howlmap::app {

/// Leaves what is being typed alone when the table is told of new figures: those of an analysis come at any moment.
class SteadyDelegate : public QStyledItemDelegate {
    Q_OBJECT
  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override {
        const auto* line = qobject_cast<const QLineEdit*>(editor);
        if (!line || !line->isModified()) QStyledItemDelegate::setEditorData(editor, index);
    }
};

}  // namespace howlmap::app
