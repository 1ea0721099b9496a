// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDoubleSpinBox>

namespace howlmap::app {

/// A box for a number that takes point and comma as the decimal mark, whatever the locale. The plain one strips what
/// the locale groups thousands with, and makes 95 of a German "9.5".
class NumberBox : public QDoubleSpinBox {
    Q_OBJECT
  public:
    using QDoubleSpinBox::QDoubleSpinBox;

  protected:
    QValidator::State validate(QString& text, int& cursor) const override;
    double valueFromText(const QString& text) const override;
};

}  // namespace howlmap::app
