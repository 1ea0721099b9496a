// SPDX-License-Identifier: GPL-3.0-or-later
// Snapshot out, result in: the interface thread never computes acoustics. A stale result is dropped, the last good one
// stays.
#pragma once
#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>
#include <stop_token>

#include "app/document/document.h"
#include "core/analysis/analysis.h"

namespace howlmap::app {

class AnalysisService : public QObject {
    Q_OBJECT
  public:
    explicit AnalysisService(Document& document, QObject* parent = nullptr);
    ~AnalysisService() override;

    /// Last result; its draws may still be those of an older revision while new ones run. Null before the first.
    std::shared_ptr<const AnalysisResult> result() const { return result_; }
    /// Whether the as-drawn figures (fresh) and the draws (counted) belong to the current revision.
    bool fresh() const { return drawn_revision_ == document_.revision(); }
    bool counted() const { return counted_revision_ == document_.revision(); }
    bool busy() const;

  Q_SIGNALS:
    void updated();                  ///< result() changed: first the figures as drawn, then those to count on
    void progress(double fraction);  ///< of the draws, 0..1

  private:
    void restart();
    void start(bool with_draws);
    void accept(quint64 revision, bool with_draws, std::optional<AnalysisResult> result);

    Document& document_;
    QTimer settle_;  ///< draws start when the hand rests
    std::stop_source stop_;
    std::shared_ptr<const AnalysisResult> result_;
    quint64 drawn_revision_ = 0, counted_revision_ = 0;
    int running_ = 0;
};

}  // namespace howlmap::app
