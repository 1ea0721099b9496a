// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/drag_reading.h"

#include <QLabel>
#include <algorithm>

#include "app/canvas/plan_view.h"
#include "app/export/reading_text.h"
#include "app/settings/figures.h"

namespace howlmap::app {
namespace {
constexpr QPoint kBesidePointer{18, 20};

bool has(const Ids& ids, const std::string& id) { return std::find(ids.begin(), ids.end(), id) != ids.end(); }
}  // namespace

DragReading::DragReading(PlanView& view) : QWidget(&view), view_(view), label_(new QLabel(this)) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    label_->setMargin(5);
    label_->setFrameShape(QFrame::Box);
    label_->setAutoFillBackground(true);
    label_->setBackgroundRole(QPalette::ToolTipBase);
    label_->setForegroundRole(QPalette::ToolTipText);
    hide();
    const auto refresh = [this] {
        if (active_) update_at(at_);
    };
    connect(&view.analysis(), &AnalysisService::updated, this, refresh);
    connect(&view.analysis(), &AnalysisService::margin_moved, this, refresh);
}

void DragReading::begin(const Ids& dragged) {
    active_ = true;
    margin_at_start_ = view_.analysis().margin_db();
    choose_pair(dragged);
}

/// The worst pair of which one side moves and the other stays.
void DragReading::choose_pair(const Ids& dragged) {
    loudspeaker_.clear();
    input_.clear();
    const auto result = view_.analysis().result();
    if (!result) return;
    for (const PairFigure& pair : result->pairs) {
        if (has(dragged, pair.loudspeaker) == has(dragged, pair.input)) continue;
        loudspeaker_ = pair.loudspeaker;
        input_ = pair.input;
        return;
    }
}

QString DragReading::words() const {
    QStringList lines;
    const QString pair = pair_text(view_.document().show(), loudspeaker_, input_);
    if (!pair.isEmpty()) lines.append(pair);
    if (const auto now = view_.analysis().margin_db()) {
        QString margin = tr("Margin as drawn %1").arg(margin_text(now));
        if (margin_at_start_) margin += tr(" (%1 since the start)").arg(gain_text(*now - *margin_at_start_));
        lines.append(margin);
    }
    return lines.join(u'\n');
}

QString DragReading::text() const { return label_->text(); }

void DragReading::update_at(QPoint viewport_pixel) {
    at_ = viewport_pixel;
    const QString text = words();
    if (text.isEmpty()) return hide();
    label_->setText(text);
    label_->adjustSize();
    resize(label_->size());
    const QRect room = view_.viewport()->geometry();
    QPoint place = room.topLeft() + viewport_pixel + kBesidePointer;
    if (place.y() + height() > room.bottom()) place.ry() -= height() + 2 * kBesidePointer.y();
    place.rx() = std::max(room.left(), std::min(place.x(), room.right() - width()));
    move(place);
    show();
    raise();
}

void DragReading::end() {
    active_ = false;
    hide();
}

}  // namespace howlmap::app
