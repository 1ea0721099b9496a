// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_accessible.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QHash>
#include <QPointer>
#include <cmath>

#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/export/length_text.h"

namespace howlmap::app {
namespace {

QString kind_words(ObjectKind kind) {
    switch (kind) {
        case ObjectKind::loudspeaker:
            return PlanView::tr("loudspeaker");
        case ObjectKind::input:
            return PlanView::tr("input");
        case ObjectKind::performer:
            return PlanView::tr("player");
        case ObjectKind::backline:
            return PlanView::tr("backline");
        case ObjectKind::listener:
            return PlanView::tr("place in the house");
        case ObjectKind::mark:
            return PlanView::tr("mark");
        case ObjectKind::riser:
            return PlanView::tr("riser");
        case ObjectKind::mix:
            break;
    }
    return {};
}

QString place_words(const ObjectLook& look, Units units) {
    const Vec2 at = to_plan(look.at);
    QString words = PlanView::tr("x %1, y %2").arg(length_text(at.x, units), length_text(at.y, units));
    if (look.turns && look.kind != ObjectKind::riser) words += PlanView::tr(", yaw %1°").arg(std::lround(look.yaw_deg));
    if (look.locked) words += PlanView::tr(", locked");
    return words;
}

/// One object of the plan.
class ObjectInterface : public QAccessibleInterface {
  public:
    ObjectInterface(PlanView* view, QString id) : view_(view), id_(std::move(id)) {}
    bool isValid() const override { return view_ && !look().id.isEmpty(); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override {
        return view_ ? QAccessible::queryAccessibleInterface(view_) : nullptr;
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::Graphic; }
    void setText(QAccessible::Text, const QString&) override {}

    QRect rect() const override {
        if (!isValid()) return {};
        const QRect there = view_->mapFromScene(view_->plan_scene().bounds_of({id_})).boundingRect();
        return {view_->viewport()->mapToGlobal(there.topLeft()), there.size()};
    }
    QString text(QAccessible::Text text) const override {
        if (!isValid()) return {};
        const Units units = view_->document().show().display.units;
        if (text == QAccessible::Name) return QStringLiteral("%1, %2").arg(look().label, kind_words(look().kind));
        if (text == QAccessible::Value || text == QAccessible::Description) return place_words(look(), units);
        return {};
    }
    QAccessible::State state() const override {
        QAccessible::State state;
        state.selectable = state.focusable = true;
        state.selected = view_ && view_->selection().contains(id_);
        state.focused = state.selected && view_->hasFocus();
        state.movable = !look().locked;
        return state;
    }

  private:
    const ObjectLook& look() const { return view_->plan_scene().look(id_); }
    QPointer<PlanView> view_;
    QString id_;
};

class PlanInterface : public QAccessibleWidget {
  public:
    explicit PlanInterface(PlanView* view) : QAccessibleWidget(view, QAccessible::Canvas), view_(view) {}
    ~PlanInterface() override {
        for (const QAccessible::Id id : std::as_const(known_)) QAccessible::deleteAccessibleInterface(id);
    }
    int childCount() const override { return static_cast<int>(view_->plan_scene().ids().size()); }
    QAccessibleInterface* child(int index) const override {
        const QStringList ids = view_->plan_scene().ids();
        if (index < 0 || index >= ids.size()) return nullptr;
        QAccessible::Id& id = known_[ids[index]];
        if (id == 0) id = QAccessible::registerAccessibleInterface(new ObjectInterface(view_, ids[index]));
        return QAccessible::accessibleInterface(id);
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        const QPoint pixel = view_->viewport()->mapFromGlobal(QPoint(x, y));
        const QString id = view_->plan_scene().id_at(to_page(view_->plan_point(pixel)));
        return child(static_cast<int>(view_->plan_scene().ids().indexOf(id)));
    }
    int indexOfChild(const QAccessibleInterface* child_interface) const override {
        for (int i = 0; i < childCount(); ++i)
            if (child(i) == child_interface) return i;
        return -1;
    }

  private:
    PlanView* view_;
    mutable QHash<QString, QAccessible::Id> known_;
};

QAccessibleInterface* make_interface(const QString&, QObject* object) {
    auto* view = qobject_cast<PlanView*>(object);
    return view ? new PlanInterface(view) : nullptr;
}

}  // namespace

void install_plan_accessibility() {
    static const bool once = [] {
        QAccessible::installFactory(make_interface);
        return true;
    }();
    (void)once;
}

}  // namespace howlmap::app
