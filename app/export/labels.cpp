// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/labels.h"

#include "app/export/ground.h"

namespace howlmap::app {
namespace {
constexpr double kCornerPx = 7.0;      ///< a riser's name stands inside its upper left corner
constexpr double kHideBelowPx = 12.0;  ///< metres shorter than this many pixels: names would bury the plan

QRectF to_px(const QRectF& page, double px) {
    return {page.x() / px, page.y() / px, page.width() / px, page.height() / px};
}

QSizeF name_size(const QString& name, const PlanStyle& style, QHash<QString, QSizeF>* known) {
    if (!known) return text_size_px(name, style.font, kLabelPx);
    QSizeF& size = (*known)[name];
    if (size.isEmpty()) size = text_size_px(name, style.font, kLabelPx);
    return size;
}

LabelWish wish_of(const ObjectLook& look, const PlanStyle& style, int last, const NameOptions& options) {
    const bool shown = !look.label.isEmpty() && 1.0 / style.px > kHideBelowPx;
    const QSizeF size = shown ? name_size(look.label, style, options.sizes) : QSizeF();
    const QRectF object = to_px(bounds_of(look, style), style.px);
    LabelWish wish{object, {}, size, last};
    wish.secondary = look.kind == ObjectKind::riser || look.kind == ObjectKind::mark;
    wish.may_hide = wish.secondary && options.may_hide;
    if (look.kind != ObjectKind::riser) return wish;
    wish.object = {};
    wish.within = to_px(look.outline.boundingRect(), style.px).adjusted(kCornerPx, kCornerPx, -kCornerPx, -kCornerPx);
    return wish;
}
}  // namespace

std::vector<LabelPlace> placed_names(const Show& show, const std::vector<const ObjectLook*>& looks,
                                     const PlanStyle& style, const QHash<QString, int>& last,
                                     const NameOptions& options) {
    std::vector<LabelWish> wishes;
    wishes.reserve(looks.size());
    for (const ObjectLook* look : looks) wishes.push_back(wish_of(*look, style, last.value(look->id, -1), options));
    for (const QRectF& words : stage_word_boxes(show, style)) wishes.push_back({to_px(words, style.px), {}, {}});
    std::vector<LabelPlace> places = placed_labels(wishes);
    places.resize(looks.size());
    return places;
}

QRectF label_rect(const LabelPlace& place, const PlanStyle& style) {
    const QRectF& r = place.rect;
    return {r.x() * style.px, r.y() * style.px, r.width() * style.px, r.height() * style.px};
}

void paint_label(QPainter& painter, const ObjectLook& look, const QRectF& place, const PlanStyle& style) {
    if (place.isEmpty()) return;
    const QColor colour = look.kind == ObjectKind::riser ? style.ink.soft : style.ink.ink;
    draw_text(painter, {place.left(), place.center().y()}, look.label, style, kLabelPx, colour, Anchor::left);
}

}  // namespace howlmap::app
