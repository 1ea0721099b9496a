// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/warnings.h"

#include <fmt/format.h>

#include "core/listening/headroom.h"
#include "core/show/check.h"

namespace howlmap {
namespace {
template <class Thing>
const std::string& label(const Thing& thing) {
    return thing.name.empty() ? thing.id : thing.name;
}

const char* name_of(Via via) {
    switch (via) {
        case Via::floor:
            return "floor";
        case Via::back:
            return "back wall";
        case Via::front:
            return "front wall";
        case Via::left:
            return "left wall";
        case Via::right:
            return "right wall";
        case Via::ceiling:
            return "ceiling";
        default:
            return "";
    }
}

template <class Thing>
void add_outside(std::vector<std::string>& warnings, const Planes& planes, const Thing& thing) {
    for (int i = 1; i < kVias; ++i) {
        const auto via = static_cast<Via>(i);
        const auto& plane = planes[static_cast<std::size_t>(i)];
        if (plane && !is_inside(via, *plane, thing.position))
            warnings.push_back(fmt::format("{} lies on or behind the {}: nothing of it is reflected there.",
                                           label(thing), name_of(via)));
    }
}

void add_too_near(std::vector<std::string>& warnings, const LoopModel& model) {
    for (const auto& in : model.inputs())
        for (const auto& speaker : model.speakers()) {
            if (length(in.receiver.position - speaker.emitter.position) >= kNearestM) continue;
            warnings.push_back(fmt::format("{} and {} are closer together than 5 cm: computed as if 5 cm apart.",
                                           label(model.show().inputs[static_cast<std::size_t>(in.index)]),
                                           label(model.show().loudspeakers[static_cast<std::size_t>(speaker.index)])));
        }
}
}  // namespace

std::vector<std::string> warnings_of(const Show& show, const LoopModel& model) {
    std::vector<std::string> warnings;
    const Planes planes = planes_of(show.stage.surfaces);
    for (const Input& input : show.inputs)
        if (!is_line(input)) add_outside(warnings, planes, input);
    for (const Loudspeaker& loudspeaker : show.loudspeakers) add_outside(warnings, planes, loudspeaker);
    add_too_near(warnings, model);
    for (const Finding& finding : findings(show)) warnings.push_back(finding.text);
    for (std::string& warning : headroom_warnings(show)) warnings.push_back(std::move(warning));
    return warnings;
}

}  // namespace howlmap
