// SPDX-License-Identifier: GPL-3.0-or-later
// What to do about it, best first: seen as a ghost while the mouse rests on it, applied as one step.
#pragma once
#include <QWidget>
#include <memory>

#include "app/document/cure_service.h"
#include "app/panels/workspace.h"

class QLabel;
class QListView;
class QProgressBar;
class QPushButton;

namespace howlmap::app {

class CureModel;

class CuresPanel : public QWidget {
    Q_OBJECT
  public:
    CuresPanel(const Workspace& workspace, QWidget* parent);

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build_list();
    QWidget* build_buttons();
    QWidget* build_words();
    void refresh();
    void refresh_empty();
    void refresh_plan();
    void refresh_detail();
    void preview(const QModelIndex& index);
    void apply();
    void apply_plan();
    void ask_kinds();

    Workspace work_;
    CureService service_;
    CureModel* model_;
    QListView* list_;
    QLabel *empty_, *figures_, *detail_, *plan_;
    QPushButton *apply_, *why_, *apply_plan_;
    QProgressBar* progress_;
    std::string current_;   ///< id of the cure that the user chose
    bool filling_ = false;  ///< the list: its current row is no choice
};

}  // namespace howlmap::app
