// SPDX-License-Identifier: GPL-3.0-or-later
// All that loops are made of over the fine frequencies, kept from one map to the next: a moved loudspeaker costs its
// own paths, a fader nothing at all.
#pragma once
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "core/loop/blocks/chain_table.h"
#include "core/loop/loop_model.h"
#include "core/maps/kernel/loops.h"
#include "core/maps/leg_gains.h"
#include "core/maps/table_store.h"
#include "core/units/job.h"

namespace howlmap::maps {

class LoopTable {
  public:
    /// Brings everything up to date with a show, working on all cores. Incomplete when cancelled: then it must be
    /// called again before anything is asked.
    void update(const Show& show, TableStore& store, const Job& job);

    /// The loops of the show as they were at the last update.
    const LoopModel& model() const { return *model_; }
    const Wiring& wiring() const { return wiring_; }
    double speed() const { return model_->surroundings().speed; }

    /// Curves over all octets of the fine grid.
    const LoopCurves& fine() const { return fine_; }
    /// Curves over the bins, eight an octet; the last bin is 20 kHz.
    const LoopCurves& swept() const { return swept_; }
    /// The factors at one frequency of curves.
    LoopFactors factors(const LoopCurves& curves, double hz, std::size_t k) const;

    /// Curves of one octet anywhere.
    struct Near {
        std::vector<Curve> curves;
        LoopCurves loops;
    };
    void near(const Octet& octet, Near& near) const;

  private:
    struct Pair {
        Loudspeaker loudspeaker;
        Input input;
        std::uint64_t surroundings = 0;  // serial number of air, surfaces and risers
        Curve h, swept;
        std::vector<double> delays;
        std::vector<Doubles> gains;  // by path, at the bins; empty for a cap on a sphere
    };
    template <class Item>
    struct Kept {
        Item item;
        Curve curve, second;  // of an input: chain and response
        Curve swept, second_swept;
    };
    void note_surroundings();
    void update_chains();
    void update_pairs(TableStore& store, const Job& job);
    void make_pair(const LoopModel::In& in, const LoopModel::Speaker& speaker, const std::vector<Leg>& legs,
                   const TableStore::Axis* axis, const DirectivityRows* rows, Pair& pair) const;
    void connect();
    void connect_swept();

    std::unique_ptr<Show> show_;
    std::unique_ptr<LoopModel> model_;
    Wiring wiring_;
    Air air_;
    Stage stage_;
    std::uint64_t surroundings_ = 0;
    BinTables bin_tables_;
    double latency_s_ = -1.0;
    std::map<std::pair<std::string, std::string>, Pair> pairs_;  // by ids of input and loudspeaker
    std::map<std::string, Kept<Input>> inputs_;
    std::map<std::string, Kept<Loudspeaker>> loudspeakers_;
    std::map<std::string, Kept<Mix>> mixes_;
    LoopCurves fine_, swept_;
};

}  // namespace howlmap::maps
