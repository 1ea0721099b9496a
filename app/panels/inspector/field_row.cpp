// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/field_row.h"

#include <QCheckBox>
#include <QComboBox>
#include <QVBoxLayout>
#include <utility>

#include "app/panels/inspector/paragraph_edit.h"
#include "app/panels/inspector/unit_edit.h"

namespace howlmap::app {

SharedValue shared_value(const Field& field, const Show& show, const QStringList& ids) {
    SharedValue shared;
    for (const QString& id : ids) {
        const auto value = field.get(show, id.toStdString());
        if (!value) continue;
        if (shared.applies && *value != shared.value) shared.several = true;
        if (!shared.applies) shared.value = *value;
        shared.applies = true;
    }
    return shared;
}

FieldRow::FieldRow(Field field, Document& document, QStringList ids, QWidget* parent)
    : QWidget(parent), field_(std::move(field)), document_(document), ids_(std::move(ids)), trouble_(new QLabel(this)) {
    build();
    refresh();
}

void FieldRow::build() {
    switch (field_.kind) {
        case FieldKind::text:
            editor_ = build_text();
            break;
        case FieldKind::paragraph:
            editor_ = build_paragraph();
            break;
        case FieldKind::choice:
            editor_ = build_choice();
            break;
        case FieldKind::flag:
            editor_ = build_flag();
            break;
        default:
            editor_ = build_number();
            break;
    }
    editor_->setAccessibleName(field_.label);
    editor_->setToolTip(field_.tip);
    setFocusProxy(editor_);
    trouble_->setWordWrap(true);
    trouble_->hide();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(1);
    layout->addWidget(editor_);
    layout->addWidget(trouble_);
}

void FieldRow::complain(const QString& text) {
    trouble_->setText(text);
    trouble_->setVisible(!text.isEmpty());
}

void FieldRow::set(const QVariant& value) {
    document_.edit(tr("Set %1").arg(field_.label), [&](Show& show) {
        for (const QString& id : ids_) field_.set(show, id.toStdString(), value);
    });
}

void FieldRow::refresh() {
    const SharedValue shared = shared_value(field_, document_.show(), ids_);
    applies_ = shared.applies;
    if (shared.applies) show_value_(shared);
}

QWidget* FieldRow::build_number() {
    auto* edit = new UnitEdit(field_, document_.show().display.units, this);
    connect(edit, &UnitEdit::entered, this,
            [this](std::optional<double> value) { set(value ? QVariant(*value) : QVariant()); });
    connect(edit, &UnitEdit::trouble, this, &FieldRow::complain);
    show_value_ = [edit](const SharedValue& shared) {
        edit->show_value(shared.value.isValid() ? std::optional<double>(shared.value.toDouble()) : std::nullopt,
                         shared.several);
    };
    return edit;
}

QWidget* FieldRow::build_text() {
    auto* edit = new QLineEdit(this);
    connect(edit, &QLineEdit::editingFinished, this, [this, edit] {
        if (!edit->isModified()) return;
        edit->setModified(false);
        set(edit->text());
    });
    show_value_ = [edit](const SharedValue& shared) {
        edit->setPlaceholderText(shared.several ? tr("several") : QString());
        const QString text = shared.several ? QString() : shared.value.toString();
        if (edit->text() != text) edit->setText(text);
        edit->setModified(false);
    };
    return edit;
}

QWidget* FieldRow::build_paragraph() {
    auto* edit = new ParagraphEdit(this);
    connect(edit, &ParagraphEdit::entered, this, [this](const QString& text) { set(text); });
    show_value_ = [edit](const SharedValue& shared) {
        edit->setPlaceholderText(shared.several ? tr("several") : QString());
        edit->show_text(shared.several ? QString() : shared.value.toString());
    };
    return edit;
}

QWidget* FieldRow::build_choice() {
    auto* box = new QComboBox(this);
    connect(box, &QComboBox::activated, this, [this, box](int index) { set(box->itemData(index)); });
    show_value_ = [this, box](const SharedValue& shared) {
        box->clear();
        for (const Choice& choice : field_.choices(document_.show())) box->addItem(choice.label, choice.value);
        box->setPlaceholderText(tr("several"));
        box->setCurrentIndex(shared.several ? -1 : box->findData(shared.value));
    };
    return box;
}

QWidget* FieldRow::build_flag() {
    auto* box = new QCheckBox(this);
    connect(box, &QCheckBox::clicked, this, [this, box] {
        box->setTristate(false);
        set(box->isChecked());
    });
    show_value_ = [box](const SharedValue& shared) {
        box->setTristate(shared.several);
        box->setCheckState(shared.several ? Qt::PartiallyChecked : shared.value.toBool() ? Qt::Checked : Qt::Unchecked);
    };
    return box;
}

}  // namespace howlmap::app
