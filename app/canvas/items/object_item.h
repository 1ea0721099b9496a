// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>

#include "app/export/page_labels.h"

namespace howlmap::app {

class PlanScene;

/// One object of the show on the plan. Knows its id; everything else is looked up when it paints.
class ObjectItem : public QGraphicsItem {
  public:
    enum { Type = UserType + 1 };
    ObjectItem(PlanScene& scene, QString id);
    int type() const override { return Type; }
    const QString& id() const { return id_; }
    QRectF boundingRect() const override;
    QPainterPath shape() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void look_changed();  ///< before the next paint the object may lie elsewhere
    void take_bounds();

  private:
    PlanScene& plan_;
    QString id_;
    QRectF bounds_;
};

/// The name of an object, beside it or at the end of a line, always the same height on the screen.
class LabelItem : public QGraphicsItem {
  public:
    LabelItem(PlanScene& scene, QString id);
    QRectF boundingRect() const override { return bounds_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void set_name(const PageLabel& place, const QString& text, int side = -1);
    void shift(QPointF by);  ///< goes along with its object
    int side() const { return side_; }
    const PageLabel& place() const { return place_; }
    const QString& text() const { return text_; }

  private:
    void take_place();

    PlanScene& plan_;
    QString id_, text_;
    PageLabel place_;
    QRectF bounds_;
    int side_ = -1;
};

}  // namespace howlmap::app
