// SPDX-License-Identifier: GPL-3.0-or-later
// Feedback map: one input moved over the stage, all other channels open as set. Its loop through all loudspeakers is
// g(f) = |sum of H(cell, l) w_l(f)|, and w does not depend on the cell.
#include <atomic>

#include "core/loop/loop_model.h"
#include "core/loop/stability.h"
#include "core/maps/ends.h"
#include "core/maps/loop_drives.h"
#include "core/maps/mapper.h"
#include "core/maps/run.h"
#include "core/show/find.h"

namespace howlmap::maps {
namespace {
Show without_sends_of(const Show& show, const std::string& input) {
    Show rest = show;
    for (Mix& mix : rest.mixes) std::erase_if(mix.sends, [&](const Send& send) { return send.input == input; });
    return rest;
}

bool rings(const Show& show, const Job& job) {
    const auto margin = stability_of(show, false, job).margin_db;
    return margin && *margin < 0.0;
}

class FeedbackMapper : public Mapper {
  public:
    FeedbackMapper(const Show& show, const Input& input, const Range& range, MapSession& session, const Job& job)
        : show_(show), input_(input), range_(range), session_(session), store_(session.store), loops_(session.loops) {
        loops_.update(show, store_, job);
        position_ = position_of_input(loops_.model(), index_by_id(show.inputs, input.id));
        if (position_ < 0 || job.cancelled()) return;
        for (const LoopModel::Speaker& speaker : loops_.model().speakers()) {
            loudspeakers_.push_back(&show.loudspeakers[static_cast<std::size_t>(speaker.index)]);
            directivities_.push_back(&loudspeakers_.back()->directivity);
        }
    }

    bool draw(MapGrid& grid, Quality quality, const Job& job) override {
        if (!job.cancelled() && position_ >= 0) set_drives(quality, job);
        if (job.cancelled()) return false;  // perhaps before everything was ready
        grid.silent = position_ < 0;
        grid.unstable_without = unstable_;
        if (grid.silent || unstable_) return true;
        CellList cells = cells_of(grid);
        set_height(cells, input_.position.z);
        Ends ends(show_, grid, cells, kSwept, store_);
        const TableStore::Rows pattern = store_.pattern(input_, kSwept);
        for (const Loudspeaker* loudspeaker : loudspeakers_)
            ends.add_loudspeaker(*loudspeaker, ReceiverPattern(input_).a(), pattern);
        const auto air = ends.air();
        const double speed = loops_.speed();
        DrivenField driven(ends.all(), directivities_, drives_, store_, speed);
        driven.field.cell.frame = frame_of({input_.aim.yaw_deg, input_.aim.pitch_deg, 0.0});
        driven.set_air(*air);
        const bool first_look = quality == Quality::quick && driven.field.sweep;
        if (first_look) session_.first_look.connect(driven.field, show_, loudspeakers_, input_, grid, cells);
        const bool whole = run_field(driven.field, cells, speed, {}, grid, job);
        if (first_look && whole) session_.first_look.filled();
        return whole;
    }

  private:
    void set_drives(Quality quality, const Job& job) {
        std::atomic<bool> doubtful{false};
        DriveFunction function = feedback_drives(loops_, position_, doubtful);
        if (quality == Quality::quick) {
            drives_ = tabulate_quickly(function, range_, loops_.speed(), job);
        } else {
            function.axes = axes_of(directivities_, store_, loops_.speed());
            drives_ = tabulate(function, range_, loops_.speed(), job);
        }
        if (range_ != Range{}) ask_everywhere(function, quality, job);
        unstable_ = doubtful && rings(without_sends_of(show_, input_.id), job);
    }

    /// Lets the drive function see all frequencies, whatever the map shows.
    static void ask_everywhere(const DriveFunction& function, Quality quality, const Job& job) {
        std::vector<Complex> drives(kOctet * function.values());
        const bool quick = quality == Quality::quick;
        const std::size_t octets = quick ? kBins / kOctet : fine_grid().octets.size();
        for (std::size_t octet = 0; octet < octets && !job.cancelled(); ++octet)
            (quick ? function.swept : function.fine)(octet, drives.data());
    }

    const Show& show_;
    const Input& input_;
    Range range_;
    MapSession& session_;
    TableStore& store_;
    LoopTable& loops_;
    int position_ = -1;
    bool unstable_ = false;
    std::vector<const Loudspeaker*> loudspeakers_;   ///< of the loops
    std::vector<const Directivity*> directivities_;  ///< theirs
    Drives drives_;
};
}  // namespace

MapperResult feedback_mapper(const Show& show, const MapRequest& request, MapSession& session, const Job& job) {
    const Input* input = find_by_id(show.inputs, request.id);
    if (!input) return error(MapError::Reason::unknown_id, "There is no input \"" + request.id + "\".");
    if (is_line(*input))
        return error(MapError::Reason::not_possible,
                     "\"" + request.id + "\" is a line input: it hears no loudspeaker and has no feedback map.");
    return std::make_unique<FeedbackMapper>(show, *input, range_of(request.options), session, job);
}

}  // namespace howlmap::maps
