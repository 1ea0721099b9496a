// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/overlay/map_service.h"

#include <utility>

namespace howlmap::app {
namespace {
constexpr double kStep = 0.05;  ///< metres, coarser only for very large stages

bool same_subject(const std::optional<MapRequest>& a, const std::optional<MapRequest>& b) {
    return a && b && a->kind == b->kind && a->id == b->id && a->options.band == b->options.band &&
           a->options.hz == b->options.hz;
}
}  // namespace

MapService::MapService(Document& document, QObject* parent)
    : QObject(parent), document_(document), engine_(std::make_shared<MapEngine>()) {
    connect(&document_, &Document::changed, this, &MapService::start);
    connect(&document_, &Document::replaced, this, [this] { want(std::nullopt); });
}

MapService::~MapService() = default;

void MapService::want(const std::optional<MapRequest>& request) {
    if (!same_subject(request, request_)) {
        ++order_;
        picture_.reset();
        trouble_.clear();
    }
    request_ = request;
    if (!request_) worker_.cancel();
    Q_EMIT updated();
    start();
}

void MapService::set_ink(const Ink& ink) {
    if (ink.paper == ink_.paper && ink.ink == ink_.ink) return;
    ink_ = ink;
    engine_ = std::make_shared<MapEngine>();  // an engine that has nothing new to tell tells nothing to draw
    start();
}

/// Works on a snapshot. What runs is not cancelled: its coarse picture is there within a frame, and a newer order waits
/// for it.
void MapService::start() {
    if (!request_) return;
    worker_.run([this, engine = engine_, show = document_.show(), revision = document_.revision(), request = *request_,
                 order = order_, ink = ink_](const Job& job) mutable -> Worker::Deliver {
        const MapLook look{show.system.target_margin_db, show.system.house_target_dba, ink};
        request.options.step = fitting_step(show, request.kind, kStep);
        const auto shown = [&](const MapEngine::Shown& grid) {
            auto picture = std::make_shared<const MapPicture>(picture_of(grid, look));
            QMetaObject::invokeMethod(
                this, [this, order, picture] { show_picture(order, picture); }, Qt::QueuedConnection);
        };
        const auto result = engine->update(show, request, job, shown);
        const QString trouble = result ? QString() : QString::fromStdString(result.error().message);
        return [this, order, revision, trouble] { finish(order, revision, trouble); };
    });
}

void MapService::show_picture(quint64 order, std::shared_ptr<const MapPicture> picture) {
    if (order != order_) return;
    picture_ = std::move(picture);
    trouble_ = map_notice(*picture_->grid);
    Q_EMIT updated();
}

void MapService::finish(quint64 order, quint64 revision, const QString& trouble) {
    if (order != order_) return;
    settled_revision_ = revision;
    if (trouble.isEmpty()) return;
    picture_.reset();
    trouble_ = trouble;
    Q_EMIT updated();
}

}  // namespace howlmap::app
