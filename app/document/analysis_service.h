// SPDX-License-Identifier: GPL-3.0-or-later
// Snapshot out, result in: the interface thread never computes acoustics. While the hand moves the figures as drawn
// follow as fast as they can be had; the draws start when it rests. What an edit does not touch is not computed again:
// a name or a listener leaves the loops and their draws as they are, and what is undone is remembered.
#pragma once
#include <QObject>
#include <QTimer>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

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
    /// Margin as drawn of the newest edit for which it is known: while the hand moves ahead of result(). Absent without
    /// a loop, and before the first result.
    std::optional<double> margin_db() const;
    bool busy() const { return drawn_.busy() || counted_.busy() || settle_.isActive(); }

  Q_SIGNALS:
    void updated();                  ///< result() changed: first the figures as drawn, then those to count on
    void margin_moved();             ///< margin_db() changed under the hand
    void started();                  ///< the result is no longer that of the show
    void progress(double fraction);  ///< of the draws, 0..1

  private:
    /// A result and what it was computed from.
    struct Known {
        Show part;  ///< loop_part() of the show
        std::shared_ptr<const AnalysisResult> result;
    };
    using Accept = std::function<void(Known)>;

    void restart();
    void start_swift();
    void start_drawn();
    void start_counted();
    void stop_counting();
    void remember(Known known);
    void accept_drawn(quint64 revision, Known known);
    void accept_counted(quint64 revision, Known known);
    Worker::Work analysis(bool with_draws, Accept accept) const;

    Document& document_;
    QTimer settle_;
    Pace pace_, swift_pace_, drawn_pace_;
    std::shared_ptr<const AnalysisResult> result_;
    std::vector<std::shared_ptr<const Known>>
        known_;                     ///< newest first; for undo and redo, and for what touches no loop
    std::optional<Show> counting_;  ///< loop_part() of the show whose draws are under way
    std::optional<double> swift_db_;
    quint64 swift_revision_ = 0, drawn_revision_ = 0, counted_revision_ = 0;
    Worker swift_{Worker::Manners::behind}, drawn_{Worker::Manners::behind},
        counted_{Worker::Manners::behind};  // last, so that they have stopped before anything else goes
};

}  // namespace howlmap::app
