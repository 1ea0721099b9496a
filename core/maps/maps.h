// SPDX-License-Identifier: GPL-3.0-or-later
// Maps of the stage and the house: what one channel, one loudspeaker or one mix does at every place.
#pragma once
#include <cmath>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/units/job.h"

namespace howlmap {

struct Show;

/// feedback: gain in dB that one input has left with its transducer at the cell, before it rings at the worst phase.
/// loudspeaker: the same for the mix of one loudspeaker that is moved to the cell, aimed at its listener and made as
/// loud at the listener's ear as it is now.
/// level: level in dBA (one band: dB) of a mix at ear height.
/// wash: the same of all loudspeakers that count as stage wash, over the stage and the house.
enum class MapKind { feedback, loudspeaker, level, wash };

struct MapOptions {
    double step = 0.05;         ///< metres between cells, kSmallestMapStep..kLargestMapStep
    int coarse = 1;             ///< only cells at whole multiples of coarse * step, 1..64
    std::optional<int> band{};  ///< only this third-octave band 0..30
    std::optional<double>
        hz{};  ///< only this frequency, 20..20000 Hz; feedback and loudspeaker maps, instead of a band
};

inline constexpr double kSmallestMapStep = 0.02, kLargestMapStep = 1.0;
inline constexpr std::int64_t kMostMapCells = 4'000'000;  ///< columns times rows; a request beyond it is refused

struct MapRequest {
    MapKind kind = MapKind::feedback;
    std::string id;  ///< of the input (feedback), the loudspeaker (loudspeaker) or the mix (level); not used by wash
    MapOptions options;
};

/// Cells lie at whole multiples of the step: x = (first_column + i) * step, y = (first_row + j) * step, metres.
struct MapGrid {
    MapKind kind = MapKind::feedback;
    std::string id;      ///< as in the request
    std::string unit;    ///< "dB" or "dBA"
    double step = 0.05;  ///< of this grid: that of the request times its coarse factor
    int first_column = 0, first_row = 0;
    int columns = 0, rows = 0;
    std::vector<std::uint8_t> inside;  ///< rows x columns, by y then x: 1 where the cell lies in the mapped area
    std::vector<float> value;       ///< same shape; NaN outside the area, and everywhere when there is nothing to show
    std::vector<float> worst_hz;    ///< same shape; the frequency that sets the value; NaN in level and wash maps
    bool unstable_without = false;  ///< the rest of the stage rings already without this input: no values
    bool silent = false;            ///< no loop (feedback, loudspeaker) or no sound (level, wash): no values

    double x(int column) const { return multiple(first_column + column); }
    double y(int row) const { return multiple(first_row + row); }
    std::size_t index(int column, int row) const {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(column);
    }
    friend bool operator==(const MapGrid&, const MapGrid&) = default;

  private:
    /// To the nanometre: 3 * 0.05 is 0.15 here, as it stands in a file.
    double multiple(int times) const { return std::round(times * step * 1e9) / 1e9; }
};

/// Index of the cell nearest to a place, absent when that cell lies outside the mapped area.
std::optional<std::size_t> cell_at(const MapGrid& grid, Vec2 place);

struct MapError {
    enum class Reason { cancelled, unknown_id, not_possible, bad_option };
    Reason reason = Reason::cancelled;
    std::string message;  ///< a sentence for the user; empty when cancelled
};
using MapResult = tl::expected<MapGrid, MapError>;

/// Area that a map covers, as polygons of which a cell must lie in at least one. Stage maps: the outline. Wash map: the
/// outline and a box that holds it, every listener place with 1 m around it and, downstage of the outline, at
/// least as much house as the stage is deep.
std::vector<Outline> mapped_area(const Show& show, MapKind kind);
/// The finest step of 0.05 m times a whole number, at least `wanted`, whose grid has at most `cells` cells.
double fitting_step(const Show& show, MapKind kind, double wanted, std::int64_t cells = 250'000);

/// One map from scratch. The show must have passed the reader.
MapResult make_map(const Show& show, const MapRequest& request, const Job& job = {});
MapResult feedback_map(const Show& show, const std::string& input, const MapOptions& options = {}, const Job& job = {});
MapResult loudspeaker_map(const Show& show, const std::string& loudspeaker, const MapOptions& options = {},
                          const Job& job = {});
MapResult level_map(const Show& show, const std::string& mix, const MapOptions& options = {}, const Job& job = {});
MapResult wash_map(const Show& show, const MapOptions& options = {}, const Job& job = {});

/// Maps for a hand that moves things: keeps tables, responses and partial sums from one call to the next and works out
/// again only what a change of the show touches. Calls of one engine must not overlap; results equal make_map's.
class MapEngine {
  public:
    MapEngine();
    ~MapEngine();
    MapEngine(MapEngine&&) noexcept;
    MapEngine& operator=(MapEngine&&) noexcept;

    using Shown = std::shared_ptr<const MapGrid>;
    /// The map asked for. `shown` is told every better grid on the way, coarse (every fourth cell in x and y, where the
    /// step allows) before fine, from the calling thread; the last one told is the one returned. If nothing that the
    /// map depends on has changed since the last call, the same grid is returned at once and `shown` is told that one.
    /// Cancelled: an error with Reason::cancelled; what was told before still holds for that show.
    tl::expected<Shown, MapError> update(const Show& show, const MapRequest& request, const Job& job = {},
                                         const std::function<void(const Shown&)>& shown = {});

  private:
    struct State;
    std::unique_ptr<State> state_;
};

/// The text of a CSV file: "x_m,y_m,value,worst_hz", then a line for every cell in the area, by y then x; shortest
/// numbers that read back the same; fields empty where the map has no value.
std::string map_csv(const MapGrid& grid);

}  // namespace howlmap
