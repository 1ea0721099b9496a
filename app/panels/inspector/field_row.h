// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QLabel>
#include <QWidget>

#include "app/document/document.h"
#include "app/panels/inspector/field.h"

namespace howlmap::app {

/// What several objects have in one field.
struct SharedValue {
    QVariant value;        ///< of the first object
    bool several = false;  ///< they differ
    bool applies = false;  ///< to at least one of them
};
SharedValue shared_value(const Field& field, const Show& show, const QStringList& ids);

/// The editor of one field for all selected objects, and below it what was wrong with the last entry.
class FieldRow : public QWidget {
    Q_OBJECT
  public:
    FieldRow(Field field, Document& document, QStringList ids, QWidget* parent = nullptr);
    const Field& field() const { return field_; }
    QWidget* editor() const { return editor_; }
    /// Shows the show's present value; hides itself where the field applies to none of the objects.
    void refresh();
    bool applies() const { return applies_; }
    QString trouble() const { return trouble_->text(); }

  private:
    void build();
    QWidget* build_number();
    QWidget* build_text();
    QWidget* build_paragraph();
    QWidget* build_choice();
    QWidget* build_members();
    QWidget* build_flag();
    bool held(const Show& show, const QString& id) const;
    void hold();
    void set(const QVariant& value);
    void set_member(const QString& value, bool on);
    void complain(const QString& text);

    Field field_;
    Document& document_;
    QStringList ids_;
    QWidget* editor_ = nullptr;
    QLabel* trouble_;
    std::function<void(const SharedValue&)> show_value_;
    bool applies_ = true;
};

}  // namespace howlmap::app
