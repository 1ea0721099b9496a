// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>

#include "app/settings/preferences.h"

class QComboBox;
class QSpinBox;

namespace howlmap::app {

/// The few choices that are the person's and not the show's. The look follows at once; Cancel takes it back.
class PreferencesDialog : public QDialog {
    Q_OBJECT
  public:
    explicit PreferencesDialog(QWidget* parent);
    Preferences chosen() const;
    void accept() override;
    void reject() override;

  private:
    Preferences before_;
    QComboBox *look_, *units_;
    QSpinBox* rest_;
};

}  // namespace howlmap::app
