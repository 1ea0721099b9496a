// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <vector>

#include "core/loop/loop_model.h"
#include "core/maps/kernel/loops.h"
#include "core/maps/table_store.h"

namespace howlmap::maps {

/// What lies around all paths, at the bins.
struct BinTables {
    std::array<std::vector<float>, kVias> reflection;
    std::vector<float> air;  ///< Np/m
};
BinTables bin_tables(const Surroundings& surroundings);

/// Real gains of the paths between an input and a loudspeaker at all bins: reflection, directivities, distance, air;
/// without the directivity of a cap on a sphere. Refers to all that it is given.
class PairGains {
  public:
    PairGains(const BinTables& tables, const LoopModel::In& in, const LoopModel::Speaker& speaker);
    Doubles at_bins(const Leg& leg) const;

  private:
    LegGains plain(const Leg& leg) const;

    const BinTables& tables_;
    const ReceiverPattern& pattern_;
    const Directivity& directivity_;
    std::vector<float> across_, above_;  // coverage: 1 / half-angle^2
};

/// The same at all fine frequencies for a cap on a sphere, its directivity included: its lobes need more than the bins.
Doubles cap_gains(const Doubles& without, const DirectivityRows& rows, const TableStore::Axis& axis, const Leg& leg);

}  // namespace howlmap::maps
