// SPDX-License-Identifier: GPL-3.0-or-later
// Cut, copy, paste, duplicate, and placing presets by drag or by name.
#include <QClipboard>
#include <QDropEvent>
#include <QGuiApplication>
#include <QMimeData>
#include <algorithm>
#include <cmath>

#include "app/canvas/plan_clipboard.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/canvas/preset_part.h"
#include "app/canvas/step_names.h"
#include "core/geometry/polygon.h"
#include "core/show/first_guess.h"

namespace howlmap::app {
namespace {
constexpr Vec2 kBeside{0.25, -0.25};  ///< where a copy lands, so that one sees it

QStringList to_list(const Ids& ids) {
    QStringList list;
    for (const std::string& id : ids) list.append(QString::fromStdString(id));
    return list;
}

double to_centimetre(double v) { return std::round(v * 100.0) / 100.0 + 0.0; }

/// The place nearest to a wanted one, on the stage if that is, where nothing stands: what is put there is seen.
Vec2 free_place(const Show& show, Vec2 wanted) {
    constexpr double kApartM = 0.7;
    constexpr int kRings = 8;
    const std::vector<Placed> objects = placed_objects(show);
    const bool on_stage = covers(show.stage.outline, wanted);
    const auto free = [&](Vec2 at) {
        return covers(show.stage.outline, at) == on_stage && std::ranges::all_of(objects, [&](const Placed& object) {
                   return object.kind == ObjectKind::riser || length(object.position - at) >= kApartM;
               });
    };
    if (free(wanted)) return wanted;
    for (int ring = 1; ring <= kRings; ++ring)
        for (int part = 0; part < 8 * ring; ++part) {
            const double angle = 2.0 * kPi * part / (8.0 * ring);
            const Vec2 at = wanted + Vec2{std::cos(angle), std::sin(angle)} * (kApartM * ring);
            if (free(at)) return at;
        }
    return wanted;
}
}  // namespace

void PlanView::copy() {
    const Ids ids = selected_ids();
    if (ids.empty()) return;
    QGuiApplication::clipboard()->setMimeData(mime_of(extract(document_.show(), ids)).release());
    pastes_ = 0;
}

void PlanView::cut() {
    copy();
    remove_selected();
}

void PlanView::paste() {
    const auto part = part_in(*QGuiApplication::clipboard()->mimeData());
    if (!part) {
        Q_EMIT message(tr("There is nothing on the clipboard that could stand on a stage."));
        return;
    }
    ++pastes_;
    add_part(*part, tr("Paste"), std::nullopt);
}

void PlanView::duplicate_selected() {
    const Ids ids = selected_ids();
    if (ids.empty()) return;
    Ids added;
    Show after = document_.show();
    duplicate(after, ids, kBeside);
    if (!within_limits(after)) {
        Q_EMIT message(tr("A show cannot hold that many objects."));
        return;
    }
    document_.edit(step_name(tr("Duplicate"), document_.show(), ids),
                   [&](Show& show) { added = duplicate(show, ids, kBeside); });
    selection_.set(to_list(added));
}

/// Adds a part as one step: beside where it came from, or with its middle at a point and set up for who is nearest.
void PlanView::add_part(Show part, const QString& step, std::optional<Vec2> middle) {
    const std::vector<Placed> objects = placed_objects(part);
    if (objects.empty()) return;
    Vec2 by = kBeside * std::max(1, pastes_);
    if (middle) {
        const Vec2 at = objects.front().position;
        by = {to_centimetre(middle->x - at.x), to_centimetre(middle->y - at.y)};
    }
    Show after = document_.show();
    const Ids added = insert(after, part, by);
    if (middle) guess_for_placed(after, added);
    if (!within_limits(after)) {
        Q_EMIT message(tr("A show cannot hold that many objects."));
        return;
    }
    Ids names;
    for (const Placed& object : objects) names.push_back(object.id);
    document_.edit(step_name(step, part, names), [&](Show& show) { show = std::move(after); });
    selection_.set(to_list(added));
}

bool PlanView::place(const QByteArray& preset_json, std::optional<Vec2> at) {
    const auto part = part_of_preset(preset_json, document_.show());
    if (!part) {
        Q_EMIT message(part.error());
        return false;
    }
    const Vec2 middle = plan_point(viewport()->rect().center());
    add_part(*part, tr("Place"), at.value_or(free_place(document_.show(), middle)));
    setFocus();
    return true;
}

void PlanView::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasFormat(preset_mime_type()))
        event->acceptProposedAction();
    else
        event->ignore();  // files are the window's to open
}

void PlanView::dragMoveEvent(QDragMoveEvent* event) {
    event->setAccepted(event->mimeData()->hasFormat(preset_mime_type()));
}

void PlanView::dropEvent(QDropEvent* event) {
    if (!event->mimeData()->hasFormat(preset_mime_type())) return event->ignore();
    const QByteArray preset = event->mimeData()->data(preset_mime_type());
    if (place(preset, plan_point(event->position().toPoint()))) event->acceptProposedAction();
}

}  // namespace howlmap::app
