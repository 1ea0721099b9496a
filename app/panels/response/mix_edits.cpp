// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/response/mix_edits.h"

#include <algorithm>
#include <cmath>

#include "core/show/find.h"
#include "core/units/bands.h"

namespace howlmap::app {
namespace {

constexpr double kStepDb = 0.5;
constexpr PeakFilter kNewNotch{1000.0, 8.0, -6.0, {}};

PeakFilter* notch_of(Show& show, const std::string& mix, std::size_t index) {
    Mix* found = find_by_id(show.mixes, mix);
    return found && index < found->notches.size() ? &found->notches[index] : nullptr;
}

double kept(double hz) { return std::clamp(hz, kLowestHz, kHighestHz); }

void flip(Polarity& polarity) { polarity = polarity == Polarity::normal ? Polarity::inverted : Polarity::normal; }

}  // namespace

void set_band(Show& show, const std::string& mix, int band, double db) {
    Mix* found = find_by_id(show.mixes, mix);
    if (!found) return;
    const double stepped = std::clamp(std::round(db / kStepDb) * kStepDb, kFaderLowDb, kFaderHighDb);
    if (stepped == 0.0)
        found->graphic_eq.erase(band);
    else
        found->graphic_eq[band] = stepped;
}

double band_of(const Show& show, const std::string& mix, int band) {
    const Mix* found = find_by_id(show.mixes, mix);
    if (!found) return 0.0;
    const auto at = found->graphic_eq.find(band);
    return at == found->graphic_eq.end() ? 0.0 : at->second;
}

void set_flat(Show& show, const std::string& mix) {
    if (Mix* found = find_by_id(show.mixes, mix)) found->graphic_eq.clear();
}

void copy_equaliser(Show& show, const std::string& from, const std::string& to) {
    const Mix* source = find_by_id(show.mixes, from);
    Mix* target = find_by_id(show.mixes, to);
    if (!source || !target || source == target) return;
    target->graphic_eq = source->graphic_eq;
    target->notches = source->notches;
    target->high_pass = source->high_pass;
}

Show without_equaliser(const Show& show, const std::string& mix) {
    Show flat = show;
    if (Mix* found = find_by_id(flat.mixes, mix)) {
        found->graphic_eq.clear();
        found->notches.clear();
        found->high_pass.reset();
    }
    return flat;
}

void add_notch(Show& show, const std::string& mix, double hz) {
    Mix* found = find_by_id(show.mixes, mix);
    if (!found) return;
    found->notches.push_back(kNewNotch);
    found->notches.back().hz = kept(hz);
}

void set_notch(Show& show, const std::string& mix, std::size_t notch, double hz, double gain_db) {
    PeakFilter* filter = notch_of(show, mix, notch);
    if (!filter) return;
    filter->hz = std::round(kept(hz) * 10.0) / 10.0;
    filter->gain_db = std::clamp(std::round(gain_db / kStepDb) * kStepDb, -30.0, 0.0);
}

void set_notch_q(Show& show, const std::string& mix, std::size_t notch, double q) {
    if (PeakFilter* filter = notch_of(show, mix, notch)) filter->q = std::clamp(std::round(q * 10.0) / 10.0, 0.5, 50.0);
}

void remove_notch(Show& show, const std::string& mix, std::size_t notch) {
    if (!notch_of(show, mix, notch)) return;
    Mix* found = find_by_id(show.mixes, mix);
    found->notches.erase(found->notches.begin() + static_cast<std::ptrdiff_t>(notch));
}

void set_high_pass(Show& show, const std::string& mix, double hz) {
    Mix* found = find_by_id(show.mixes, mix);
    if (!found) return;
    if (hz <= 0.0) return found->high_pass.reset();
    if (!found->high_pass) found->high_pass.emplace();
    found->high_pass->hz = std::round(kept(hz));
}

void flip_polarity(Show& show, const std::string& id) {
    if (Input* input = find_by_id(show.inputs, id)) flip(input->polarity);
    if (Mix* mix = find_by_id(show.mixes, id)) flip(mix->polarity);
}

}  // namespace howlmap::app
