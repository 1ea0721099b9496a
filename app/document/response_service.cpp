// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/response_service.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/show/loop_part.h"

namespace howlmap::app {
namespace {

constexpr int kResponseSettleMs = 250;
constexpr int kCurvesEveryMs = 100;           ///< while something is dragged: the verdict matters more
constexpr double kNeighbourhood = 1.0 / 6.0;  ///< octaves to either side of a ring that belong to it

template <class Result>
using Shared = std::shared_ptr<const Result>;

/// Highest 95th percentile near a frequency; none outside the band.
std::optional<double> highest_near(const ResponseBand& band, double hz) {
    std::optional<double> highest;
    for (std::size_t i = 0; i < band.hz.size(); ++i)
        if (std::abs(std::log2(band.hz[i] / hz)) <= kNeighbourhood)
            highest = std::max(highest.value_or(band.p95_db[i]), band.p95_db[i]);
    return highest;
}

}  // namespace

ResponseService::ResponseService(Document& document, AnalysisService& analysis, Spotlight& spotlight, QObject* parent)
    : QObject(parent),
      document_(document),
      analysis_(analysis),
      spotlight_(spotlight),
      pace_(document, [this] { Q_EMIT curves_changed(); }),
      starts_(
          document, [this] { start_curves(); }, kCurvesEveryMs) {
    settle_.setSingleShot(true);
    settle_.setInterval(kResponseSettleMs);
    connect(&settle_, &QTimer::timeout, this, &ResponseService::start_band);
    connect(&document_, &Document::changed, this, &ResponseService::follow);
    connect(&document_, &Document::replaced, this, [this] {
        curves_.reset();
        band_.reset();
        all_band_.reset();
        set_open({});
        part_.reset();
        curves_worker_.cancel();
        follow();
    });
    connect(&spotlight_, &Spotlight::preview_changed, this, &ResponseService::start_preview);
}

void ResponseService::set_open(const OpenLoops& open) {
    if (open == open_) return;
    open_ = open;
    band_.reset();
    Q_EMIT band_changed();
    restart();
    start_preview();
}

/// A change that touches no loop leaves the curves as they are.
void ResponseService::follow() {
    Show part = loop_part(document_.show());
    if (part_ && *part_ == part) return;
    part_ = std::move(part);
    restart();
}

void ResponseService::restart() {
    band_worker_.cancel();
    settle_.start();
    starts_.ask();
}

std::vector<double> ResponseService::rings() const {
    std::vector<double> hz;
    if (const auto result = analysis_.result(); result && analysis_.fresh())
        for (const Ring& ring : result->rings) hz.push_back(ring.hz);
    return hz;
}

void ResponseService::start_curves() {
    Worker::Work work = [this, show = document_.show(), open = open_,
                         rings = rings()](const Job& job) -> Worker::Deliver {
        auto response = loop_response(show, open, rings, job);
        if (!response) return {};
        return [this, open, result = std::make_shared<const LoopResponse>(std::move(*response))] {
            if (!(open == open_)) return;
            curves_ = result;
            pace_.ask();
        };
    };
    curves_worker_.run(document_.in_gesture() ? Worker::on_one_core(std::move(work)) : std::move(work));
}

void ResponseService::start_band() {
    start_curves();  // once more, now that the rings are known and no peak is missed
    band_worker_.restart([this, show = document_.show(), open = open_](const Job& job) -> Worker::Deliver {
        auto all = response_band(show, {}, 64, 24, job);
        auto part = open.all() ? all : response_band(show, open, 64, 24, job);
        if (!all || !part) return {};
        return [this, a = std::make_shared<const ResponseBand>(std::move(*all)),
                p = std::make_shared<const ResponseBand>(std::move(*part))] {
            all_band_ = a;
            band_ = p;
            Q_EMIT band_changed();
        };
    });
}

void ResponseService::start_preview() {
    if (!spotlight_.preview()) {
        preview_worker_.cancel();
        if (std::exchange(preview_, {})) Q_EMIT preview_changed();
        return;
    }
    preview_worker_.restart([this, show = spotlight_.preview()->show, open = open_](const Job& job) -> Worker::Deliver {
        auto response = loop_response(*show, open, {}, job);
        if (!response) return {};
        return [this, result = std::make_shared<const LoopResponse>(std::move(*response))] {
            preview_ = result;
            Q_EMIT preview_changed();
        };
    });
}

std::optional<double> ResponseService::count_on_at(const Ring& ring) const {
    const auto result = analysis_.result();
    if (!all_band_ || !result || !result->tolerance || !result->tolerance->margin_p05_db) return std::nullopt;
    const auto highest = highest_near(*all_band_, ring.hz);
    if (!highest) return std::nullopt;
    return std::max(*result->tolerance->margin_p05_db, -*highest);
}

}  // namespace howlmap::app
