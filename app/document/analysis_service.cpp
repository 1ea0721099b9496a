// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/analysis_service.h"

#include <QPointer>
#include <QThreadPool>
#include <utility>

namespace howlmap::app {
namespace {
constexpr int kSettleMs = 60;
}

AnalysisService::AnalysisService(Document& document, QObject* parent) : QObject(parent), document_(document) {
    settle_.setSingleShot(true);
    settle_.setInterval(kSettleMs);
    connect(&settle_, &QTimer::timeout, this, [this] { start(true); });
    connect(&document_, &Document::changed, this, &AnalysisService::restart);
    connect(&document_, &Document::replaced, this, [this] {
        result_.reset();
        restart();
    });
}

AnalysisService::~AnalysisService() { stop_.request_stop(); }

bool AnalysisService::busy() const { return running_ > 0 || settle_.isActive(); }

void AnalysisService::restart() {
    stop_.request_stop();
    stop_ = std::stop_source();
    start(false);
    settle_.start();
}

void AnalysisService::start(bool with_draws) {
    ++running_;
    const quint64 revision = document_.revision();
    QPointer<AnalysisService> self(this);
    Job job{stop_.get_token(), {}};
    if (with_draws)
        job.progress = [self](double fraction) {
            QMetaObject::invokeMethod(
                self.data(),
                [self, fraction] {
                    if (self) Q_EMIT self->progress(fraction);
                },
                Qt::QueuedConnection);
        };
    QThreadPool::globalInstance()->start([self, revision, with_draws, show = document_.show(), job] {
        AnalysisOptions options;
        options.tolerance = with_draws;
        auto result = analyse(show, options, job);
        if (!self) return;
        QMetaObject::invokeMethod(
            self.data(),
            [self, revision, with_draws, result = std::move(result)]() mutable {
                if (self) self->accept(revision, with_draws, std::move(result));
            },
            Qt::QueuedConnection);
    });
}

void AnalysisService::accept(quint64 revision, bool with_draws, std::optional<AnalysisResult> result) {
    --running_;
    if (!result || revision != document_.revision()) return;
    if (!with_draws && counted_revision_ == revision) return;
    if (!with_draws && result_)
        result->tolerance = result_->tolerance;  // the last ones stay until better ones are there
    (with_draws ? counted_revision_ : drawn_revision_) = revision;
    if (with_draws) drawn_revision_ = revision;
    result_ = std::make_shared<const AnalysisResult>(std::move(*result));
    Q_EMIT updated();
}

}  // namespace howlmap::app
