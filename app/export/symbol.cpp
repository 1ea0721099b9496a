// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/symbol.h"

#include <QFile>
#include <QHash>
#include <QTransform>
#include <algorithm>
#include <limits>
#include <mutex>

#include "app/export/symbol_recorder.h"

namespace howlmap::app {
namespace {
constexpr double kMetresPerMillimetre = 0.001;
constexpr float kBodyOpacity = 0.75F;  ///< so that an object stands out from what lies under it
constexpr double kHeavyRatio = 1.5;    ///< a stroke this much wider than the symbol's thinnest is the working side

QString path_of(const QString& kind) { return QStringLiteral(":/symbols/") + kind + QStringLiteral(".svg"); }

/// Files may write kinds with hyphens or underscores.
QString file_of(const QString& kind) {
    QString hyphens = kind;
    hyphens.replace(u'_', u'-');
    for (const QString& name : {kind, hyphens})
        if (QFile::exists(path_of(name))) return path_of(name);
    return {};
}

Symbol finished(std::vector<SymbolPart> parts) {
    Symbol symbol;
    symbol.parts = std::move(parts);
    for (const SymbolPart& part : symbol.parts) symbol.bounds |= part.path.boundingRect();
    symbol.silhouette.setFillRule(Qt::WindingFill);
    for (const SymbolPart& part : symbol.parts) symbol.silhouette.addPath(part.path);
    return symbol;
}

Symbol from_svg(const QByteArray& svg) {
    const std::vector<RecordedPath> notes = recorded_svg(svg);
    double thinnest = std::numeric_limits<double>::infinity();
    for (const RecordedPath& note : notes)
        if (note.stroked) thinnest = std::min(thinnest, note.stroke_width);
    std::vector<SymbolPart> parts;
    const QTransform to_metres = QTransform::fromScale(kMetresPerMillimetre, kMetresPerMillimetre);
    for (const RecordedPath& note : notes) {
        const Fill fill = !note.filled ? Fill::none : note.fill_lightness > 0.5 ? Fill::paper : Fill::ink;
        parts.push_back({to_metres.map(note.path), fill, note.stroked, note.stroke_width > kHeavyRatio * thinnest});
    }
    return finished(std::move(parts));
}

Symbol plain_ring() {
    QPainterPath ring, tick;
    ring.addEllipse(QPointF(), 0.15, 0.15);
    tick.moveTo(0.0, 0.15);
    tick.lineTo(0.0, 0.25);
    return finished({{ring, Fill::paper, true, false}, {tick, Fill::none, true, true}});
}

Symbol loaded(const QString& kind, bool small) {
    QString file = small ? file_of(kind + QStringLiteral("-small")) : QString();
    if (file.isEmpty()) file = file_of(kind);
    QFile svg(file);
    if (file.isEmpty() || !svg.open(QIODevice::ReadOnly)) return plain_ring();
    return from_svg(svg.readAll());
}
}  // namespace

bool has_symbol(const QString& kind) { return !kind.isEmpty() && !file_of(kind).isEmpty(); }

const Symbol& symbol_named(const QString& kind, bool small) {
    static QHash<QString, std::shared_ptr<const Symbol>> known;
    static std::mutex taking;  // pictures are drawn off the interface thread, too; a symbol stays once it is there
    const std::lock_guard lock(taking);
    auto& entry = known[small ? kind + u'|' : kind];
    if (!entry) entry = std::make_shared<const Symbol>(loaded(kind, small));
    return *entry;
}

void paint_symbol(QPainter& painter, const Symbol& symbol, const PlanStyle& style, double scale, const QColor& ink) {
    painter.save();
    painter.scale(scale, scale);
    QColor body = style.ink.paper;
    body.setAlphaF(kBodyOpacity);
    painter.fillPath(symbol.silhouette, body);
    for (const SymbolPart& part : symbol.parts) {
        const double width = (part.heavy ? kHeavyPx : kThinPx) / scale;
        painter.setPen(part.stroked ? style.pen(ink, width) : QPen(Qt::NoPen));
        painter.setBrush(part.fill == Fill::none    ? QBrush(Qt::NoBrush)
                         : part.fill == Fill::paper ? QBrush(style.ink.paper)
                                                    : QBrush(ink));
        painter.drawPath(part.path);
    }
    painter.restore();
}

}  // namespace howlmap::app
