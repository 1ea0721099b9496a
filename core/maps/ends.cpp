// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/ends.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/air/air.h"

namespace howlmap::maps {
namespace {
bool reflects(const Surface& surface) {
    if (const auto* same = std::get_if<double>(&surface.absorption)) return *same < 1.0;
    const auto& octaves = std::get<std::map<int, double>>(surface.absorption);
    return octaves.empty() ||
           std::any_of(octaves.begin(), octaves.end(), [](const auto& octave) { return octave.second < 1.0; });
}

bool strictly_inside(Via via, double plane, Vec3 point) {
    switch (via) {
        case Via::back:
            return point.y < plane;
        case Via::front:
            return point.y > plane;
        case Via::left:
            return point.x < plane;
        case Via::right:
            return point.x > plane;
        case Via::ceiling:
            return point.z < plane;
        default:
            return true;  // the floor's height depends on the cell
    }
}

/// Corners of the smallest box around all cells.
std::array<Vec3, 8> corners_of(const CellList& cells) {
    constexpr double inf = std::numeric_limits<double>::infinity();
    Vec3 low{inf, inf, inf}, high{-inf, -inf, -inf};
    for (const Tile& tile : cells.tiles)
        for (std::size_t i = 0; i < kTile; ++i) {
            low = {std::min(low.x, tile.x[i]), std::min(low.y, tile.y[i]), std::min(low.z, tile.z[i])};
            high = {std::max(high.x, tile.x[i]), std::max(high.y, tile.y[i]), std::max(high.z, tile.z[i])};
        }
    std::array<Vec3, 8> corners;
    for (std::size_t i = 0; i < 8; ++i)
        corners[i] = {i & 1 ? low.x : high.x, i & 2 ? low.y : high.y, i & 4 ? low.z : high.z};
    return corners;
}

/// Farthest that an image of a point can lie from a cell: reflections at most double the way to the far corners.
double farthest(const Show& show, const std::vector<FixedEnd>& ends, const CellList& cells) {
    const std::array<Vec3, 8> corners = corners_of(cells);
    double most = 0.0;
    for (const FixedEnd& end : ends)
        for (int i = 0; i < end.image_count; ++i) {
            const Image& image = end.images[static_cast<std::size_t>(i)];
            Vec3 from = end.position;
            if (image.via == Via::left || image.via == Via::right) from.x = 2.0 * image.plane - from.x;
            if (image.via == Via::back || image.via == Via::front) from.y = 2.0 * image.plane - from.y;
            if (image.via == Via::ceiling) from.z = 2.0 * image.plane - from.z;
            if (image.via == Via::floor) from.z = -from.z;
            for (const Vec3& corner : corners) most = std::max(most, length(corner - from));
        }
    double risers = 0.0;
    for (const Riser& riser : show.stage.risers) risers = std::max(risers, riser.height_m);
    return most + 1.0 + 4.0 * risers;
}
}  // namespace

std::vector<Image> images_of(const Stage& stage, Vec3 position) {
    std::vector<Image> images{{Via::direct, 0.0}};
    const Planes planes = planes_of(stage.surfaces);
    for (int v = 1; v < kVias; ++v) {
        const Via via = static_cast<Via>(v);
        const auto& plane = planes[static_cast<std::size_t>(v)];
        if (plane && reflects(surface_of(stage.surfaces, via)) && strictly_inside(via, *plane, position))
            images.push_back({via, *plane});
    }
    return images;
}

Ends::Ends(const Show& show, const MapGrid& grid, const CellList& cells, const Sweep& sweep, TableStore& store)
    : show_(show),
      grid_(grid),
      cells_(cells),
      sweep_(sweep),
      store_(store),
      speed_(speed_of_sound(show.air.temperature_c)) {}

FixedEnd& Ends::add(Vec3 position, const Aim& aim, TableStore::Rows directivity) {
    FixedEnd end;
    end.position = position;
    end.frame = frame_of(aim);
    end.directivity = directivity.get();
    for (const Image& image : images_of(show_.stage, position))
        end.images[static_cast<std::size_t>(end.image_count++)] = image;
    rows_.push_back(std::move(directivity));
    floors_.push_back(common_floor(cells_, show_.stage, grid_, position.xy()));
    if (!floors_.back().empty()) end.floor_z = floors_.back().data();
    ends_.push_back(end);
    return ends_.back();
}

FixedEnd& Ends::add_loudspeaker(const Loudspeaker& loudspeaker, double first_order, TableStore::Rows pattern) {
    FixedEnd& end =
        add(loudspeaker.position, loudspeaker.aim, store_.directivity(loudspeaker.directivity, sweep_, speed_));
    end.first_order = static_cast<float>(first_order);
    end.pattern = pattern.get();
    rows_.push_back(std::move(pattern));
    return end;
}

FixedEnd& Ends::add_input(const Input& input, const Directivity& loudspeaker) {
    FixedEnd& end = add(input.position, {input.aim.yaw_deg, input.aim.pitch_deg, 0.0},
                        store_.directivity(loudspeaker, sweep_, speed_));
    end.first_order = static_cast<float>(ReceiverPattern(input).a());
    rows_.push_back(store_.pattern(input, sweep_));
    end.pattern = rows_.back().get();
    return end;
}

FixedEnd& Ends::add_ear(Vec3 ear, const Directivity& loudspeaker) {
    return add(ear, {}, store_.directivity(loudspeaker, sweep_, speed_));
}

std::shared_ptr<const AirRows> Ends::air() { return store_.air(show_, sweep_, farthest(show_, ends_, cells_)); }

}  // namespace howlmap::maps
