// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/labels.h"

#include <array>

#include "app/export/ground.h"

namespace howlmap::app {
namespace {
constexpr double kCornerPx = 7.0;       ///< a riser's name stands inside its upper left corner
constexpr qsizetype kLongestName = 48;  ///< letters on the plan; the lists have the whole of it
constexpr double kHideBelowPx = 12.0;   ///< metres shorter than this many pixels: names would bury the plan

QRectF to_px(const QRectF& page, double px) {
    return {page.x() / px, page.y() / px, page.width() / px, page.height() / px};
}

QSizeF name_size(const QString& name, const PlanStyle& style, QHash<QString, QSizeF>* known) {
    if (!known) return text_size_px(name, style.font, style.label_px);
    QSizeF& size = (*known)[name];
    if (size.isEmpty()) size = text_size_px(name, style.font, style.label_px);
    return size;
}

LabelWish wish_of(const ObjectLook& look, const QString& name, const PlanStyle& style, int last,
                  const NameOptions& options) {
    const bool shown = !name.isEmpty() && 1.0 / style.px > kHideBelowPx;
    const QSizeF size = shown ? name_size(name, style, options.sizes) : QSizeF();
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
    for (const ObjectLook* look : looks)
        wishes.push_back(wish_of(*look, look->label, style, last.value(look->id, -1), options));
    for (const QRectF& words : stage_word_boxes(show, style)) wishes.push_back({to_px(words, style.px), {}, {}});
    std::vector<LabelPlace> places = placed_labels(wishes);
    places.resize(looks.size());
    return places;
}

namespace {
constexpr std::array kSizesPx = {11.0, 9.0, 8.0};  ///< 8.3 to 6 points on paper

QLineF to_px(const QLineF& line, double px) { return {line.p1() / px, line.p2() / px}; }

std::vector<QLineF> sides_of(const QPolygonF& outline, double px) {
    std::vector<QLineF> sides;
    for (qsizetype i = 0; i < outline.size(); ++i)
        sides.push_back(to_px(QLineF(outline[i], outline[(i + 1) % outline.size()]), px));
    return sides;
}

PageRoom room_of(const Show& show, const std::vector<const ObjectLook*>& looks, const PlanStyle& style,
                 const QRectF& page) {
    PageRoom room{to_px(page, style.px), {}};
    const auto add = [&](const std::vector<QLineF>& lines) {
        room.edges.insert(room.edges.end(), lines.begin(), lines.end());
    };
    QPolygonF stage;
    for (const Vec2& corner : show.stage.outline) stage << to_page(corner);
    add(sides_of(stage, style.px));
    for (const ObjectLook* look : looks)
        if (look->kind == ObjectKind::riser) add(sides_of(look->outline, style.px));
    for (const PlaneMark& plane : stage_words(show, style).planes) room.edges.push_back(to_px(plane.line, style.px));
    return room;
}

QString name_on_page(const ObjectLook& look, bool channels_alone) {
    return channels_alone && look.kind == ObjectKind::input ? look.label.section(u' ', 0, 0) : look.label;
}

std::vector<QString> texts_of(const std::vector<const ObjectLook*>& looks, bool channels_alone) {
    std::vector<QString> texts;
    for (const ObjectLook* look : looks) {
        QString name = name_on_page(*look, channels_alone);
        if (name.size() > kLongestName) name = name.left(kLongestName - 1) + QStringLiteral("…");
        texts.push_back(std::move(name));
    }
    return texts;
}

PageLabels searched(const Show& show, const std::vector<const ObjectLook*>& looks, const PlanStyle& style,
                    const NameRoom& room, const std::vector<QString>& texts, QHash<QString, QSizeF>* sizes = nullptr) {
    std::vector<LabelWish> wishes;
    for (std::size_t i = 0; i < looks.size(); ++i) {
        wishes.push_back(wish_of(*looks[i], texts[i], style, -1, {false, sizes}));
        wishes.back().anywhere = !room.view.contains(bounds_of(*looks[i], style));
    }
    for (const QRectF& words : stage_word_boxes(show, style)) wishes.push_back({to_px(words, style.px), {}, {}});
    for (const QRectF& taken : room.taken) wishes.push_back({to_px(taken, style.px), {}, {}});
    PageLabels found = page_labels(wishes, room_of(show, looks, style, room.view));
    found.labels.resize(looks.size());
    return found;
}

PageNames names_placed_once(const Show& show, const std::vector<const ObjectLook*>& looks, PlanStyle style) {
    PageNames names;
    style.label_px = names.label_px = kSizesPx.back();
    for (const ObjectLook* look : looks) names.texts.push_back(look->label);
    for (const LabelPlace& place : placed_names(show, looks, style)) names.places.push_back({place.rect, {}, false});
    return names;
}
}  // namespace

PageNames names_on_page(const Show& show, const std::vector<const ObjectLook*>& looks, const PlanStyle& style,
                        const QRectF& page) {
    if (looks.size() > kMostSearched) return names_placed_once(show, looks, style);
    PageNames names;
    PlanStyle sized = style;
    for (const bool channels_alone : {false, true})
        for (const double size : kSizesPx) {
            sized.label_px = names.label_px = size;
            names.texts = texts_of(looks, channels_alone);
            PageLabels found = searched(show, looks, sized, {page, {}}, names.texts);
            names.places = std::move(found.labels);
            if (found.clear) return names;
        }
    return names;
}

PageNames names_on_screen(const Show& show, const std::vector<const ObjectLook*>& looks, const PlanStyle& style,
                          const NameRoom& room, QHash<QString, QSizeF>* sizes) {
    PageNames names;
    names.label_px = style.label_px;
    for (const bool channels_alone : {false, true}) {
        names.texts = texts_of(looks, channels_alone);
        PageLabels found = searched(show, looks, style, room, names.texts, sizes);
        names.places = std::move(found.labels);
        if (found.clear) return names;
    }
    for (std::size_t i = 0; i < looks.size(); ++i) {
        const bool gives_way = looks[i]->kind == ObjectKind::riser || looks[i]->kind == ObjectKind::mark;
        if (gives_way && !names.places[i].clear) names.places[i] = {};
    }
    return names;
}

namespace {
void paint_leader(QPainter& painter, const PageLabel& place, const PlanStyle& style) {
    if (place.leader.isNull()) return;
    painter.setPen(style.pen(style.ink.soft, 0.6));
    painter.drawLine(QLineF(place.leader.p1() * style.px, place.leader.p2() * style.px));
}

void paint_text(QPainter& painter, const ObjectLook& look, const PageLabel& place, const QString& text,
                const PlanStyle& style) {
    if (place.rect.isEmpty()) return;
    const QRectF box = label_rect({place.rect, 0}, style);
    if (place.on_edge) painter.fillRect(box, style.ink.stage);
    draw_text(painter, {box.left(), box.center().y()}, text, style, style.label_px,
              look.kind == ObjectKind::riser ? style.ink.soft : style.ink.ink, Anchor::left);
}
}  // namespace

void paint_names(QPainter& painter, const std::vector<const ObjectLook*>& looks, const PageNames& names,
                 const PlanStyle& style) {
    PlanStyle sized = style;
    sized.label_px = names.label_px;
    for (const PageLabel& place : names.places) paint_leader(painter, place, sized);
    QColor backing = style.ink.stage;
    backing.setAlphaF(0.72f);
    if (names.backed)
        for (const PageLabel& place : names.places) painter.fillRect(label_rect({place.rect, 0}, style), backing);
    for (std::size_t i = 0; i < looks.size(); ++i)
        paint_text(painter, *looks[i], names.places[i], names.texts[i], sized);
}

void paint_name(QPainter& painter, const ObjectLook& look, const PageLabel& place, const QString& text,
                const PlanStyle& style) {
    paint_leader(painter, place, style);
    paint_text(painter, look, place, text, style);
}

QRectF label_rect(const LabelPlace& place, const PlanStyle& style) {
    const QRectF& r = place.rect;
    return {r.x() * style.px, r.y() * style.px, r.width() * style.px, r.height() * style.px};
}

void paint_label(QPainter& painter, const ObjectLook& look, const QRectF& place, const PlanStyle& style) {
    if (place.isEmpty()) return;
    const QColor colour = look.kind == ObjectKind::riser ? style.ink.soft : style.ink.ink;
    draw_text(painter, {place.left(), place.center().y()}, look.label, style, style.label_px, colour, Anchor::left);
}

}  // namespace howlmap::app
