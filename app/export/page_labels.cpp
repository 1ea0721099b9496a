// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/page_labels.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace howlmap::app {
namespace {
constexpr std::array kReaches = {3.0, 12.0, 24.0, 40.0, 60.0, 84.0, 112.0, 144.0};  ///< between object and name
constexpr int kBearings = 24;
constexpr double kLeaderFrom = 10.0;  ///< names further away are tied to their objects by a line
constexpr double kApart = 1.5;        ///< between two names
constexpr double kSpace = 7.0;        ///< names on one line closer than this read as one
constexpr int kSweeps = 12;
// Costs, in lengths of way that a name would rather go. They only rank; what must not be outweighs what is not nice.
constexpr double kOutside = 1e5, kCovers = 1e4, kPerCovered = 10.0, kPerEdge = 20.0, kLeader = 12.0,
                 kLeaderCrosses = 60.0, kReadAsOne = 14.0, kDoubtful = 40.0, kSlanted = 3.0;

double area(const QRectF& rect) { return rect.width() * rect.height(); }

/// Length of the part of a line inside a rectangle.
double length_inside(const QLineF& line, const QRectF& box) {
    double from = 0.0, to = 1.0;
    const auto clip = [&](double at, double step, double low, double high) {
        if (std::abs(step) < 1e-12) {
            if (at < low || at > high) to = -1.0;
            return;
        }
        const double a = (low - at) / step, b = (high - at) / step;
        from = std::max(from, std::min(a, b)), to = std::min(to, std::max(a, b));
    };
    clip(line.x1(), line.dx(), box.left(), box.right());
    clip(line.y1(), line.dy(), box.top(), box.bottom());
    return to > from ? (to - from) * line.length() : 0.0;
}

QPointF nearest(const QRectF& box, QPointF at) {
    return {std::clamp(at.x(), box.left(), box.right()), std::clamp(at.y(), box.top(), box.bottom())};
}

double gap_between(const QRectF& a, const QRectF& b) {
    const double x = std::max({0.0, a.left() - b.right(), b.left() - a.right()});
    const double y = std::max({0.0, a.top() - b.bottom(), b.top() - a.bottom()});
    return std::hypot(x, y);
}

/// A rectangle by its sides, so that most pairs are told apart by four comparisons.
struct Reach {
    double left = 0.0, top = 0.0, right = 0.0, bottom = 0.0;
    bool meets(const Reach& other) const {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
};

struct Candidate {
    QRectF rect;
    QLineF leader;
    double cost = 0.0;  ///< whatever the other names do
    bool bad = false;   ///< covers something or leaves the page
    Reach reach = {};   ///< of name and leader
};

class Search {
  public:
    Search(const std::vector<LabelWish>& wishes, const PageRoom& room) : wishes_(wishes), room_(room) {
        for (const LabelWish& wish : wishes) {
            if (wish.size.isEmpty()) continue;
            names_.push_back(static_cast<std::size_t>(&wish - wishes.data()));
            candidates_.push_back(wish.within.isNull() ? around(wish) : in_corners(wish));
        }
        taken_.assign(names_.size(), 0);
    }

    PageLabels run() {
        for (std::size_t i = 0; i < names_.size(); ++i) taken_[i] = best_of(i, i);
        for (int sweep = 0; sweep < kSweeps; ++sweep) {
            bool moved = false;
            for (std::size_t i = 0; i < names_.size(); ++i) {
                const std::size_t now = best_of(i, names_.size());
                moved = moved || now != taken_[i];
                taken_[i] = now;
            }
            if (!moved) break;
        }
        return result();
    }

  private:
    const Candidate& chosen(std::size_t i) const { return candidates_[i][taken_[i]]; }

    /// Of the candidates of a name, given the first `known` other names.
    std::size_t best_of(std::size_t name, std::size_t known) const {
        std::size_t best = 0;
        double least = std::numeric_limits<double>::max();
        for (std::size_t k = 0; k < candidates_[name].size(); ++k) {
            double cost = candidates_[name][k].cost;
            for (std::size_t other = 0; other < known && cost < least; ++other)
                if (other != name) cost += clash(candidates_[name][k], chosen(other));
            if (cost < least) best = k, least = cost;
        }
        return best;
    }

    static double clash(const Candidate& a, const Candidate& b) {
        if (!a.reach.meets(b.reach)) return 0.0;
        const QRectF both = a.rect.adjusted(-kApart, -kApart, kApart, kApart) & b.rect;
        double cost = both.isEmpty() ? 0.0 : kCovers + kPerCovered * area(both);
        if (a.rect.adjusted(-kSpace, 0.0, kSpace, 0.0).intersects(b.rect)) cost += kReadAsOne;
        if (!a.leader.isNull() && length_inside(a.leader, b.rect) > 0.0) cost += kLeaderCrosses;
        if (!b.leader.isNull() && length_inside(b.leader, a.rect) > 0.0) cost += kLeaderCrosses;
        if (!a.leader.isNull() && !b.leader.isNull() &&
            a.leader.intersects(b.leader, nullptr) == QLineF::BoundedIntersection)
            cost += kLeaderCrosses;
        return cost;
    }

