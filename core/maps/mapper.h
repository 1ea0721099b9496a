// SPDX-License-Identifier: GPL-3.0-or-later
// A map made ready: everything that does not depend on the cells is known, and grids of any step can be drawn.
#pragma once
#include <deque>
#include <memory>

#include "core/maps/drives.h"
#include "core/maps/kept_responses.h"
#include "core/maps/loop_table.h"
#include "core/maps/maps.h"
#include "core/maps/table_store.h"
#include "core/show/show.h"

namespace howlmap::maps {

/// quick: the swept frequencies alone, so that peaks may be under-read by a few tenths of a decibel.
enum class Quality { quick, full };

class Mapper {
  public:
    virtual ~Mapper() = default;
    /// Fills the values of an empty grid (or marks why there are none). Returns false when cancelled.
    virtual bool draw(MapGrid& grid, Quality quality, const Job& job) = 0;
};

/// What is kept from one map to the next.
struct MapSession {
    TableStore store;
    LoopTable loops;
    KeptResponses first_look;
};

/// Mappers refer to the show and the session, which must outlive them; the next mapper of a session ends the one
/// before.
using MapperResult = tl::expected<std::unique_ptr<Mapper>, MapError>;
MapperResult feedback_mapper(const Show& show, const MapRequest& request, MapSession& session, const Job& job);
MapperResult loudspeaker_mapper(const Show& show, const MapRequest& request, MapSession& session, const Job& job);
MapperResult level_mapper(const Show& show, const MapRequest& request, MapSession& session, const Job& job);

/// The mapper for a request whose options have been checked.
MapperResult mapper_for(const Show& show, const MapRequest& request, MapSession& session, const Job& job);
/// Steps, bands and frequencies within their limits, and each option where it applies.
std::optional<MapError> wrong_option(const MapRequest& request);

/// Frequencies that the options ask for.
Range range_of(const MapOptions& options);
tl::unexpected<MapError> error(MapError::Reason reason, std::string message = {});

/// For a drive function: what the directivities of its ends make of the drives over the fine frequencies. Valid as long
/// as the store keeps its tables.
std::vector<const Floats*> axes_of(const std::vector<const Directivity*>& directivities, TableStore& store,
                                   double speed);

/// A field with its ends connected to their drives.
class DrivenField {
  public:
    /// Given: the loudspeaker's directivity by end. The drives must outlive the field.
    DrivenField(const std::vector<FixedEnd>& ends, const std::vector<const Directivity*>& directivities,
                const Drives& drives, TableStore& store, double speed);
    DrivenField(const DrivenField&) = delete;
    DrivenField& operator=(const DrivenField&) = delete;
    /// Its cell end is to be set.
    Field field;
    void set_air(const AirRows& air);

  private:
    void set_axis(FixedEnd& end, const Directivity& directivity, const Drives& drives, TableStore& store, double speed);

    std::vector<std::shared_ptr<const TableStore::Axis>> axes_;
    std::deque<Floats> narrow_axes_;
    Field divisor_;
};

}  // namespace howlmap::maps
