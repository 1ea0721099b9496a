// SPDX-License-Identifier: GPL-3.0-or-later
// Cures for the open show, looked for while somebody looks at them and the hands rest. The first come early, the plan
// last.
#pragma once
#include <QObject>
#include <QTimer>
#include <memory>
#include <vector>

#include "app/document/analysis_service.h"
#include "app/document/worker.h"
#include "core/cures/cures.h"

namespace howlmap::app {

class CureService : public QObject {
    Q_OBJECT
  public:
    CureService(Document& document, AnalysisService& analysis, QObject* parent = nullptr);

    /// Whether anybody looks; nothing is computed otherwise.
    void set_wanted(bool wanted);

    /// Starts anew: what the person can do has changed.
    void look_again();

    /// Best first; they stay after an edit until better ones are there, see fresh().
    const std::vector<std::shared_ptr<const Cure>>& cures() const { return cures_; }
    /// Target, margins before and the plan: null while the search runs.
    std::shared_ptr<const CureReport> report() const { return report_; }
    /// Whether the cures are for the show as it is now. Others must not be applied.
    bool fresh() const { return revision_ == document_.revision(); }
    bool busy() const { return worker_.busy() || settle_.isActive(); }

  Q_SIGNALS:
    void changed();
    void progress(double fraction);

  private:
    void edited();
    void want();
    void start();
    void add(quint64 revision, std::shared_ptr<const Cure> cure);
    void finish(quint64 revision, std::shared_ptr<const CureReport> report);

    Document& document_;
    AnalysisService& analysis_;
    bool wanted_ = false;
    quint64 revision_ = 0;
    std::vector<std::shared_ptr<const Cure>> cures_;
    std::shared_ptr<const CureReport> report_;
    QTimer settle_;
    Worker worker_;
};

}  // namespace howlmap::app
