// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/overlay/map_service.h"

#include <atomic>
#include <condition_variable>
#include <mutex>
#include <utility>

namespace howlmap::app {
namespace {
constexpr double kStep = 0.05;  ///< metres, coarser only for very large stages

/// Whether one map may stand for another until that is there: the same thing, perhaps at another frequency.
bool same_subject(const std::optional<MapRequest>& a, const std::optional<MapRequest>& b) {
    return a && b && a->kind == b->kind && a->id == b->id;
}
bool same_frequencies(const std::optional<MapRequest>& a, const std::optional<MapRequest>& b) {
    return a && b && a->options.band == b->options.band && a->options.hz == b->options.hz;
}
}  // namespace

MapService::MapService(Document& document, QObject* parent, std::chrono::milliseconds rest)
    : QObject(parent), document_(document), rest_(rest), engine_(std::make_shared<MapEngine>()) {
    connect(&document_, &Document::changed, this, &MapService::start);
    connect(&document_, &Document::replaced, this, [this] { want(std::nullopt); });
}

MapService::~MapService() = default;

/// A piece of work. One that has been overtaken ends with its first picture, so that a drag is followed frame by frame
/// and the fine map waits for the hand to rest.
struct MapService::Run {
    std::atomic<bool> shown{false}, overtaken{false};
    std::stop_source stop;
    void overtake() {
        overtaken = true;
        if (shown) stop.request_stop();
    }
    void told() {
        shown = true;
        if (overtaken) stop.request_stop();
    }
    /// Returns when it has been stopped, or not for so long that the hand seems to rest.
    void see_whether_the_hand_rests(std::chrono::milliseconds rest) {
        std::mutex mutex;
        std::unique_lock lock(mutex);
        std::condition_variable_any stopped;
        stopped.wait_for(lock, stop.get_token(), rest, [] { return false; });
    }
};

void MapService::want(const std::optional<MapRequest>& request) {
    if (!same_subject(request, request_)) {
        picture_.reset();
        trouble_.clear();
    }
    if (!same_subject(request, request_) || !same_frequencies(request, request_)) ++order_;
    request_ = request;
    if (!request_) forget();
    Q_EMIT updated();
    start();
}

/// What an engine keeps for the next map may be a hundred megabytes.
void MapService::forget() {
    worker_.cancel();
    engine_ = std::make_shared<MapEngine>();
}

void MapService::set_ink(const Ink& ink) {
    if (ink.paper == ink_.paper && ink.ink == ink_.ink) return;
    ink_ = ink;
    start();
}

/// Works on a snapshot.
void MapService::start() {
    if (!request_) return;
    if (run_) run_->overtake();
    run_ = std::make_shared<Run>();
    worker_.run([this, engine = engine_, run = run_, show = document_.show(), revision = document_.revision(),
                 request = *request_, order = order_, ink = ink_, rest = rest_,
                 moving = document_.in_gesture()](const Job& job) mutable -> Worker::Deliver {
        const std::stop_callback stop(job.stop, [&run] { run->stop.request_stop(); });
        const MapLook look = look_of(show, request, ink);
        request.options.step = fitting_step(show, request.kind, kStep);
        const auto shown = [&](const MapEngine::Shown& grid) {
            auto picture = std::make_shared<const MapPicture>(picture_of(grid, look));
            worker_.tell([this, order, picture] { show_picture(order, picture); });
            run->told();
            // A fine map that the next move ends would only take the cores from the window.
            if (std::exchange(moving, false)) run->see_whether_the_hand_rests(rest);
        };
        const auto result = engine->update(show, request, {run->stop.get_token(), {}}, shown);
        const QString trouble = result ? QString() : QString::fromStdString(result.error().message);
        const auto settled = result || !trouble.isEmpty() ? std::optional(revision) : std::nullopt;
        return [this, order, settled, trouble] { finish(order, settled, trouble); };
    });
}

void MapService::show_picture(quint64 order, std::shared_ptr<const MapPicture> picture) {
    if (order != order_) return;
    picture_ = std::move(picture);
    trouble_ = map_notice(*picture_->grid);
    Q_EMIT updated();
}

void MapService::finish(quint64 order, std::optional<quint64> revision, const QString& trouble) {
    if (order != order_) return;
    if (revision) settled_revision_ = *revision;
    if (trouble.isEmpty()) return;
    picture_.reset();
    trouble_ = trouble;
    Q_EMIT updated();
}

}  // namespace howlmap::app
