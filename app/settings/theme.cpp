// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings/theme.h"

#include <QApplication>
#include <QToolTip>

#include "app/settings/house_style.h"

namespace howlmap::app {
namespace {

struct Roles {
    QRgb window, base, alternate, text, button, edge, accent, on_accent, quiet;
};

QPalette from(const Roles& roles) {
    QPalette palette(QColor(roles.button), QColor(roles.window));
    const auto set = [&](QPalette::ColorRole role, QRgb colour) { palette.setColor(role, QColor(colour)); };
    set(QPalette::Window, roles.window);
    set(QPalette::Base, roles.base);
    set(QPalette::AlternateBase, roles.alternate);
    set(QPalette::Button, roles.button);
    set(QPalette::Mid, roles.edge);
    set(QPalette::Dark, roles.edge);
    set(QPalette::ToolTipBase, roles.base);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText})
        set(role, roles.text);
    set(QPalette::PlaceholderText, roles.quiet);
    set(QPalette::Highlight, roles.accent);
    set(QPalette::HighlightedText, roles.on_accent);
    set(QPalette::Link, roles.accent);
    set(QPalette::LinkVisited, roles.accent);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, QColor(roles.quiet));
    return palette;
}

const QPalette& palette_at_start() {
    static const QPalette palette = QApplication::palette();
    return palette;
}

}  // namespace

QPalette light_palette() {
    return from(
        {0xfff1efea, 0xfffcfbf8, 0xfff6f4ef, 0xff1c1d20, 0xffe9e6df, 0xffa9a49a, 0xff1f5fbf, 0xffffffff, 0xff6a675f});
}

QPalette dark_palette() {
    return from(
        {0xff24292e, 0xff1b1f23, 0xff20252a, 0xffe8e7e2, 0xff2f353b, 0xff5a636b, 0xff7fb2ff, 0xff10151a, 0xff98a0a6});
}

bool is_dark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightnessF() < palette.color(QPalette::WindowText).lightnessF();
}

void apply_look(Look look) {
    const bool dark = look == Look::dark || (look == Look::system && is_dark(palette_at_start()));
    if (!dynamic_cast<HouseStyle*>(QApplication::style())) QApplication::setStyle(new HouseStyle);
    const QPalette palette = dark ? dark_palette() : light_palette();
    QApplication::setPalette(palette);
    QToolTip::setPalette(palette);
}

QFont tabular(QFont font) {
    font.setStyleHint(QFont::SansSerif);
    // The fonts of the desktops draw digits equally wide unless told otherwise; kerning is what moves them.
    font.setKerning(false);
    return font;
}

QFont figure_font(const QFont& base) {
    QFont font = tabular(base);
    font.setPointSizeF(base.pointSizeF() * 1.5);
    font.setWeight(QFont::DemiBold);
    return font;
}

}  // namespace howlmap::app
