// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/field_row.h"

#include <QCheckBox>
#include <QComboBox>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/panels/inspector/members_button.h"
#include "app/panels/inspector/paragraph_edit.h"
#include "app/panels/inspector/unit_edit.h"
#include "core/show/placed.h"

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
        case FieldKind::members:
            editor_ = build_members();
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

/// Whether the lock of an object keeps this field as it is.
bool FieldRow::held(const Show& show, const QString& id) const {
    if (!field_.moves) return false;
    const auto object = placed_object(show, id.toStdString());
    return object && object->locked;
}

/// Nothing can be typed where everything is locked; of several objects the others follow, as under the mouse.
void FieldRow::hold() {
    const bool all =
        std::all_of(ids_.begin(), ids_.end(), [this](const QString& id) { return held(document_.show(), id); });
    editor_->setEnabled(!all);
    editor_->setToolTip(all ? tr("It is locked: unlock it on the plan (context menu, Lock) to change this.")
                            : field_.tip);
}

void FieldRow::set(const QVariant& value) {
    document_.edit(tr("Set %1").arg(field_.label), [&](Show& show) {
        for (const QString& id : ids_)
            if (!held(show, id)) field_.set(show, id.toStdString(), value);
    });
}

void FieldRow::set_member(const QString& value, bool on) {
    document_.edit(tr("Set %1").arg(field_.label), [&](Show& show) {
        for (const QString& id : ids_) {
            QStringList members = field_.get(show, id.toStdString()).value_or(QVariant()).toStringList();
            members.removeAll(value);
            if (on) members.append(value);
            field_.set(show, id.toStdString(), members);
        }
    });
}

void FieldRow::refresh() {
    const SharedValue shared = shared_value(field_, document_.show(), ids_);
    applies_ = shared.applies;
    if (shared.applies) show_value_(shared);
    if (field_.moves) hold();
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

namespace {
void fill(QComboBox& box, const QList<Choice>& choices) {
    box.clear();
    for (const Choice& choice : choices) box.addItem(choice.label, choice.value);
}
}  // namespace

QWidget* FieldRow::build_choice() {
    auto* box = new QComboBox(this);
    connect(box, &QComboBox::activated, this, [this, box](int index) { set(box->itemData(index)); });
    show_value_ = [this, box, there = QList<Choice>()](const SharedValue& shared) mutable {
        const QList<Choice> choices = field_.choices(document_.show());
        if (choices != std::exchange(there, choices)) fill(*box, choices);
        box->setPlaceholderText(tr("several"));
        box->setCurrentIndex(shared.several ? -1 : box->findData(shared.value));
    };
    return box;
}

QWidget* FieldRow::build_members() {
    auto* button = new MembersButton(this);
    connect(button, &MembersButton::ticked, this, &FieldRow::set_member);
    show_value_ = [this, button](const SharedValue& shared) {
        const QList<Choice> choices = field_.choices(document_.show());
        const QStringList members = shared.several ? QStringList() : shared.value.toStringList();
        QStringList words;
        for (const Choice& choice : choices)
            if (members.contains(choice.value.toString())) words.append(choice.label);
        button->show_members(choices, members,
                             shared.several    ? tr("several")
                             : words.isEmpty() ? tr("none")
                                               : words.join(QStringLiteral(", ")));
    };
    return button;
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
