// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/label_layout.h"

#include <QHash>
#include <array>
#include <cmath>

namespace howlmap::app {
namespace {
constexpr double kGap = 3.0;          ///< between object and name
constexpr double kCell = 64.0;        ///< of the lookup grid
constexpr double kSidePenalty = 4.0;  ///< in square pixels covered: earlier sides are preferred
constexpr double kHidePart = 0.12;    ///< of its area that a name may have covered before it rather hides
constexpr int kSides = 12;
constexpr double kEdgeGap = 14.0;  ///< from a corner place inside to the one outside, the edge between them

/// Rectangles found quickly by place.
class Crowd {
  public:
    void add(const QRectF& rect, std::size_t owner) {
        visit(rect, [&](quint64 key) { cells_[key].push_back({rect, owner}); });
    }
    /// Area in square pixels that others cover of a rectangle.
    double covered(const QRectF& rect, std::size_t owner) const {
        double sum = 0.0;
        visit(rect, [&](quint64 key) {
            const auto cell = cells_.constFind(key);
            if (cell == cells_.constEnd()) return;
            for (const Entry& entry : *cell) {
                if (entry.owner == owner) continue;
                const QRectF both = entry.rect & rect;
                sum += both.width() * both.height();
            }
        });
        return sum;
    }

  private:
    struct Entry {
        QRectF rect;
        std::size_t owner;
    };
    template <class F>
    static void visit(const QRectF& rect, F&& f) {
        const auto cell = [](double v) { return static_cast<qint32>(std::floor(v / kCell)); };
        for (qint32 y = cell(rect.top()); y <= cell(rect.bottom()); ++y)
            for (qint32 x = cell(rect.left()); x <= cell(rect.right()); ++x)
                f((static_cast<quint64>(static_cast<quint32>(x)) << 32) | static_cast<quint32>(y));
    }
    QHash<quint64, std::vector<Entry>> cells_;
};

/// Where the name stands for a side: right, left, below, above, the four corners, and a line further out.
QRectF beside(const QRectF& object, QSizeF size, int side) {
    const double w = size.width(), h = size.height();
    const double far = side >= 8 ? h : 0.0;
    const std::array<QPointF, 8> corners = {QPointF(object.right() + kGap, object.center().y() - h / 2),
                                            QPointF(object.left() - kGap - w, object.center().y() - h / 2),
                                            QPointF(object.center().x() - w / 2, object.bottom() + kGap),
                                            QPointF(object.center().x() - w / 2, object.top() - kGap - h),
                                            QPointF(object.right() + kGap, object.bottom() - h / 2),
                                            QPointF(object.left() - kGap - w, object.bottom() - h / 2),
                                            QPointF(object.right() + kGap, object.top() - h / 2),
                                            QPointF(object.left() - kGap - w, object.top() - h / 2)};
    if (side < 8) return {corners[static_cast<std::size_t>(side)], size};
    const QPointF away = side == 8    ? QPointF(0, far)
                         : side == 9  ? QPointF(0, -far)
                         : side == 10 ? QPointF(0, 2 * far)
                                      : QPointF(0, -2 * far);
    return {corners[side % 2 == 0 ? 2 : 3] + away, size};
}

LabelPlace best_place(const LabelWish& wish, std::size_t owner, const Crowd& crowd) {
    LabelPlace best;
    double least = 0.0, covered = 0.0;
    const int sides = wish.within.isNull() ? kSides : kLabelCorners;
    for (int side = 0; side < sides; ++side) {
        const QRectF rect =
            wish.within.isNull() ? beside(wish.object, wish.size, side) : corner_place(wish.within, wish.size, side);
        const double under = crowd.covered(rect, owner);
        double cost = under + kSidePenalty * side;
        if (side == wish.last_side) cost -= kSidePenalty * kSides;
        if (best.side >= 0 && cost >= least) continue;
        best = {rect, side};
        least = cost;
        covered = under;
    }
    if (wish.may_hide && covered > kHidePart * wish.size.width() * wish.size.height()) best.rect = {};
    return best;
}
}  // namespace

QRectF corner_place(const QRectF& box, QSizeF size, int corner) {
    QRectF rect(QPointF(), size);
    const double out = corner < 4 ? 0.0 : size.height() + kEdgeGap;
    rect.moveLeft(corner % 4 < 2 ? box.left() : box.right() - size.width());
    rect.moveTop(corner % 2 == 0 ? box.top() - out : box.bottom() - size.height() + out);
    return rect;
}

std::vector<LabelPlace> placed_labels(const std::vector<LabelWish>& wishes) {
    Crowd crowd;
    for (std::size_t i = 0; i < wishes.size(); ++i)
        if (!wishes[i].object.isNull()) crowd.add(wishes[i].object, i);
    std::vector<LabelPlace> places(wishes.size());
    for (const bool secondary : {false, true})
        for (std::size_t i = 0; i < wishes.size(); ++i) {
            if (wishes[i].size.isEmpty() || wishes[i].secondary != secondary) continue;
            places[i] = best_place(wishes[i], i, crowd);
            if (!places[i].rect.isEmpty()) crowd.add(places[i].rect, wishes.size());  // a name is in everybody's way
        }
    return places;
}

}  // namespace howlmap::app
