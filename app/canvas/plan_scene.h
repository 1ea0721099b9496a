// SPDX-License-Identifier: GPL-3.0-or-later
// The items of the plan, kept in step with the show. Items hold ids and ask here for what to draw.
#pragma once
#include <QGraphicsScene>
#include <QHash>
#include <QSet>
#include <QTimer>
#include <set>
#include <string>

#include "app/document/document.h"
#include "app/document/selection.h"
#include "app/export/labels.h"
#include "app/export/object_look.h"
#include "app/export/plan_style.h"

namespace howlmap::app {

class ObjectItem;
class LabelItem;
class GroundItem;

/// Stacking of the layers, lowest first. Objects of one layer keep the order of the plan.
namespace layer {
inline constexpr double kGround = -1000, kOverlay = -900, kEdge = -850, kRisers = -800, kLoops = -400, kLobes = -300,
                        kObjects = 0, kGhosts = 400, kLabels = 500, kHandles = 600, kGuides = 700;
}

class PlanScene : public QGraphicsScene {
    Q_OBJECT
  public:
    PlanScene(Document& document, Selection& selection, QObject* parent = nullptr);
    ~PlanScene() override;

    Document& document() const { return document_; }
    const Selection& selection() const { return selection_; }
    const QHash<QString, LabelItem*>& names() const { return labels_; }
    const PlanStyle& style() const { return style_; }
    /// How an object looks now; an unknown id gives an empty look.
    const ObjectLook& look(const QString& id) const;
    QStringList ids() const;  ///< lowest first

    /// The uppermost object at a place on the page, within a few pixels; empty when there is none. Risers and locked
    /// things last.
    QString id_at(QPointF page) const;
    /// All objects there, the uppermost first.
    QStringList ids_at(QPointF page) const;
    /// Objects that lie within a rectangle.
    QStringList ids_within(const QRectF& page) const;
    /// Box of the drawn objects.
    QRectF bounds_of(const QStringList& ids) const;

    void set_view(double metres_per_pixel, const NameRoom& room);
    void set_ink(const Ink& ink);
    void set_font(const QFont& font);
    void set_hovered(const QString& id);
    const QString& hovered() const { return hovered_; }
    /// Whether a ring is drawn around an object: selected, or under the pointer.
    bool ringed(const QString& id) const { return id == hovered_ || selection_.contains(id); }
    void set_focused(bool focused);
    bool focused() const { return focused_; }

  Q_SIGNALS:
    void style_changed();    ///< scale, ink or font
    void objects_changed();  ///< something on the plan moved, came or went

  private:
    void rebuild();
    void follow(const std::set<std::string>& touched);
    void refresh_items();
    void follow_selection();
    void queue_labels();
    void lay_out_labels();
    void lay_out_crowd(const std::vector<const ObjectLook*>& looks);
    void follow_stage();
    void fit_scene_rect();

    Document& document_;
    Selection& selection_;
    PlanStyle style_;
    NameRoom name_room_;
    QHash<QString, ObjectLook> looks_;
    QStringList order_;
    QHash<QString, ObjectItem*> items_;
    QHash<QString, LabelItem*> labels_;
    GroundItem* ground_ = nullptr;
    GroundItem* edge_ = nullptr;
    Outline drawn_outline_;
    Surfaces drawn_surfaces_;
    std::vector<QRectF> drawn_words_;    ///< the words around the stage make way for objects
    QHash<QString, QSizeF> name_sizes_;  ///< measured once: a thousand names take longer to measure than to place
    QTimer label_timer_;
    QSet<QString> drawn_selected_;  ///< ringed in the last picture
    QString hovered_;
    bool focused_ = false;
};

}  // namespace howlmap::app
