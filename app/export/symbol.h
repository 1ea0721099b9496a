// SPDX-License-Identifier: GPL-3.0-or-later
// Vector symbols from resources/symbols: one SVG a kind, in millimetres, origin at the acoustic centre, facing down the
// page.
#pragma once
#include <QPainterPath>
#include <QString>
#include <vector>

#include "app/export/plan_style.h"

namespace howlmap::app {

enum class Fill { none, paper, ink };

/// One path of a symbol in metres.
struct SymbolPart {
    QPainterPath path;
    Fill fill = Fill::none;
    bool stroked = true, heavy = false;
};

struct Symbol {
    std::vector<SymbolPart> parts;
    QRectF bounds;            ///< of all paths, metres
    QPainterPath silhouette;  ///< filled, for picking
};

/// The symbol of a kind ("wedge", "side_fill" ..), or its simpler variant for small sizes where it has one.
/// An unknown kind gives a plain ring with a tick. Read once and kept.
const Symbol& symbol_named(const QString& kind, bool small);
bool has_symbol(const QString& kind);

/// Draws a symbol at the painter's origin in the style's one line weight, the working side heavier.
void paint_symbol(QPainter& painter, const Symbol& symbol, const PlanStyle& style, double scale, const QColor& ink);

}  // namespace howlmap::app
