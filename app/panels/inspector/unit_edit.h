// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QLineEdit>
#include <optional>

#include "app/panels/inspector/field.h"

namespace howlmap::app {

/// A number with its unit, typed as people type: "1,07 m", "3' 6\"", "98.5 dB". Arrow keys step. What cannot be read
/// stays in the field and is reported; nothing is set.
class UnitEdit : public QLineEdit {
    Q_OBJECT
  public:
    UnitEdit(const Field& field, Units units, QWidget* parent = nullptr);

    /// No value: shown empty. `several`: the selected objects differ.
    void show_value(std::optional<double> value, bool several);
    std::optional<double> value() const { return value_; }

  Q_SIGNALS:
    void entered(std::optional<double> value);  ///< read and in range, by Enter, leaving the field or an arrow key
    void trouble(const QString& text);          ///< empty: all well again

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QString text_of(double value) const;
    void read();
    void step_by(double steps);

    Field field_;
    Units units_;
    std::optional<double> value_;
};

}  // namespace howlmap::app
