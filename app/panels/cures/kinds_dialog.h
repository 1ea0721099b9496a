// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <vector>

#include "app/settings/cure_choices.h"

class QCheckBox;
class QDoubleSpinBox;
class QGridLayout;

namespace howlmap::app {

/// Asks which kinds of cure can be had here and how much trouble each is; accepted, the answer is kept in the settings.
class KindsDialog : public QDialog {
    Q_OBJECT
  public:
    explicit KindsDialog(QWidget* parent);
    CureChoices chosen() const;
    void accept() override;

  private:
    struct Row {
        CureKind kind;
        QCheckBox* offered;
        QDoubleSpinBox* trouble;
    };
    QWidget* build_rows();
    void add_row(QGridLayout& grid, CureKind kind);
    void show_choices(const CureChoices& choices);

    std::vector<Row> rows_;
};

}  // namespace howlmap::app
