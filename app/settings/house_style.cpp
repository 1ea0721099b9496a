// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings/house_style.h"

#include <QGuiApplication>
#include <QPainter>
#include <QStyleFactory>
#include <QStyleOption>

#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

/// As long as it lives an option has the application's copy of a palette in place of an equal one. Who draws by a style
/// makes the option for this one call, so that it may be changed meanwhile.
class CommonPalette {
  public:
    explicit CommonPalette(const QStyleOption* option)
        : option_(const_cast<QStyleOption*>(option)), own_(option->palette) {
        const QPalette common = QGuiApplication::palette();
        if (own_ != common) return;
        option_->palette = common;
        option_->palette.setCurrentColorGroup(own_.currentColorGroup());
    }
    ~CommonPalette() { option_->palette = own_; }
    CommonPalette(const CommonPalette&) = delete;
    CommonPalette& operator=(const CommonPalette&) = delete;

  private:
    QStyleOption* option_;
    QPalette own_;
};

}  // namespace

HouseStyle::HouseStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

/// Fusion draws the edges of boxes to tick hardly darker than the window, which on a dark one nobody sees.
void HouseStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    const CommonPalette common(option);
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    if (element != PE_IndicatorCheckBox) return;
    painter->save();
    painter->setPen(option->palette.color(QPalette::PlaceholderText));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
    painter->restore();
}

void HouseStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const {
    const CommonPalette common(option);
    QProxyStyle::drawControl(element, option, painter, widget);
}

void HouseStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                    const QWidget* widget) const {
    const CommonPalette common(option);
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

/// Fusion makes those in the titles of panels anew whenever a panel is laid out.
QIcon HouseStyle::standardIcon(StandardPixmap which, const QStyleOption* option, const QWidget* widget) const {
    if (which != SP_TitleBarNormalButton && which != SP_TitleBarCloseButton)
        return QProxyStyle::standardIcon(which, option, widget);
    QIcon& icon = title_icons_[which];
    if (icon.isNull()) icon = QProxyStyle::standardIcon(which, option, widget);
    return icon;
}

/// The lines of tables: as hard to see as the edges.
int HouseStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* data) const {
    if (hint == SH_Table_GridLineColor && option && is_dark(option->palette))
        return static_cast<int>(option->palette.color(QPalette::Mid).rgb());
    return QProxyStyle::styleHint(hint, option, widget, data);
}

}  // namespace howlmap::app
