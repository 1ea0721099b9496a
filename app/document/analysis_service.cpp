// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/analysis_service.h"

#include <utility>

namespace howlmap::app {
namespace {
constexpr int kAnalysisSettleMs = 60;

template <class Accept>
Worker::Work analysis(const Show& show, bool with_draws, Accept accept) {
    return [show, with_draws, accept](const Job& job) -> Worker::Deliver {
        AnalysisOptions options;
        options.tolerance = with_draws;
        auto result = analyse(show, options, job);
        if (!result) return {};
        return [accept, result = std::make_shared<AnalysisResult>(std::move(*result))] { accept(std::move(*result)); };
    };
}
}  // namespace

AnalysisService::AnalysisService(Document& document, QObject* parent)
    : QObject(parent), document_(document), pace_(document, [this] { Q_EMIT updated(); }) {
    settle_.setSingleShot(true);
    settle_.setInterval(kAnalysisSettleMs);
    connect(&settle_, &QTimer::timeout, this, &AnalysisService::start_counted);
    connect(&counted_, &Worker::progress, this, &AnalysisService::progress);
    connect(&document_, &Document::changed, this, &AnalysisService::restart);
    connect(&document_, &Document::replaced, this, [this] {
        result_.reset();
        drawn_.cancel();
        restart();
    });
}

void AnalysisService::restart() {
    counted_.cancel();
    start_drawn();
    settle_.start();
    Q_EMIT started();
}

void AnalysisService::start_drawn() {
    auto work = analysis(document_.show(), false, [this, revision = document_.revision()](AnalysisResult result) {
        accept_drawn(revision, std::move(result));
    });
    // While the hand moves, the map under it has the other cores.
    drawn_.run(document_.in_gesture() ? Worker::on_one_core(std::move(work)) : std::move(work));
}

void AnalysisService::start_counted() {
    counted_.restart(analysis(document_.show(), true, [this, revision = document_.revision()](AnalysisResult result) {
        accept_counted(revision, std::move(result));
    }));
}

void AnalysisService::accept_drawn(quint64 revision, AnalysisResult result) {
    if (revision <= drawn_revision_) return;
    if (result_) result.tolerance = result_->tolerance;  // the last ones stay until better ones are there
    drawn_revision_ = revision;
    result_ = std::make_shared<const AnalysisResult>(std::move(result));
    pace_.ask();
}

void AnalysisService::accept_counted(quint64 revision, AnalysisResult result) {
    if (revision != document_.revision()) return;
    drawn_revision_ = counted_revision_ = revision;
    result_ = std::make_shared<const AnalysisResult>(std::move(result));
    pace_.ask();
}

}  // namespace howlmap::app
