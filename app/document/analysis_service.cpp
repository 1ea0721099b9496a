// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/analysis_service.h"

#include <algorithm>
#include <utility>

#include "core/loop/swift_margin.h"
#include "core/show/loop_part.h"

namespace howlmap::app {
namespace {
constexpr int kAnalysisSettleMs = 60;
constexpr int kMarginMs = 100, kAllLoopsMs = 250;  // between two margins, two lists of rings under the hand
constexpr std::size_t kMostKnown = 12;
}  // namespace

AnalysisService::AnalysisService(Document& document, QObject* parent)
    : QObject(parent),
      document_(document),
      pace_(document, [this] { Q_EMIT updated(); }),
      swift_pace_(
          document, [this] { start_swift(); }, kMarginMs),
      drawn_pace_(
          document, [this] { start_drawn(); }, kAllLoopsMs) {
    settle_.setSingleShot(true);
    settle_.setInterval(kAnalysisSettleMs);
    connect(&settle_, &QTimer::timeout, this, &AnalysisService::start_counted);
    connect(&counted_, &Worker::progress, this, &AnalysisService::progress);
    connect(&document_, &Document::changed, this, &AnalysisService::restart);
    connect(&document_, &Document::replaced, this, [this] {
        result_.reset();
        known_.clear();
        swift_db_.reset();
        swift_revision_ = 0;
        swift_.cancel();
        drawn_.cancel();
        stop_counting();
        restart();
    });
}

/// Works on a snapshot.
Worker::Work AnalysisService::analysis(bool with_draws, Accept accept) const {
    return [show = document_.show(), with_draws, accept, known = known_](const Job& job) -> Worker::Deliver {
        Show part = loop_part(show);
        AnalysisOptions options;
        options.tolerance = with_draws;
        const auto same = std::ranges::find_if(known, [&](const auto& one) { return one->part == part; });
        if (same != known.end()) options.earlier = (*same)->result;
        auto result = analyse(show, options, job);
        if (!result) return {};
        return [accept, part = std::move(part), result = std::make_shared<const AnalysisResult>(std::move(*result))] {
            accept({part, result});
        };
    };
}

void AnalysisService::restart() {
    if (counting_ && !(*counting_ == loop_part(document_.show()))) stop_counting();
    if (document_.in_gesture()) swift_pace_.ask();
    drawn_pace_.ask();
    settle_.start();
    Q_EMIT started();
}

std::optional<double> AnalysisService::margin_db() const {
    if (swift_revision_ > drawn_revision_) return swift_db_;
    return result_ ? result_->margin_db : std::nullopt;
}

void AnalysisService::start_swift() {
    swift_.run([this, show = document_.show(), revision = document_.revision()](const Job&) -> Worker::Deliver {
        const auto margin = swift_margin(show);
        return [this, revision, margin] {
            swift_revision_ = revision;
            swift_db_ = margin ? std::optional(margin->margin_db) : std::nullopt;
            Q_EMIT margin_moved();
        };
    });
}

void AnalysisService::stop_counting() {
    counted_.cancel();
    counting_.reset();
}

void AnalysisService::start_drawn() {
    auto work = analysis(
        false, [this, revision = document_.revision()](Known known) { accept_drawn(revision, std::move(known)); });
    // While the hand moves, the map under it has the other cores.
    drawn_.run(document_.in_gesture() ? Worker::on_one_core(std::move(work)) : std::move(work));
}

void AnalysisService::start_counted() {
    if (counting_ && counted_.busy()) return;  // the draws of the same loops are under way
    counting_ = loop_part(document_.show());
    counted_.restart(analysis(
        true, [this, revision = document_.revision()](Known known) { accept_counted(revision, std::move(known)); }));
}

/// Of those without draws only the newest: a drag leaves many.
void AnalysisService::remember(Known known) {
    std::erase_if(known_, [](const auto& one) { return !one->result->tolerance; });
    const auto same = std::ranges::find_if(known_, [&](const auto& one) { return one->part == known.part; });
    if (same != known_.end() && !known.result->tolerance) return;
    if (same != known_.end()) known_.erase(same);
    known_.insert(known_.begin(), std::make_shared<const Known>(std::move(known)));
    if (known_.size() > kMostKnown) known_.pop_back();
}

void AnalysisService::accept_drawn(quint64 revision, Known known) {
    if (revision <= drawn_revision_) return;
    AnalysisResult result = *known.result;
    remember(std::move(known));
    if (result_) result.tolerance = result_->tolerance;  // the last ones stay until better ones are there
    drawn_revision_ = revision;
    result_ = std::make_shared<const AnalysisResult>(std::move(result));
    pace_.ask();
}

void AnalysisService::accept_counted(quint64 revision, Known known) {
    counting_.reset();
    const auto result = known.result;
    remember(std::move(known));
    if (revision != document_.revision()) return start_counted();  // its draws are known now
    drawn_revision_ = counted_revision_ = revision;
    result_ = result;
    pace_.ask();
}

}  // namespace howlmap::app
