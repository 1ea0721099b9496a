// SPDX-License-Identifier: GPL-3.0-or-later
// Snapshot out, result in: the interface thread never computes acoustics. While the hand moves the figures as drawn
// follow as fast as they can be had; the draws start when it rests.
#pragma once
#include <QObject>
#include <QTimer>
#include <memory>

#include "app/document/document.h"
#include "app/document/pace.h"
#include "app/document/worker.h"
#include "core/analysis/analysis.h"

namespace howlmap::app {

class AnalysisService : public QObject {
    Q_OBJECT
  public:
    explicit AnalysisService(Document& document, QObject* parent = nullptr);

    /// Last result; it may be one or two edits old (see fresh), and its draws older still (see counted), so it may name
    /// objects that are gone. Null before the first.
    std::shared_ptr<const AnalysisResult> result() const { return result_; }
    /// Whether the as-drawn figures (fresh) and the draws (counted) belong to the current revision.
    bool fresh() const { return drawn_revision_ == document_.revision(); }
    bool counted() const { return counted_revision_ == document_.revision(); }
    bool busy() const { return drawn_.busy() || counted_.busy() || settle_.isActive(); }

  Q_SIGNALS:
    void updated();                  ///< result() changed: first the figures as drawn, then those to count on
    void started();                  ///< the result is no longer that of the show
    void progress(double fraction);  ///< of the draws, 0..1

  private:
    void restart();
    void start_drawn();
    void start_counted();
    void accept_drawn(quint64 revision, AnalysisResult result);
    void accept_counted(quint64 revision, AnalysisResult result);

    Document& document_;
    QTimer settle_;
    Pace pace_;
    std::shared_ptr<const AnalysisResult> result_;
    quint64 drawn_revision_ = 0, counted_revision_ = 0;
    Worker drawn_{Worker::Manners::behind},
        counted_{Worker::Manners::behind};  // last, so that they have stopped before anything else goes
};

}  // namespace howlmap::app
