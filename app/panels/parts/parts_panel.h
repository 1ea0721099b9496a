// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

class QLineEdit;
class QListView;

namespace howlmap::app {

class PartList;

/// What can be put on the plan: search, then drag, double-click or Enter.
class PartsPanel : public QWidget {
    Q_OBJECT
  public:
    explicit PartsPanel(QWidget* parent = nullptr);
    QLineEdit& search() { return *search_; }
    QListView& list() { return *list_; }
    PartList& parts() { return *parts_; }

  Q_SIGNALS:
    void chosen(const QByteArray& preset_json);  ///< to be placed in the middle of the view

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void choose(const QModelIndex& index);

    PartList* parts_;
    QLineEdit* search_;
    QListView* list_;
};

}  // namespace howlmap::app
