// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QHash>
#include <QIcon>
#include <QProxyStyle>

namespace howlmap::app {

/// Fusion, with edges that are seen, and so that what Qt keeps of the pictures of widgets does not add up: up to Qt 6.4
/// at least it never forgets the name of a picture, and puts into it which copy of a palette, or of an icon, was drawn.
/// Every widget has a copy of its own where an application has chosen its palette.
class HouseStyle : public QProxyStyle {
    Q_OBJECT
  public:
    HouseStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    QIcon standardIcon(StandardPixmap which, const QStyleOption* option, const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* data) const override;

  private:
    mutable QHash<StandardPixmap, QIcon> title_icons_;
};

}  // namespace howlmap::app
