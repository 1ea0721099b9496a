// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_scene.h"

#include <QPixmapCache>
#include <algorithm>
#include <utility>

#include "app/canvas/items/ground_item.h"
#include "app/canvas/items/object_item.h"
#include "app/export/ground.h"
#include "app/export/labels.h"

namespace howlmap::app {
namespace {
constexpr double kRoundabout = 8.0;     ///< metres of page around the drawing that one can scroll to
constexpr double kPickPx = 10.0;        ///< an object is hit this far beside it
constexpr int kPicturesKb = 32 * 1024;  ///< for kept pictures of objects and names
}  // namespace

PlanScene::PlanScene(Document& document, Selection& selection, QObject* parent)
    : QGraphicsScene(parent), document_(document), selection_(selection) {
    setItemIndexMethod(BspTreeIndex);
    QPixmapCache::setCacheLimit(std::max(QPixmapCache::cacheLimit(), kPicturesKb));
    label_timer_.setSingleShot(true);
    label_timer_.setInterval(0);
    connect(&label_timer_, &QTimer::timeout, this, &PlanScene::lay_out_labels);
    connect(&document_, &Document::replaced, this, &PlanScene::rebuild);
    connect(&document_, &Document::changed, this, &PlanScene::follow);
    connect(&document_, &Document::gesture_ended, this, &PlanScene::queue_labels);
    connect(&selection_, &Selection::changed, this, &PlanScene::follow_selection);
    addItem(ground_ = new GroundItem(*this, GroundItem::Part::floor));
    addItem(edge_ = new GroundItem(*this, GroundItem::Part::edge));
    rebuild();
}

PlanScene::~PlanScene() = default;

const ObjectLook& PlanScene::look(const QString& id) const {
    static const ObjectLook none;
    const auto found = looks_.constFind(id);
    return found == looks_.constEnd() ? none : *found;
}

QStringList PlanScene::ids() const { return order_; }

void PlanScene::rebuild() {
    qDeleteAll(std::exchange(items_, {}));
    qDeleteAll(std::exchange(labels_, {}));
    looks_.clear();
    order_.clear();
    style_.units = document_.show().display.units;
    refresh_items();
    follow_stage();
    Q_EMIT style_changed();
    Q_EMIT objects_changed();
}

/// Brings looks, items and their order up to the show; items of unchanged objects are left alone.
void PlanScene::refresh_items() {
    std::vector<ObjectLook> looks = looks_of(document_.show());
    QStringList order;
    double z = 0.0;
    for (ObjectLook& look : looks) {
        const QString id = look.id;
        order.append(id);
        const bool riser = look.kind == ObjectKind::riser;
        looks_[id] = std::move(look);
        ObjectItem*& item = items_[id];
        if (!item) {
            addItem(item = new ObjectItem(*this, id));
            addItem(labels_[id] = new LabelItem(*this, id));
            labels_[id]->setZValue(layer::kLabels);
        }
        item->setZValue((riser ? layer::kRisers : layer::kObjects) + (z += 0.01));
    }
    const QSet<QString> there(order.begin(), order.end());
    for (const QString& id : std::as_const(order_)) {
        if (there.contains(id)) continue;
        looks_.remove(id);
        delete items_.take(id);
        delete labels_.take(id);
    }
    order_ = order;
    queue_labels();
}

void PlanScene::follow(const std::set<std::string>& touched) {
    const Show& show = document_.show();
    bool same_objects = !touched.empty();
    for (const std::string& id : touched) {
        const QString key = QString::fromStdString(id);
        const std::optional<ObjectLook> now = look_of(show, id);
        if (now.has_value() != looks_.contains(key)) same_objects = false;
        if (!now || !looks_.contains(key)) continue;
        if (document_.in_gesture()) labels_[key]->shift(now->at - looks_[key].at);
        looks_[key] = *now;
        items_[key]->look_changed();
        labels_[key]->update();
    }
    if (!same_objects) refresh_items();
    if (touched.empty() && style_.units != show.display.units) {
        style_.units = show.display.units;
        Q_EMIT style_changed();
    }
    if (show.stage.outline != drawn_outline_ || show.stage.surfaces != drawn_surfaces_) follow_stage();
    // While the hand moves a name goes along with its object; when it has let go, names make way for each other.
    if (!same_objects || !document_.in_gesture()) queue_labels();
    Q_EMIT objects_changed();
}

/// Only what gained or lost its ring is painted anew.
void PlanScene::follow_selection() {
    const QStringList& ids = selection_.ids();
    const QSet<QString> now(ids.begin(), ids.end());
    for (const QString& id : (now - drawn_selected_) + (drawn_selected_ - now))
        if (ObjectItem* item = items_.value(id)) item->look_changed();
    drawn_selected_ = now;
}

void PlanScene::follow_stage() {
    drawn_outline_ = document_.show().stage.outline;
    drawn_surfaces_ = document_.show().stage.surfaces;
    drawn_words_ = stage_word_boxes(document_.show(), style_);
    ground_->look_changed();
    edge_->look_changed();
    fit_scene_rect();
}

void PlanScene::fit_scene_rect() {
    setSceneRect(extent_with_house(document_.show()).adjusted(-kRoundabout, -kRoundabout, kRoundabout, kRoundabout));
}

QString PlanScene::id_at(QPointF page) const { return ids_at(page).value(0); }

QStringList PlanScene::ids_at(QPointF page) const {
    const double reach = kPickPx * style_.px;
    const QRectF around(page - QPointF(reach, reach), page + QPointF(reach, reach));
    QStringList found, risers;
    for (QGraphicsItem* item : items(around, Qt::IntersectsItemShape, Qt::DescendingOrder))
        if (const auto* object = qgraphicsitem_cast<ObjectItem*>(item))
            (look(object->id()).kind == ObjectKind::riser ? risers : found).append(object->id());
    return found + risers;
}

QStringList PlanScene::ids_within(const QRectF& page) const {
    QStringList inside;
    for (const QString& id : order_)
        if (page.contains(shape_of(look(id), style_).boundingRect())) inside.append(id);
    return inside;
}

QRectF PlanScene::bounds_of(const QStringList& ids) const {
    QRectF all;
    for (const QString& id : ids)
        if (looks_.contains(id)) all |= howlmap::app::bounds_of(look(id), style_);
    return all;
}

void PlanScene::set_view(double metres_per_pixel, const NameRoom& room) {
    if (metres_per_pixel == style_.px && room == name_room_) return;
    name_room_ = room;
    if (metres_per_pixel == style_.px) return queue_labels();
    style_.px = metres_per_pixel;
    for (ObjectItem* item : std::as_const(items_)) item->look_changed();
    ground_->look_changed();
    edge_->look_changed();
    lay_out_labels();
    Q_EMIT style_changed();
}

void PlanScene::set_ink(const Ink& ink) {
    style_.ink = ink;
    for (ObjectItem* item : std::as_const(items_)) item->update();
    for (LabelItem* label : std::as_const(labels_)) label->update();
    update();
    Q_EMIT style_changed();
}

void PlanScene::set_font(const QFont& font) {
    style_.font = font;
    name_sizes_.clear();
    for (LabelItem* label : std::as_const(labels_)) label->update();
    queue_labels();
}

void PlanScene::set_hovered(const QString& id) {
    if (id == hovered_) return;
    for (const QString& touched : {std::exchange(hovered_, id), id})
        if (ObjectItem* item = items_.value(touched)) item->look_changed();
}

void PlanScene::set_focused(bool focused) {
    if (focused_ == focused) return;
    focused_ = focused;
    for (const QString& id : selection_.ids())
        if (ObjectItem* item = items_.value(id)) item->update();
}

void PlanScene::queue_labels() {
    if (!label_timer_.isActive()) label_timer_.start();
}

void PlanScene::lay_out_labels() {
    if (stage_word_boxes(document_.show(), style_) != drawn_words_) follow_stage();
    std::vector<const ObjectLook*> looks;
    for (const QString& id : std::as_const(order_)) looks.push_back(&looks_[id]);
    if (looks.size() > kMostOnScreen) return lay_out_crowd(looks);
    const PageNames names = names_on_screen(document_.show(), looks, style_, name_room_, &name_sizes_);
    for (std::size_t i = 0; i < looks.size(); ++i) labels_[looks[i]->id]->set_name(names.places[i], names.texts[i]);
}

void PlanScene::lay_out_crowd(const std::vector<const ObjectLook*>& looks) {
    QHash<QString, int> last;
    for (const ObjectLook* look : looks) last[look->id] = labels_[look->id]->side();
    const std::vector<LabelPlace> places = placed_names(document_.show(), looks, style_, last, {true, &name_sizes_});
    for (std::size_t i = 0; i < places.size(); ++i)
        labels_[looks[i]->id]->set_name({places[i].rect, {}, false, true}, looks[i]->label, places[i].side);
}

}  // namespace howlmap::app
