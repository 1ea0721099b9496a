// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/ink.h"

#include <QPalette>

namespace howlmap::app {
namespace {
QColor mixed(const QColor& a, const QColor& b, double part_of_b) {
    const auto between = [&](float x, float y) { return static_cast<float>(x + (y - x) * part_of_b); };
    return QColor::fromRgbF(between(a.redF(), b.redF()), between(a.greenF(), b.greenF()),
                            between(a.blueF(), b.blueF()));
}

Ink blended(const QColor& paper, const QColor& ink, const QColor& accent) {
    const bool dark = paper.lightnessF() < 0.5F;
    const QColor stage = dark ? mixed(paper, ink, 0.05) : mixed(paper, QColor(Qt::white), 0.7);
    return {paper,  stage, ink, mixed(paper, ink, dark ? 0.66 : 0.68), mixed(paper, ink, dark ? 0.17 : 0.13),
            accent, dark};
}
}  // namespace

Ink Ink::for_print() { return blended(Qt::white, Qt::black, QColor(0x1f, 0x5f, 0xbf)); }

Ink Ink::from(const QPalette& palette) {
    return blended(palette.color(QPalette::Base), palette.color(QPalette::Text), palette.color(QPalette::Highlight));
}

}  // namespace howlmap::app
