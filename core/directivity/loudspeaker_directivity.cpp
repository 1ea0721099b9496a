// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/directivity/loudspeaker_directivity.h"

#include <cmath>

#include "core/units/level.h"

namespace howlmap {

LoudspeakerSlice::LoudspeakerSlice(const Directivity& directivity, double hz, double speed) {
    if (const auto* coverage = std::get_if<Coverage>(&directivity)) slice_.emplace<CoverageSlice>(*coverage, hz);
    if (const auto* cap = std::get_if<CapOnSphere>(&directivity))
        slice_.emplace<CapSlice>(*cap, 2.0 * kPi * hz / speed);
    if (const auto* table = std::get_if<DirectivityTable>(&directivity))
        slice_.emplace<TableRow>(TableRow{table, between_log(table->hz, hz)});
}

double LoudspeakerSlice::gain(const LocalAngles& angles) const {
    if (const auto* coverage = std::get_if<CoverageSlice>(&slice_)) return coverage->gain(angles);
    if (const auto* cap = std::get_if<CapSlice>(&slice_)) return cap->gain(std::cos(angles.off_axis));
    if (const auto* row = std::get_if<TableRow>(&slice_))
        return db_to_ratio(table_db(*row->table, row->place, degrees(angles.off_axis)));
    return 1.0;
}

double directivity_gain(const Directivity& directivity, const LocalAngles& angles, double hz, double speed) {
    return LoudspeakerSlice(directivity, hz, speed).gain(angles);
}

}  // namespace howlmap
