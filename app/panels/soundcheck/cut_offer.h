// SPDX-License-Identifier: GPL-3.0-or-later
// One ring that was heard, and the cut that is offered for it: which mix, band or notch, how deep. One click logs it
// and cuts, as one step that can be undone.
#pragma once
#include <QWidget>

#include "app/document/worker.h"
#include "app/panels/soundcheck/log_edits.h"
#include "app/panels/workspace.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace howlmap::app {

class CutOffer : public QWidget {
    Q_OBJECT
  public:
    CutOffer(const Workspace& workspace, QWidget* parent);
    /// What rings. The mix may be empty: then the one that the loudspeaker hangs on, or the first.
    void offer(double hz, const std::string& input, const std::string& loudspeaker, const std::string& mix);
    void withdraw();  ///< nothing is offered
    RingOutStep step() const;
    bool busy() const { return worker_.busy(); }

  public Q_SLOTS:
    void cut_and_log();
    void log_only();

  Q_SIGNALS:
    void done();       ///< it is in the show
    void suggested();  ///< the depth has been computed

  private:
    void build();
    void fill_mixes();
    void suggest();
    void put(const RingOutStep& step, const QString& name);

    Workspace work_;
    std::optional<RingOutStep> heard_;
    QLabel *title_, *reason_;
    QComboBox *mix_, *with_;
    QDoubleSpinBox* depth_;
    QPushButton *cut_, *log_;
    Worker worker_;
};

}  // namespace howlmap::app
