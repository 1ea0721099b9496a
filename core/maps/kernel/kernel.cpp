// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/kernel/kernel.h"

#include <algorithm>
#include <cmath>

#include "core/maps/kernel/terms.h"

#undef HWY_DISABLED_TARGETS
#define HWY_DISABLED_TARGETS (HWY_SSSE3 | HWY_AVX3_DL)
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "core/maps/kernel/kernel.cpp"
#include "hwy/foreach_target.h"
// After foreach_target.h, which includes this file once for every target.
#include "core/maps/kernel/energies-inl.h"
#include "core/maps/kernel/peaks-inl.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::maps {
namespace HWY_NAMESPACE {

void FieldPeaks(const Field& field, const Tile& tile, Scratch::Space& space, Peaks& peaks) {
    space.terms.resize(std::max(space.terms.size(), field.ends.size()));
    SetAxes(field.cell, tile, space.axes);
    for (std::size_t i = 0; i < field.ends.size(); ++i)
        if (!field.ends[i].known) SetTerms(field.ends[i], field.cell, *field.air, tile, space.terms[i], space);
    if (field.sweep && field.divisor) {
        space.divisors.resize(space.totals.size());
        SweepField(*field.divisor, tile, space);
        std::swap(space.totals, space.divisors);
    }
    if (field.sweep) SweepField(field, tile, space);
    for (std::size_t cell = 0; cell < static_cast<std::size_t>(tile.cells); ++cell) {
        const NearPeak peak = CellPeak(field, cell, space);
        peaks.square[cell] = peak.square;
        peaks.waves[cell] = peak.waves;
    }
}

void FieldEnergies(const EnergyField& field, const Tile& tile, Scratch::Space& space,
                   std::array<float, kTile>& energies) {
    space.terms.resize(std::max<std::size_t>(space.terms.size(), 1));
    SetAxes(field.cell, tile, space.axes);
    energies.fill(0.0f);
    for (const FixedEnd& end : field.ends) {
        SetTerms(end, field.cell, *field.air, tile, space.terms[0], space);
        const EnergyFunction energy = EnergyFor(*end.directivity);
        for (std::size_t cell = 0; cell < static_cast<std::size_t>(tile.cells); ++cell)
            energies[cell] += energy(end, *field.air, space.terms[0], cell);
    }
}

const char* TargetName() { return hwy::TargetName(HWY_TARGET); }

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace howlmap::maps {
HWY_EXPORT(FieldPeaks);
HWY_EXPORT(FieldEnergies);
HWY_EXPORT(TargetName);

Scratch::Scratch() : space_(std::make_unique<Space>()) {
    space_->totals.resize(static_cast<std::size_t>(kColumns) * kTile * kOctavesSwept * 2 * kBlock);
}
Scratch::~Scratch() = default;
Scratch::Scratch(Scratch&&) noexcept = default;

void field_peaks(const Field& field, const Tile& tile, Scratch& scratch, Peaks& peaks) {
    HWY_DYNAMIC_DISPATCH(FieldPeaks)(field, tile, scratch.space(), peaks);
}

void field_energies(const EnergyField& field, const Tile& tile, Scratch& scratch, std::array<float, kTile>& energies) {
    HWY_DYNAMIC_DISPATCH(FieldEnergies)(field, tile, scratch.space(), energies);
}

const char* kernel_target() { return HWY_DYNAMIC_DISPATCH(TargetName)(); }

}  // namespace howlmap::maps
#endif
