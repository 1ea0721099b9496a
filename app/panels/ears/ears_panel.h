// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "app/document/worker.h"
#include "app/panels/workspace.h"
#include "core/listening/quiet_stage.h"
#include "core/listening/send_solver.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QTableView;

namespace howlmap::app {

class HouseModel;
class PlayersModel;

/// Each player: own, others, hear margin, minutes; the house against its target; and what to do about it: sends solved
/// for a wish, the quietest stage, what a louder neighbour costs. Long work runs aside; a result is applied as one
/// step.
class EarsPanel : public QWidget {
    Q_OBJECT
  public:
    EarsPanel(const Workspace& workspace, QWidget* parent);
    QTableView& players() { return *players_; }
    QLabel& sentence() { return *sentence_; }
    bool busy() const { return worker_.busy() || words_worker_.busy(); }

  public Q_SLOTS:
    void solve_wish();       ///< sends of the marked player, for the wish in the fields
    void solve_everybody();  ///< the same wish for all players with sends of their own
    void find_quietest();
    void tell_spiral();
    void apply_found();  ///< the last solution

  private:
    void build();
    QWidget* build_tables();
    QWidget* build_wish();
    QPushButton* button(const QString& text, const QString& tip, void (EarsPanel::*slot)());
    void show_figures();
    void show_words();
    void solve(std::vector<Wish> wishes);
    void show_solution(const SendSolution& solution);
    void show_quiet(const QuietStage& quiet);
    void offer(Show after, const QString& step);
    Wish wish_for(const std::string& performer) const;
    QString name_of_player(const std::string& id) const;

    Workspace workspace_;
    Worker worker_, words_worker_;
    PlayersModel* players_model_;
    HouseModel* house_model_;
    QTableView *players_, *house_;
    QLabel *sentence_, *outcome_;
    QComboBox* wish_kind_;
    QDoubleSpinBox *wish_value_, *set_minutes_;
    QPushButton* apply_;
    std::optional<Show> found_;
    QString found_step_;
    quint64 found_revision_ = 0;
};

}  // namespace howlmap::app
