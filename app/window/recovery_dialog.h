// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <QList>
#include <optional>

#include "app/document/autosave.h"

class QTreeWidget;

namespace howlmap::app {

/// Offers what a run that ended badly left behind: restore one, discard some, or decide later.
class RecoveryDialog : public QDialog {
    Q_OBJECT
  public:
    RecoveryDialog(const QList<Recoverable>& copies, QWidget* parent);

    /// The copy to restore, if that was the answer.
    std::optional<Recoverable> chosen() const { return chosen_; }

  private:
    void restore();
    void discard();

    QList<Recoverable> copies_;
    std::optional<Recoverable> chosen_;
    QTreeWidget* list_;
};

}  // namespace howlmap::app
