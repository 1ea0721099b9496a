// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "app/document/document.h"

class QLabel;

namespace howlmap::app {

/// For a loudspeaker or microphone with a measured directivity: what it holds, and buttons to paste, load or copy it as
/// a table.
class MeasuredDirectivity : public QWidget {
    Q_OBJECT
  public:
    MeasuredDirectivity(Document& document, QString id, QWidget* parent = nullptr);
    void refresh();  ///< hidden where the object has no measured table
    /// Text as read_directivity_csv() takes it; says what is wrong below the buttons. Returns whether it was taken.
    bool take(const QString& text);

  private:
    void load();

    Document& document_;
    QString id_;
    QLabel *summary_, *trouble_;
};

}  // namespace howlmap::app
