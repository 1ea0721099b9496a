// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QFileDialog>

#include "app/export/plan_export.h"

class QCheckBox;
class QDoubleSpinBox;
class QSpinBox;

namespace howlmap::app {

/// Under which name the plan is written, and how: the ending says what kind of file; below the name stand resolution
/// and size of a PNG, and whether there is paper behind the plan. What was chosen last is there again.
class PlanFileDialog : public QFileDialog {
    Q_OBJECT
  public:
    /// `name`: the wish, without an ending.
    PlanFileDialog(const QString& name, QWidget* parent = nullptr);
    QString file_name() const { return selectedFiles().value(0); }
    PlanFile wish() const;

  public Q_SLOTS:
    void accept() override;

  private:
    QWidget* build_options();
    void recall();
    void remember() const;
    PlanFormat format() const;
    void follow_filter(const QString& filter);
    void refresh();

    QDoubleSpinBox* dpi_;
    QCheckBox *sized_, *transparent_;
    QSpinBox *width_, *height_;
    QWidget* size_;
};

}  // namespace howlmap::app
