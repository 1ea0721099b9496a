// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>
#include <QLineF>
#include <QString>

namespace howlmap::app {

class PlanScene;

/// The line of the measuring tool with its figures on a plate.
class MeasureItem : public QGraphicsItem {
  public:
    explicit MeasureItem(PlanScene& scene);
    QRectF boundingRect() const override { return bounds_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void show_line(QPointF from, QPointF to, const QString& text);
    void clear();

  private:
    PlanScene& plan_;
    QLineF line_;
    QString text_;
    QRectF bounds_;
};

}  // namespace howlmap::app
