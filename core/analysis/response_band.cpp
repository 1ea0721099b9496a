// SPDX-License-Identifier: GPL-3.0-or-later
#include <oneapi/tbb/blocked_range.h>
#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <atomic>

#include "core/analysis/response.h"
#include "core/analysis/response_gain.h"
#include "core/loop/drawn_show.h"
#include "core/loop/room_field.h"
#include "core/loop/tolerance.h"

namespace howlmap {
namespace {

/// Draws of a show, each drawn from the whole show so that it is the same stage whichever loops are open.
class Stages {
  public:
    Stages(const Show& show, const OpenLoops& open) : show_(show), open_(open), layout_(show) {
        if (show.stage.room) room_.emplace(show);
    }

    /// Largest modulus in dB at each frequency in one draw.
    std::vector<double> gains(std::uint64_t draw, const std::vector<double>& hz) const {
        const DrawNumbers numbers(show_.tolerance.seed, draw);
        const DrawnShow drawn = draw_show(show_, layout_, numbers);
        const Show part = with_only(drawn.show, open_);
        const LoopModel model(part, extras(numbers, drawn.phases));
        std::vector<double> gains(hz.size(), kResponseFloorDb);
        if (model.empty()) return gains;
        for (std::size_t i = 0; i < hz.size(); ++i)
            gains[i] = floored_db(largest_modulus(model.small_matrix(model.factors(hz[i]))));
        return gains;
    }

  private:
    LoopExtras extras(const DrawNumbers& numbers, const std::vector<double>& phases) const {
        LoopExtras extras;
        extras.phases = phases;
        extras.floor_z = [this](int input, int loudspeaker) {  // risers as drawn on the plan, not as disturbed
            return common_riser_height(show_.stage, show_.inputs[static_cast<std::size_t>(input)].position.xy(),
                                       show_.loudspeakers[static_cast<std::size_t>(loudspeaker)].position.xy());
        };
        if (room_)
            extras.room = [this, numbers](int input, int loudspeaker, double hz) {
                return room_->value(numbers, layout_.room, input, loudspeaker, hz);
            };
        return extras;
    }

    const Show& show_;
    const OpenLoops& open_;
    DrawLayout layout_;
    std::optional<RoomField> room_;
};

}  // namespace

std::optional<ResponseBand> response_band(const Show& show, const OpenLoops& open, int draws, int per_octave,
                                          const Job& job) {
    ResponseBand band;
    const Show part = with_only(show, open);
    if (LoopModel(part).empty()) return band;
    band.draws = std::clamp(draws, 1, show.tolerance.draws);
    band.hz = response_frequencies(per_octave);
    const Stages stages(show, open);
    std::vector<std::vector<double>> gains(static_cast<std::size_t>(band.draws));
    std::atomic<int> done = 0;
    tbb::parallel_for(std::size_t{0}, gains.size(), [&](std::size_t draw) {
        if (job.cancelled()) return;
        gains[draw] = stages.gains(draw, band.hz);
        job.report(++done / static_cast<double>(band.draws));
    });
    if (job.cancelled()) return std::nullopt;
    std::vector<double> column(gains.size());
    for (std::size_t i = 0; i < band.hz.size(); ++i) {
        for (std::size_t d = 0; d < gains.size(); ++d) column[d] = gains[d][i];
        std::sort(column.begin(), column.end());
        band.p05_db.push_back(quantile(column, 0.05));
        band.p95_db.push_back(quantile(column, 0.95));
    }
    return band;
}

}  // namespace howlmap
