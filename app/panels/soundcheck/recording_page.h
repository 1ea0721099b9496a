// SPDX-License-Identifier: GPL-3.0-or-later
// A recording that howls: which frequencies, when, how fast, and which loops of the show could have made them.
#pragma once
#include <QWidget>
#include <vector>

#include "app/document/worker.h"
#include "app/panels/workspace.h"
#include "core/audio/howl.h"
#include "core/audio/suspects.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QTableWidget;

namespace howlmap::app {

class CutOffer;

class RecordingPage : public QWidget {
    Q_OBJECT
  public:
    RecordingPage(const Workspace& workspace, QWidget* parent);
    void load(const QString& path);
    bool busy() const { return worker_.busy() || suspects_worker_.busy(); }
    const std::vector<Howl>& howls() const { return howls_; }
    const std::vector<LoopSuspect>& suspects() const { return suspects_; }
    CutOffer& offer() { return *offer_; }

  public Q_SLOTS:
    void choose();
    void cancel();

  Q_SIGNALS:
    void loaded();          ///< howls() are those of the recording
    void suspects_found();  ///< suspects() are those of the marked howl

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    QWidget* build_top();
    QWidget* build_tables();
    void show_howls(std::vector<Howl> howls, double seconds);
    void look_for_suspects();
    void show_suspects(std::vector<LoopSuspect> suspects);
    void offer_suspect();
    double marked_hz() const;

    Workspace work_;
    std::vector<Howl> howls_;
    std::vector<LoopSuspect> suspects_;
    QLabel* words_;
    QPushButton *load_, *cancel_;
    QProgressBar* progress_;
    QTableWidget *table_, *suspect_table_;
    CutOffer* offer_;
    Worker worker_, suspects_worker_;
};

/// Whether a file's name says that it is sound.
bool is_sound_file(const QString& path);
/// The filter of a file dialog for them.
QString sound_file_filter();

}  // namespace howlmap::app
