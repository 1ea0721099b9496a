// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/report/check_text.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/units/level.h"
#include "core/units/localised.h"

namespace howlmap::report {
namespace {

constexpr double kStillDbPerS = 0.05;  ///< slower than this nobody waits for

/// Whole where it is whole to a tenth: "5 whole waves", "0.5 waves".
std::string waves_words(double waves) {
    const double whole = std::round(waves);
    if (whole == 1.0 && std::abs(waves - whole) < 0.05) return translate("report", "one whole wave");
    if (whole > 1.0 && std::abs(waves - whole) < 0.05)
        return localised(translate("report", "{:.0f} whole waves"), whole);
    return localised(translate("report", "{:.1f} waves"), waves);
}

}  // namespace

std::string object_name(const Show& show, const std::string& id) {
    if (const auto* input = find_by_id(show.inputs, id)) return name_of(*input);
    if (const auto* loudspeaker = find_by_id(show.loudspeakers, id)) return name_of(*loudspeaker);
    if (const auto* mix = find_by_id(show.mixes, id)) return name_of(*mix);
    if (const auto* performer = find_by_id(show.performers, id)) return name_of(*performer);
    if (const auto* item = find_by_id(show.backline, id)) return name_of(*item);
    if (const auto* listener = find_by_id(show.listeners, id)) return name_of(*listener);
    return id;
}

std::string build_up_words(double db_per_s) {
    if (std::abs(db_per_s) < kStillDbPerS) return translate("report", "stands still");
    const double seconds = ratio_to_db(2.0) / std::abs(db_per_s);
    const std::string time = seconds < 1.0 ? localised("{:.2f} s", seconds) : localised("{:.1f} s", seconds);
    return localised(db_per_s > 0.0 ? translate("report", "doubles every {}") : translate("report", "halves every {}"),
                     time);
}

std::string note_words(const Ring& ring) { return fmt::format("{} {:+.0f} c", ring.note, ring.cents + 0.0); }

std::string ring_words(const Show& show, const Ring& ring) {
    const std::string from = object_name(show, ring.strongest_loudspeaker),
                      to = object_name(show, ring.strongest_input);
    return localised(translate("report", "{} is {} from {} to {}"), hz_words(ring.hz), waves_words(ring.whole_waves),
                     from, to);
}

}  // namespace howlmap::report
