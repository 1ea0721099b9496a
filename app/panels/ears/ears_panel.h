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
class QPlainTextEdit;
class QPushButton;
class QTableView;
class QTabWidget;

namespace howlmap::app {

class PlayersModel;
class TextTable;

/// Each player: own, others, hear margin, minutes; the house against its target; loudspeakers against what they can;
/// and what to do about it: sends solved for a wish, the quietest stage, what a louder neighbour costs. Long work runs
/// aside; a result is applied as one step.
class EarsPanel : public QWidget {
    Q_OBJECT
  public:
    EarsPanel(const Workspace& workspace, QWidget* parent);
    QTableView& players() { return *players_; }
    QLabel& sentence() { return *sentence_; }
    /// What the last solver found, in words.
    QString answer() const;
    void set_wish(WishKind kind, double value_db);
    bool busy() const { return worker_.busy() || words_worker_.busy(); }

  public Q_SLOTS:
    void solve_wish();       ///< sends of the marked player, for the wish in the fields
    void solve_everybody();  ///< the same wish for all players with sends of their own
    void find_quietest();
    void tell_spiral();
    void apply_found();  ///< the last solution

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    QWidget* build_left();
    QWidget* build_wish();
    QWidget* build_quiet();
    QWidget* build_right();
    QWidget* build_house();
    QWidget* build_answer();
    QPushButton* button(const char* name, const QString& text, const QString& tip, void (EarsPanel::*slot)());
    void show_figures();
    void show_house_words();
    void mark_selected();
    std::string marked_player() const;
    void solve(std::vector<Wish> wishes);
    void tell(const QString& words);
    void offer(const Show& after, quint64 revision, const QString& step);
    Wish wish_for(const std::string& performer) const;

    Workspace workspace_;
    PlayersModel* players_model_;
    TextTable *house_model_, *loads_model_, *bands_model_;
    QTableView* players_ = nullptr;
    QTableView* house_ = nullptr;
    QLabel *sentence_ = nullptr, *house_sentence_ = nullptr;
    QStringList house_words_;  // by row
    QTabWidget* tabs_ = nullptr;
    QPlainTextEdit* answer_ = nullptr;
    QComboBox* wish_kind_ = nullptr;
    QDoubleSpinBox *wish_value_ = nullptr, *set_minutes_ = nullptr, *target_ = nullptr;
    QPushButton* apply_ = nullptr;
    std::optional<Show> found_;
    QString found_step_;
    quint64 found_revision_ = 0;
    Worker worker_, words_worker_;  // last, so that they have stopped before anything else goes
};

}  // namespace howlmap::app
