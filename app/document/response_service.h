// SPDX-License-Identifier: GPL-3.0-or-later
// Loop gain over frequency for whoever shows it: the curves follow the hand, the band of the draws follows when it
// rests.
#pragma once
#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>

#include "app/document/analysis_service.h"
#include "app/document/pace.h"
#include "app/document/spotlight.h"
#include "app/document/worker.h"
#include "core/analysis/response.h"

namespace howlmap::app {

class ResponseService : public QObject {
    Q_OBJECT
  public:
    ResponseService(Document& document, AnalysisService& analysis, Spotlight& spotlight, QObject* parent = nullptr);

    /// Which loops the curves are of; the band is of the same.
    const OpenLoops& open() const { return open_; }
    void set_open(const OpenLoops& open);

    std::shared_ptr<const LoopResponse> curves() const { return curves_; }    ///< as drawn; null before the first
    std::shared_ptr<const ResponseBand> band() const { return band_; }        ///< null until the draws are done
    std::shared_ptr<const LoopResponse> preview() const { return preview_; }  ///< of the show that is only looked at
    /// Gain left at a ring in 95 of 100 stages, at whatever phase: never less than the margin to count on of the whole
    /// stage. None before the draws.
    std::optional<double> count_on_at(const Ring& ring) const;

  Q_SIGNALS:
    void curves_changed();
    void band_changed();
    void preview_changed();

  private:
    void follow();
    void restart();
    void start_curves();
    void start_band();
    void start_preview();
    std::vector<double> rings() const;  ///< Hz, where they are known

    Document& document_;
    AnalysisService& analysis_;
    Spotlight& spotlight_;
    OpenLoops open_;
    std::optional<Show> part_;  ///< loop_part() of the show that the curves are of
    QTimer settle_;
    Pace pace_, starts_;
    std::shared_ptr<const LoopResponse> curves_, preview_;
    std::shared_ptr<const ResponseBand> band_, all_band_;
    Worker curves_worker_{Worker::Manners::behind}, band_worker_{Worker::Manners::behind}, preview_worker_;
};

}  // namespace howlmap::app
