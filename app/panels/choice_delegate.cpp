// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/choice_delegate.h"

#include <QComboBox>
#include <utility>

namespace howlmap::app {

ChoiceDelegate::ChoiceDelegate(std::function<QStringList()> choices, QObject* parent)
    : QStyledItemDelegate(parent), choices_(std::move(choices)) {}

QWidget* ChoiceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex&) const {
    auto* box = new QComboBox(parent);
    box->addItems(choices_());
    // A choice is complete as soon as it is made; waiting for the focus to leave would lose it on Esc.
    connect(box, &QComboBox::activated, this, [this, box] {
        auto* self = const_cast<ChoiceDelegate*>(this);
        Q_EMIT self->commitData(box);
        Q_EMIT self->closeEditor(box);
    });
    return box;
}

void ChoiceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* box = static_cast<QComboBox*>(editor);
    const QString text = index.data(Qt::EditRole).toString();
    if (box->findText(text) < 0) box->addItem(text);  // a measured pattern or a cupped one stays choosable
    box->setCurrentText(text);
}

void ChoiceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
    model->setData(index, static_cast<QComboBox*>(editor)->currentText(), Qt::EditRole);
}

}  // namespace howlmap::app
