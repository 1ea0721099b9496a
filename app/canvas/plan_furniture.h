// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <vector>

#include "app/export/plan_style.h"

namespace howlmap::app {

class PlanView;

/// What stays in its corner of the view while the plan moves beneath: scale bar, legend, and a notice where a map has
/// nothing to show.
class PlanFurniture : public QWidget {
    Q_OBJECT
  public:
    explicit PlanFurniture(PlanView& view);
    /// What the map says under the pointer.
    void set_reading(const QString& text);
    /// What it covers, in pixels of the viewport.
    std::vector<QRectF> boxes() const;
    /// Where the legend of the map lies; empty without a map.
    QRectF legend() const { return has_map() ? legend_box() : QRectF(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QRectF legend_box() const;
    QRectF reading_box(const QString& reading) const;
    bool has_map() const;
    void paint_map_corner(QPainter& painter, const PlanStyle& style) const;
    void paint_notice(QPainter& painter, const PlanStyle& style, const QString& notice) const;

    PlanView& view_;
    QString reading_;
};

}  // namespace howlmap::app
