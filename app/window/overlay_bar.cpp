// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/overlay_bar.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>

#include "app/canvas/plan_view.h"
#include "app/settings/figures.h"
#include "core/report/words.h"

namespace howlmap::app {
namespace {

template <class List>
void add_names(QComboBox& box, const List& items) {
    for (const auto& item : items) box.addItem(qstr(report::name_of(item)), qstr(item.id));
}

}  // namespace

OverlayBar::OverlayBar(PlanView& plan, QWidget* parent)
    : QWidget(parent), plan_(plan), kind_(new QComboBox), subject_(new QComboBox) {
    kind_->addItems(
        {tr("no map"), tr("feedback map of"), tr("loudspeaker map of"), tr("level map of"), tr("wash map")});
    kind_->setAccessibleName(tr("Map under the plan"));
    kind_->setToolTip(
        tr("Feedback: how much gain an input has left wherever its microphone stands. Loudspeaker: the same for a "
           "loudspeaker. "
           "Level: what a mix makes at ear height. Wash: what the stage spills into the house."));
    subject_->setAccessibleName(tr("Of what the map is"));
    subject_->setToolTip(
        tr("The input, loudspeaker or mix that the map is about. Selecting one on the plan chooses it here."));
    subject_->setMinimumContentsLength(12);
    auto* label = new QLabel(tr("&Map"));
    label->setBuddy(kind_);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(4, 0, 4, 0);
    for (QWidget* widget : std::initializer_list<QWidget*>{label, kind_, subject_}) row->addWidget(widget);
    connect(kind_, &QComboBox::activated, this, [this] {
        fill_subjects();
        follow_selection();
        choose();
    });
    connect(subject_, &QComboBox::activated, this, &OverlayBar::choose);
    connect(&plan_.document(), &Document::replaced, this, [this] {
        kind_->setCurrentIndex(0);
        fill_subjects();
        choose();
    });
    connect(&plan_.document(), &Document::changed, this, [this](const auto& touched) {
        if (!touched.empty() && !plan_.document().in_gesture()) fill_subjects();
    });
    connect(&plan_.selection(), &Selection::changed, this, [this] {
        follow_selection();
        choose();
    });
    fill_subjects();
}

void OverlayBar::fill_subjects() {
    const QString before = subject_->currentData().toString();
    const Show& show = plan_.document().show();
    subject_->clear();
    switch (static_cast<OverlayKind>(kind_->currentIndex())) {
        case OverlayKind::feedback:
            add_names(*subject_, show.inputs);
            break;
        case OverlayKind::loudspeaker:
            add_names(*subject_, show.loudspeakers);
            break;
        case OverlayKind::level:
            add_names(*subject_, show.mixes);
            break;
        default:
            break;
    }
    subject_->setCurrentIndex(std::max(0, subject_->findData(before)));
    subject_->setVisible(subject_->count() > 0);
}

void OverlayBar::follow_selection() {
    for (const QString& id : plan_.selection().ids())
        if (const int index = subject_->findData(id); index >= 0) return subject_->setCurrentIndex(index);
}

void OverlayBar::choose() {
    OverlayChoice choice = plan_.overlay();
    choice.kind = static_cast<OverlayKind>(kind_->currentIndex());
    choice.subject = subject_->currentData().toString();
    if (choice.kind != plan_.overlay().kind) {
        choice.band.reset();
        choice.hz.reset();
    }
    if (!(choice == plan_.overlay())) plan_.set_overlay(choice);
}

}  // namespace howlmap::app
