// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>
#include <QString>
#include <optional>
#include <vector>

namespace howlmap::app {

class PlanScene;

/// Something small that the pointer can take hold of.
struct Handle {
    enum class Kind { turn, corner, edge, plane } kind = Kind::turn;
    QString id;             ///< of the riser whose corner it is; empty: the stage outline
    std::size_t index = 0;  ///< of the corner, of the one that starts the edge, or the PlaneSide
    QPointF at;             ///< page
};

/// The turn handle of the selection and the corners of a selected riser (or, with the outline tool, of the stage
/// and its walls).
class Handles : public QGraphicsItem {
  public:
    explicit Handles(PlanScene& scene);
    QRectF boundingRect() const override { return bounds_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void refresh();
    void set_outline_mode(bool on);  ///< corners and edges of the stage instead of the selection's
    std::optional<Handle> handle_at(QPointF page) const;
    const std::vector<Handle>& all() const { return handles_; }
    QPointF pivot() const { return pivot_; }  ///< about which the turn handle turns

  private:
    void add_turn_handle();
    void add_corners(const QString& id);
    void add_planes();

    PlanScene& plan_;
    std::vector<Handle> handles_;
    QPointF pivot_;
    QRectF bounds_;
    bool outline_mode_ = false;
};

}  // namespace howlmap::app
