// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/mapper.h"

#include <fmt/format.h>

#include <cmath>

namespace howlmap::maps {
namespace {
MapError bad_option(std::string message) { return {MapError::Reason::bad_option, std::move(message)}; }
}  // namespace

tl::unexpected<MapError> error(MapError::Reason reason, std::string message) {
    return tl::unexpected(MapError{reason, std::move(message)});
}

std::optional<MapError> wrong_option(const MapRequest& request) {
    const MapOptions& options = request.options;
    if (!(options.step >= kSmallestMapStep && options.step <= kLargestMapStep))
        return bad_option(fmt::format("A step of {:g} m is not possible: {:g} to {:g} m.", options.step,
                                      kSmallestMapStep, kLargestMapStep));
    if (options.coarse < 1 || options.coarse > 64)
        return bad_option(fmt::format("A coarse factor of {} is not possible: 1 to 64.", options.coarse));
    if (options.band && (*options.band < 0 || *options.band >= kThirdOctaves))
        return bad_option(fmt::format("Band {} is not possible: 0 to {}.", *options.band, kThirdOctaves - 1));
    if (!options.hz) return std::nullopt;
    if (request.kind == MapKind::level || request.kind == MapKind::wash)
        return bad_option("A level map shows bands, not one frequency.");
    if (options.band) return bad_option("A map shows one band or one frequency, not both.");
    if (!(*options.hz >= kLowestHz && *options.hz <= kHighestHz))
        return bad_option(fmt::format("{:g} Hz is not possible: {:g} to {:g} Hz.", *options.hz, kLowestHz, kHighestHz));
    return std::nullopt;
}

Range range_of(const MapOptions& options) {
    if (options.hz) return {*options.hz, *options.hz};
    if (!options.band) return {};
    const double centre = third_octave_centre(*options.band), half = std::pow(10.0, 0.05);
    return {std::max(kLowestHz, centre / half), std::min(kHighestHz, centre * half)};
}

MapperResult mapper_for(const Show& show, const MapRequest& request, MapSession& session, const Job& job) {
    switch (request.kind) {
        case MapKind::feedback:
            return feedback_mapper(show, request, session, job);
        case MapKind::loudspeaker:
            return loudspeaker_mapper(show, request, session, job);
        default:
            return level_mapper(show, request, session, job);
    }
}

std::vector<const Floats*> axes_of(const std::vector<const Directivity*>& directivities, TableStore& store,
                                   double speed) {
    std::vector<const Floats*> axes;
    for (const Directivity* directivity : directivities) {
        const auto axis = store.axis(*directivity, speed);
        axes.push_back(axis ? &axis->fine : nullptr);
    }
    return axes;
}

namespace {
Samples samples(const Drives::List& list, const float* axis) { return {list.re.data(), list.im.data(), axis}; }

void connect(FixedEnd& end, const Drives::Of& of) {
    end.weights = of.swept.data();
    end.sparse = samples(of.sparse, end.sparse.axis);
    end.fine = samples(of.fine, end.fine.axis);
    end.narrow = samples(of.narrow, end.narrow.axis);
}

/// Points a field at its drives: weights of the ends, constant part, frequencies.
void connect(Field& field, const Drives& drives, const std::vector<Drives::Of>& ends,
             const std::optional<Drives::Of>& offset) {
    for (std::size_t i = 0; i < field.ends.size(); ++i) connect(field.ends[i], ends[i]);
    if (offset) {
        field.offset = offset->swept.data();
        field.offset_sparse = samples(offset->sparse, nullptr);
        field.offset_fine = samples(offset->fine, nullptr);
        field.offset_narrow = samples(offset->narrow, nullptr);
    }
    const FineGrid& grid = fine_grid();
    field.base_waves = drives.base_waves;
    field.columns = drives.columns;
    field.rise = drives.rise.empty() ? nullptr : drives.rise.data();
    field.grid = &grid;
    field.sparse = {drives.sparse_waves.data(), grid.sparse_bins.data()};
    field.fine = {drives.fine_waves.data(), grid.bins.data()};
    field.narrow = {drives.narrow_waves.data(), drives.narrow_places.data()};
    field.narrow_bins = drives.narrow_bins;
    field.sweep = drives.columns[0] || drives.columns[1] || drives.columns[2];
    field.refine = field.sweep && !drives.quick;
}
}  // namespace

DrivenField::DrivenField(const std::vector<FixedEnd>& ends, const std::vector<const Directivity*>& directivities,
                         const Drives& drives, TableStore& store, double speed) {
    field.ends = ends;
    for (std::size_t i = 0; i < field.ends.size(); ++i)
        set_axis(field.ends[i], *directivities[i], drives, store, speed);
    if (!drives.divisor_ends.empty()) {
        divisor_ = field;
        connect(divisor_, drives, drives.divisor_ends, drives.divisor_offset);
        field.divisor = &divisor_;
    }
    connect(field, drives, drives.ends, drives.offset);
}

void DrivenField::set_air(const AirRows& air) { field.air = divisor_.air = &air; }

void DrivenField::set_axis(FixedEnd& end, const Directivity& directivity, const Drives& drives, TableStore& store,
                           double speed) {
    const auto axis = store.axis(directivity, speed);
    if (!axis) return;
    std::vector<double> hz;
    for (const float waves : drives.narrow_waves) hz.push_back(static_cast<double>(waves) * speed);
    axes_.push_back(axis);
    narrow_axes_.push_back(cap_axis(std::get<CapOnSphere>(directivity), hz, speed));
    end.sparse.axis = axis->sparse.data();
    end.fine.axis = axis->fine.data();
    end.narrow.axis = narrow_axes_.back().data();
}

}  // namespace howlmap::maps
