// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/loop_lines.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/settings/figures.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {
constexpr double kThinnestPx = 0.8, kHeaviestPx = 3.6;
constexpr double kHaloPx = 9.0;
constexpr double kLabelPx = 12.0;
constexpr double kPlatePx = 3.0;

std::optional<QLineF> line_between(const Show& show, const std::string& loudspeaker, const std::string& input) {
    const auto* l = find_by_id(show.loudspeakers, loudspeaker);
    const auto* i = find_by_id(show.inputs, input);
    if (!l || !i || !i->has_position) return std::nullopt;
    return QLineF(to_page(l->position.xy()), to_page(i->position.xy()));
}

LoopLine* find_line(std::vector<LoopLine>& lines, const std::string& input, const std::string& loudspeaker) {
    const auto found = std::find_if(lines.begin(), lines.end(), [&](const LoopLine& line) {
        return line.input == input && line.loudspeaker == loudspeaker;
    });
    return found == lines.end() ? nullptr : &*found;
}

void light(std::vector<LoopLine>& lines, const Show& show, const Ring& ring) {
    for (const Share& share : ring.shares) {
        const bool strongest = share.input == ring.strongest_input && share.loudspeaker == ring.strongest_loudspeaker;
        if (share.share < kLitShare && !strongest) continue;
        LoopLine* line = find_line(lines, share.input, share.loudspeaker);
        if (!line) {
            const auto page = line_between(show, share.loudspeaker, share.input);
            if (!page) continue;
            lines.push_back({share.input, share.loudspeaker, *page, ring.margin_db, ring.hz, false, false});
            line = &lines.back();
        }
        line->lit = true;
        line->hz = ring.hz;
        line->labelled = strongest;
    }
}

QString label_of(const LoopLine& line) { return hz_text(line.hz); }

QRectF plate_of(const LoopLine& line, const PlanStyle& style) {
    const QSizeF size = text_size_px(label_of(line), style.font, kLabelPx) * style.px;
    const double pad = kPlatePx * style.px;
    return QRectF(line.page.center() - QPointF(size.width() / 2, size.height() / 2), size)
        .adjusted(-pad, -pad, pad, pad);
}

/// Grey while far from ringing, then the colour of its risk.
QColor colour_of(double risk, const PlanStyle& style, const RiskScale& scale) {
    if (risk >= 0.5) return scale.solid(risk);
    QColor quiet = style.ink.soft;
    quiet.setAlphaF(static_cast<float>(0.35 + risk));
    return quiet;
}
}  // namespace

std::vector<LoopLine> loop_lines(const Show& show, const AnalysisResult& result, const std::optional<Ring>& highlight) {
    std::vector<LoopLine> lines;
    const double worst = result.pairs.empty() ? 0.0 : result.pairs.front().loop_gain_db;
    for (const PairFigure& pair : result.pairs) {
        if (pair.loop_gain_db < worst - kLoopsWithinDb) break;
        if (find_line(lines, pair.input, pair.loudspeaker)) continue;  // through another mix, worse
        if (const auto page = line_between(show, pair.loudspeaker, pair.input))
            lines.push_back({pair.input, pair.loudspeaker, *page, -pair.loop_gain_db, pair.worst_hz, false, false});
    }
    if (highlight) light(lines, show, *highlight);
    std::stable_sort(lines.begin(), lines.end(), [](const LoopLine& a, const LoopLine& b) {
        return a.lit != b.lit ? b.lit : a.margin_db > b.margin_db;
    });
    return lines;
}

void paint_loop_line(QPainter& painter, const LoopLine& line, const PlanStyle& style, const RiskScale& scale) {
    const double risk = scale.risk(line.margin_db);
    if (line.lit) {
        QColor halo = style.ink.accent;
        halo.setAlphaF(0.35F);
        painter.setPen(style.pen(halo, kHaloPx));
        painter.drawLine(line.page);
    }
    painter.setPen(style.pen(colour_of(risk, style, scale), kThinnestPx + (kHeaviestPx - kThinnestPx) * risk));
    painter.drawLine(line.page);
    if (!line.labelled) return;
    painter.setPen(style.pen(style.ink.soft, 1.0));
    painter.setBrush(style.ink.paper);
    painter.drawRect(plate_of(line, style));
    draw_text(painter, line.page.center(), label_of(line), style, kLabelPx, style.ink.ink);
}

QRectF bounds_of(const LoopLine& line, const PlanStyle& style) {
    const double margin = kHaloPx * style.px;
    const QRectF box = QRectF(line.page.p1(), line.page.p2()).normalized().adjusted(-margin, -margin, margin, margin);
    return line.labelled ? box | plate_of(line, style) : box;
}

QString loop_words(const Show& show, const LoopLine& line) {
    return QCoreApplication::translate("Plan", "%1 to %2: this path alone leaves %3, worst at %4")
        .arg(name_text(show, line.loudspeaker), name_text(show, line.input), margin_text(line.margin_db),
             hz_text(line.hz));
}

}  // namespace howlmap::app
