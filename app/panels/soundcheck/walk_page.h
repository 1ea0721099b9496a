// SPDX-License-Identifier: GPL-3.0-or-later
// The guided walk through a ring-out: cautions, raise, listen, name the band, cut no more than needed, next.
#pragma once
#include <QWidget>
#include <optional>
#include <vector>

#include "app/panels/workspace.h"
#include "core/analysis/ring_out.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace howlmap::app {

class CutOffer;
class RingOutModel;

class WalkPage : public QWidget {
    Q_OBJECT
  public:
    enum class Stage { caution, raise, name, finished };
    WalkPage(const Workspace& workspace, const RingOutModel& order, QWidget* parent);
    Stage stage() const { return stage_; }
    int cuts() const { return cuts_; }
    CutOffer& offer() { return *offer_; }

  public Q_SLOTS:
    void refresh();  ///< the order is new
    /// It rings: on to naming the band, this one first.
    void name_band(const BandProbability& band);
    /// A live source or an ear with a meter knows the frequency itself. Before the cautions are read it is kept until
    /// then.
    void name_frequency(double hz);

  private:
    void build();
    void go(Stage stage);
    void forward();
    void finish();
    void fill_bands();
    void choose_band();
    QString instruction() const;
    const BandProbability* likely(int band) const;

    Workspace work_;
    const RingOutModel& order_;
    Stage stage_ = Stage::caution;
    int cuts_ = 0;
    std::optional<double> heard_hz_;
    QLabel *caution_, *step_;
    QComboBox* band_;
    QPushButton *forward_, *finish_;
    CutOffer* offer_;
};

}  // namespace howlmap::app
