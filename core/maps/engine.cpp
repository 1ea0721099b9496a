// SPDX-License-Identifier: GPL-3.0-or-later
#include <optional>

#include "core/maps/grid.h"
#include "core/maps/mapper.h"
#include "core/show/loop_part.h"

namespace howlmap {
namespace {
constexpr int kFirstFactor = 4;  // the first grid holds every fourth cell in x and y

bool same_request(const MapRequest& a, const MapRequest& b) {
    return a.kind == b.kind && a.id == b.id && a.options.step == b.options.step &&
           a.options.coarse == b.options.coarse && a.options.band == b.options.band && a.options.hz == b.options.hz;
}

/// A show without what no map of its kind depends on, so that a change of a name or a note draws nothing anew, nor a
/// player who steps aside a map of loops.
Show what_matters(const Show& show, MapKind kind) {
    if (kind == MapKind::feedback) {
        Show part = loop_part(show);
        part.stage.outline = show.stage.outline;
        part.stage.room.reset();  // a map is as drawn: without the room's term, and without draws
        part.tolerance = {};
        return part;
    }
    Show rest;
    rest.air = show.air;
    rest.system.latency_ms = show.system.latency_ms;
    rest.stage = show.stage;
    rest.loudspeakers = show.loudspeakers;
    rest.inputs = show.inputs;
    rest.performers = show.performers;
    rest.mixes = show.mixes;
    rest.listeners = show.listeners;
    for (Loudspeaker& item : rest.loudspeakers) item.name = item.notes = item.preset = "";
    for (Input& item : rest.inputs) item.name = item.notes = item.stand = "";
    for (Performer& item : rest.performers) item.name = item.notes = "";
    for (Mix& item : rest.mixes) item.name = "";
    for (Listener& item : rest.listeners) item.name = "";
    return rest;
}
}  // namespace

struct MapEngine::State {
    maps::MapSession session;
    Show show;  ///< that the last grid was drawn from
    MapRequest request;
    Shown last;  ///< null before the first and after a cancelled one
};

MapEngine::MapEngine() : state_(std::make_unique<State>()) {}
MapEngine::~MapEngine() = default;
MapEngine::MapEngine(MapEngine&&) noexcept = default;
MapEngine& MapEngine::operator=(MapEngine&&) noexcept = default;

tl::expected<MapEngine::Shown, MapError> MapEngine::update(const Show& show, const MapRequest& request, const Job& job,
                                                           const std::function<void(const Shown&)>& shown) {
    if (auto wrong = maps::wrong_option(request)) return tl::unexpected(*wrong);
    Show matters = what_matters(show, request.kind);
    if (state_->last && same_request(request, state_->request) && matters == state_->show) {
        if (shown) shown(state_->last);
        return state_->last;
    }
    state_->last = nullptr;
    auto mapper = maps::mapper_for(show, request, state_->session, job);
    if (!mapper) return tl::unexpected(mapper.error());
    Shown best;
    for (const int factor : {kFirstFactor, 1}) {
        MapRequest asked = request;
        asked.options.coarse *= factor;
        auto grid = maps::empty_grid(show, asked);
        if (!grid) return tl::unexpected(grid.error());
        const auto quality = factor > 1 ? maps::Quality::quick : maps::Quality::full;
        if (!(*mapper)->draw(*grid, quality, job)) return maps::error(MapError::Reason::cancelled);
        best = std::make_shared<const MapGrid>(std::move(*grid));
        if (shown) shown(best);
    }
    state_->show = std::move(matters);
    state_->request = request;
    state_->last = best;
    return best;
}

}  // namespace howlmap
