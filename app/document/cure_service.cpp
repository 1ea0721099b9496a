// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/cure_service.h"

#include <algorithm>
#include <utility>

#include "app/settings/cure_choices.h"

namespace howlmap::app {
namespace {
constexpr int kCuresSettleMs = 400;
constexpr quint64 kNone = ~quint64{0};  // a revision that no document has
}  // namespace

CureService::CureService(Document& document, AnalysisService& analysis, QObject* parent)
    : QObject(parent), document_(document), analysis_(analysis) {
    settle_.setSingleShot(true);
    settle_.setInterval(kCuresSettleMs);
    connect(&settle_, &QTimer::timeout, this, &CureService::start);
    connect(&worker_, &Worker::progress, this, &CureService::progress);
    connect(&document_, &Document::changed, this, &CureService::edited);
    connect(&document_, &Document::replaced, this, [this] {
        cures_.clear();
        edited();
    });
    connect(&analysis_, &AnalysisService::updated, this, &CureService::want);
}

void CureService::set_wanted(bool wanted) {
    wanted_ = wanted;
    wanted_ ? want() : settle_.stop();
}

void CureService::edited() {
    worker_.cancel();
    report_.reset();
    Q_EMIT changed();
}

void CureService::look_again() {
    revision_ = kNone;
    edited();
    want();
}

/// The margin to count on comes first: the search starts when that is known.
void CureService::want() {
    if (wanted_ && analysis_.counted() && !fresh() && !document_.in_gesture()) settle_.start();
}

void CureService::start() {
    revision_ = document_.revision();
    cures_.clear();
    Q_EMIT changed();
    CureOptions options;
    options.weights = CureChoices::load().for_search();
    if (const auto result = analysis_.result(); analysis_.counted() && result->tolerance)
        options.before = Margins{result->margin_db, result->tolerance->margin_p05_db};
    worker_.restart([this, options, show = document_.show(), revision = revision_](const Job& job) -> Worker::Deliver {
        const auto found = [&](const Cure& cure) {
            worker_.tell([this, revision, one = std::make_shared<const Cure>(cure)] { add(revision, one); });
        };
        auto report = find_cures(show, options, job, found);
        if (!report) return {};
        return [this, revision, whole = std::make_shared<const CureReport>(std::move(*report))] {
            finish(revision, whole);
        };
    });
}

void CureService::add(quint64 revision, std::shared_ptr<const Cure> cure) {
    if (revision != revision_ || !fresh() || report_) return;  // of this search, not of one that was given up
    const auto place = std::ranges::upper_bound(cures_, cure->score, std::ranges::greater(),
                                                [](const auto& other) { return other->score; });
    cures_.insert(place, std::move(cure));
    Q_EMIT changed();
}

void CureService::finish(quint64 revision, std::shared_ptr<const CureReport> report) {
    if (revision != document_.revision()) return;
    report_ = std::move(report);
    cures_.clear();
    for (const Cure& cure : report_->cures) cures_.push_back(std::make_shared<const Cure>(cure));
    Q_EMIT changed();
}

}  // namespace howlmap::app
