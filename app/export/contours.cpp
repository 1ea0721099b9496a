// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/contours.h"

#include <QHash>
#include <array>
#include <cmath>
#include <optional>

#include "app/export/plan_style.h"

namespace howlmap::app {
namespace {

/// An edge of the lattice of cell centres: from cell (column, row) to the right (across) or up the stage.
using Edge = quint64;
Edge edge_key(int column, int row, bool across) {
    return (static_cast<quint64>(static_cast<quint32>(column)) << 33) |
           (static_cast<quint64>(static_cast<quint32>(row)) << 1) | (across ? 1U : 0U);
}

struct Piece {
    Edge a, b;
};

/// The contour's pieces and where it crosses each edge.
class Tracing {
  public:
    Tracing(const MapGrid& grid, double level) : grid_(grid), level_(level) {
        for (int row = 0; row + 1 < grid.rows; ++row)
            for (int column = 0; column + 1 < grid.columns; ++column) add_square(column, row);
    }

    std::vector<QPolygonF> joined() {
        std::vector<QPolygonF> lines;
        // Open lines first, from their ends; what is left are rings.
        for (const bool only_ends : {true, false})
            for (std::size_t i = 0; i < pieces_.size(); ++i) {
                if (used_[i]) continue;
                const Edge start = is_end(pieces_[i].a)   ? pieces_[i].a
                                   : is_end(pieces_[i].b) ? pieces_[i].b
                                                          : pieces_[i].a;
                if (only_ends && !is_end(start)) continue;
                lines.push_back(follow(start));
            }
        return lines;
    }

  private:
    float value(int column, int row) const { return grid_.value[grid_.index(column, row)]; }

    void add_square(int column, int row) {
        const std::array<float, 4> v = {value(column, row), value(column + 1, row), value(column + 1, row + 1),
                                        value(column, row + 1)};
        unsigned kind = 0;
        for (std::size_t i = 0; i < 4; ++i) {
            if (!std::isfinite(v[i])) return;
            if (v[i] > level_) kind |= 1U << i;
        }
        if (kind == 0 || kind == 15) return;
        const Edge low = edge_key(column, row, true), right = edge_key(column + 1, row, false),
                   high = edge_key(column, row + 1, true), left = edge_key(column, row, false);
        switch (kind) {
            case 1:
            case 14:
                return add(left, low);
            case 2:
            case 13:
                return add(low, right);
            case 4:
            case 11:
                return add(right, high);
            case 8:
            case 7:
                return add(high, left);
            case 3:
            case 12:
                return add(left, right);
            case 6:
            case 9:
                return add(low, high);
            default:
                break;
        }
        // A saddle: the mean decides which corners belong together.
        const bool middle_above = (v[0] + v[1] + v[2] + v[3]) / 4.0F > level_;
        if ((kind == 5) == middle_above) {
            add(left, high);
            add(low, right);
        } else {
            add(left, low);
            add(right, high);
        }
    }

    void add(Edge a, Edge b) {
        const std::size_t piece = pieces_.size();
        pieces_.push_back({a, b});
        used_.push_back(false);
        for (const Edge edge : {a, b}) at_[edge].push_back(piece);
    }

    bool is_end(Edge edge) const { return at_[edge].size() == 1; }

    QPointF place(Edge edge) const {
        const int column = static_cast<int>(edge >> 33), row = static_cast<int>((edge >> 1) & 0xffffffffU);
        const bool across = (edge & 1U) != 0;
        const double from = value(column, row), to = across ? value(column + 1, row) : value(column, row + 1);
        const double t = (level_ - from) / (to - from);
        const double x = grid_.x(column) + (across ? t * grid_.step : 0.0),
                     y = grid_.y(row) + (across ? 0.0 : t * grid_.step);
        return to_page({x, y});
    }

    QPolygonF follow(Edge from) {
        QPolygonF line;
        line << place(from);
        while (const auto piece = unused_at(from)) {
            used_[*piece] = true;
            from = pieces_[*piece].a == from ? pieces_[*piece].b : pieces_[*piece].a;
            line << place(from);
        }
        return line;
    }

    std::optional<std::size_t> unused_at(Edge edge) const {
        for (const std::size_t piece : at_[edge])
            if (!used_[piece]) return piece;
        return std::nullopt;
    }

    const MapGrid& grid_;
    double level_;
    std::vector<Piece> pieces_;
    std::vector<bool> used_;
    QHash<Edge, std::vector<std::size_t>> at_;
};

}  // namespace

std::vector<QPolygonF> contour_lines(const MapGrid& grid, double level) { return Tracing(grid, level).joined(); }

}  // namespace howlmap::app
