// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPushButton>

#include "app/panels/inspector/field.h"

namespace howlmap::app {

/// Which of several things an object belongs to: their names on a button, and a menu in which each is ticked.
class MembersButton : public QPushButton {
    Q_OBJECT
  public:
    explicit MembersButton(QWidget* parent = nullptr);
    /// `words` stand on the button; ticked are the choices whose values are among `members`.
    void show_members(const QList<Choice>& choices, const QStringList& members, const QString& words);

  Q_SIGNALS:
    void ticked(const QString& value, bool on);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fill(const QList<Choice>& choices);
    void fit_words();

    QList<Choice> choices_;
    QString words_;
};

}  // namespace howlmap::app
