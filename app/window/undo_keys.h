// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>

namespace howlmap::app {

/// A text field keeps the keys of undo and redo for what is typed in it, even when nothing is; after Enter in a field
/// of the Inspector they would do nothing. While a field holds nothing that is not yet taken, they are the show's.
class UndoKeys : public QObject {
    Q_OBJECT
  public:
    explicit UndoKeys(QObject* parent);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace howlmap::app