    std::vector<Candidate> around(const LabelWish& wish) const {
        std::vector<Candidate> all;
        const QPointF middle = wish.object.center();
        for (const double reach : kReaches)
            for (int d = 0; d < kBearings; ++d) {
                const double turn = 2.0 * std::numbers::pi * d / kBearings;
                const double x = std::cos(turn), y = std::sin(turn), m = std::max(std::abs(x), std::abs(y));
                QRectF rect(QPointF(), wish.size);
                rect.moveCenter(middle + QPointF(x / m * (wish.object.width() / 2 + wish.size.width() / 2 + reach),
                                                 y / m * (wish.object.height() / 2 + wish.size.height() / 2 + reach)));
                Candidate candidate{rect, {}, reach + (d % (kBearings / 4) == 0 ? 0.5 * d / 6.0 : kSlanted)};
                if (reach > kLeaderFrom) tie(candidate, wish.object);
                weigh(candidate, wish);
                all.push_back(candidate);
            }
        return all;
    }

    std::vector<Candidate> in_corners(const LabelWish& wish) const {
        std::vector<Candidate> all;
        for (int side = 0; side < kLabelCorners; ++side) {
            Candidate candidate{corner_place(wish.within, wish.size, side), {}, 2.0 * side};
            weigh(candidate, wish);
            all.push_back(candidate);
        }
        return all;
    }

    static void tie(Candidate& candidate, const QRectF& object) {
        const QPointF end = object.center() + (nearest(object, candidate.rect.center()) - object.center()) * 0.8;
        candidate.leader = {nearest(candidate.rect, end), end};
        candidate.cost += kLeader;
    }

    /// What the place costs whatever the other names do.
    void weigh(Candidate& candidate, const LabelWish& wish) const {
        const double outside =
            room_.page.isNull() || wish.anywhere ? 0.0 : area(candidate.rect) - area(candidate.rect & room_.page);
        if (outside > 1e-6) candidate.cost += kOutside + kPerCovered * outside, candidate.bad = true;
        for (const LabelWish& other : wishes_) {
            if (&other == &wish || other.object.isNull()) continue;
            const QRectF both = candidate.rect & other.object;
            if (!both.isEmpty()) candidate.cost += kCovers + kPerCovered * area(both), candidate.bad = true;
            if (candidate.leader.isNull() && both.isEmpty() && !wish.object.isNull() &&
                gap_between(candidate.rect, other.object) <= gap_between(candidate.rect, wish.object))
                candidate.cost += kDoubtful;  // whose name is it?
            if (!candidate.leader.isNull() && !other.object.intersects(wish.object))
                candidate.cost += length_inside(candidate.leader, other.object) > 0.0 ? kLeaderCrosses : 0.0;
        }
        for (const QLineF& edge : room_.edges) candidate.cost += kPerEdge * length_inside(edge, candidate.rect);
        const QRectF all = candidate.leader.isNull()
                               ? candidate.rect
                               : candidate.rect | QRectF(candidate.leader.p1(), candidate.leader.p2()).normalized();
        candidate.reach = {all.left() - kSpace, all.top() - kApart, all.right() + kSpace, all.bottom() + kApart};
    }

    bool on_edge(const QRectF& rect) const {
        return std::any_of(room_.edges.begin(), room_.edges.end(),
                           [&](const QLineF& edge) { return length_inside(edge, rect) > 0.0; });
    }

    PageLabels result() const {
        PageLabels out;
        out.labels.resize(wishes_.size());
        for (std::size_t i = 0; i < names_.size(); ++i) {
            bool clear = !chosen(i).bad;
            for (std::size_t k = 0; k < names_.size(); ++k)
                clear = clear && (k == i || !chosen(i).rect.intersects(chosen(k).rect));
            out.labels[names_[i]] = {chosen(i).rect, chosen(i).leader, on_edge(chosen(i).rect), clear};
            out.clear = out.clear && clear;
        }
        return out;
    }

    const std::vector<LabelWish>& wishes_;
    const PageRoom& room_;
    std::vector<std::size_t> names_;  ///< which wishes have one
    std::vector<std::vector<Candidate>> candidates_;
    std::vector<std::size_t> taken_;
};

}  // namespace

PageLabels page_labels(const std::vector<LabelWish>& wishes, const PageRoom& room) {
    return Search(wishes, room).run();
}

}  // namespace howlmap::app
