// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/inspector_panel.h"

#include <QApplication>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QSet>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/inspector/field_row.h"
#include "app/panels/inspector/measured_directivity.h"
#include "app/panels/inspector/number_table.h"
#include "app/panels/inspector/polar_plot.h"
#include "app/panels/inspector/tables.h"
#include "app/panels/soundcheck/tap_page.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

/// Which list of the show holds an object.
std::optional<ObjectKind> kind_of(const Show& show, const std::string& id) {
    if (find_by_id(show.loudspeakers, id)) return ObjectKind::loudspeaker;
    if (find_by_id(show.inputs, id)) return ObjectKind::input;
    if (find_by_id(show.performers, id)) return ObjectKind::performer;
    if (find_by_id(show.mixes, id)) return ObjectKind::mix;
    if (find_by_id(show.backline, id)) return ObjectKind::backline;
    if (find_by_id(show.listeners, id)) return ObjectKind::listener;
    if (find_by_id(show.marks, id)) return ObjectKind::mark;
    if (find_by_id(show.stage.risers, id)) return ObjectKind::riser;
    return std::nullopt;
}

Fields fields_for(const Show& show, const QStringList& ids) {
    if (ids.isEmpty()) return show_fields();
    const auto first = kind_of(show, ids.first().toStdString());
    const bool same = std::all_of(ids.begin(), ids.end(),
                                  [&](const QString& id) { return kind_of(show, id.toStdString()) == first; });
    if (!same || !first) return common_fields();
    switch (*first) {
        case ObjectKind::loudspeaker:
            return loudspeaker_fields();
        case ObjectKind::input:
            return input_fields();
        case ObjectKind::performer:
            return performer_fields();
        case ObjectKind::mix:
            return mix_fields();
        case ObjectKind::backline:
            return backline_fields();
        case ObjectKind::listener:
            return listener_fields();
        case ObjectKind::mark:
            return mark_fields();
        case ObjectKind::riser:
            return riser_fields();
    }
    return {};
}

QLabel* title_label(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    QFont font = label->font();
    font.setBold(true);
    label->setFont(font);
    label->setWordWrap(true);
    return label;
}

}  // namespace

InspectorPanel::InspectorPanel(Document& document, Selection& selection, QWidget* parent)
    : QScrollArea(parent), document_(document), selection_(selection) {
    setObjectName(QStringLiteral("inspector_panel"));
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(&selection_, &Selection::changed, this, &InspectorPanel::rebuild);
    connect(&document_, &Document::replaced, this, &InspectorPanel::rebuild);
    connect(&document_, &Document::changed, this, &InspectorPanel::refresh);
    rebuild();
}

/// What was shown may be in the middle of telling about a change, such as a choice of other units: it falls silent now
/// and goes when that has been told, or with the panel: it must not outlive the show.
void InspectorPanel::put_away() {
    QWidget* old = takeWidget();
    if (!old) return;
    for (QObject* part : old->findChildren<QObject*>()) part->blockSignals(true);
    connect(this, &QObject::destroyed, old, [old] { delete old; });
    old->deleteLater();
}

/// The row that has the focus, -1 for none.
int InspectorPanel::focused_row() const {
    for (int i = 0; i < rows_.size(); ++i)
        if (rows_[i]->isAncestorOf(QApplication::focusWidget())) return i;
    return -1;
}

void InspectorPanel::rebuild() {
    const int focus = ids_ == selection_.ids() ? focused_row() : -1;
    put_away();
    ids_ = selection_.ids();
    units_ = document_.show().display.units;
    rows_.clear();
    labels_.clear();
    group_titles_.clear();
    tables_.clear();
    table_titles_.clear();
    polar_ = nullptr;
    measured_ = nullptr;
    tap_ = nullptr;
    auto* content = new QWidget(this);
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(8, 8, 8, 8);
    layout->addWidget(title_label(heading(), content));
    const Fields fields = fields_for(document_.show(), ids_);
    add_groups(layout, fields);
    if (ids_.size() <= 1) add_tables(layout);
    layout->addStretch(1);
    setWidget(content);
    refresh();
    if (focus >= 0 && focus < rows_.size()) rows_[focus]->editor()->setFocus();
    // There is no scroll bar for the width, so nothing may be wider than the panel.
    setMinimumWidth(content->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width());
}

void InspectorPanel::add_groups(QVBoxLayout* layout, const Fields& fields) {
    QFormLayout* form = nullptr;
    QLabel* title = nullptr;
    QString group;
    for (const Field& field : fields) {
        if (!form || field.group != group) {
            group = field.group;
            title = title_label(group, layout->parentWidget());
            layout->addWidget(title);
            form = new QFormLayout;
            form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
            form->setRowWrapPolicy(QFormLayout::WrapLongRows);
            layout->addLayout(form);
        }
        auto* row =
            new FieldRow(field, document_, ids_.isEmpty() ? QStringList{QString()} : ids_, layout->parentWidget());
        auto* label = new QLabel(field.label, layout->parentWidget());
        label->setBuddy(row);
        label->setToolTip(field.tip);
        form->addRow(label, row);
        rows_.append(row);
        group_titles_.append(title);
        labels_.append(label);
    }
}

void InspectorPanel::add_tables(QVBoxLayout* layout) {
    const QString id = ids_.value(0);
    QWidget* content = layout->parentWidget();
    if (!id.isEmpty()) {
        polar_ = new PolarPlot(content);
        layout->addWidget(polar_);
        measured_ = new MeasuredDirectivity(document_, id, content);
        layout->addWidget(measured_);
    }
    // Those that do not apply now may later: a wall that is put up, a microphone that becomes a pickup.
    for (const NumberTableSource& source : tables_of(document_.show(), id)) {
        table_titles_.append(title_label(source.title, content));
        tables_.append(new NumberTable(source, document_, content));
        layout->addWidget(table_titles_.last());
        layout->addWidget(tables_.last());
    }
    if (!find_by_id(document_.show().inputs, id.toStdString())) return;
    auto* tap = new QPushButton(tr("From a tap recording…"), content);
    tap->setObjectName(QStringLiteral("modes_from_taps"));
    tap->setToolTip(tr("Finds the body modes in a recording of taps and puts them on this pickup."));
    connect(tap, &QPushButton::clicked, this, [this, id] { open_tap_dialog(document_, id, window()); });
    layout->addWidget(tap);
    tap_ = tap;
}

QString InspectorPanel::heading() const {
    if (ids_.isEmpty()) return tr("Nothing selected: the show and its stage");
    if (ids_.size() > 1) return tr("%1 objects").arg(ids_.size());
    return tr("Selected");
}

void InspectorPanel::refresh() {
    // Objects may have gone, and a change of units changes every editor.
    const Show& show = document_.show();
    const bool gone =
        std::any_of(ids_.begin(), ids_.end(), [&](const QString& id) { return !kind_of(show, id.toStdString()); });
    if (units_ != show.display.units || (gone && selection_.ids() != ids_)) return rebuild();
    QSet<const QLabel*> wanted;  // no title of a group in which no field applies
    for (int i = 0; i < rows_.size(); ++i) {
        rows_[i]->refresh();
        rows_[i]->setVisible(rows_[i]->applies());
        labels_[i]->setVisible(rows_[i]->applies());
        if (rows_[i]->applies()) wanted.insert(group_titles_[i]);
    }
    for (QLabel* title : group_titles_) title->setVisible(wanted.contains(title));
    for (int i = 0; i < tables_.size(); ++i) {
        tables_[i]->refresh();
        tables_[i]->setVisible(tables_[i]->model().applies());
        table_titles_[i]->setVisible(tables_[i]->model().applies());
    }
    if (measured_) measured_->refresh();
    const Input* input = find_by_id(show.inputs, ids_.value(0).toStdString());
    if (tap_) tap_->setVisible(input && pickup_of(*input));
    if (polar_) polar_->show_curve(polar_of(show, ids_.value(0).toStdString(), hz_), hz_);
}

void InspectorPanel::set_frequency(double hz) {
    hz_ = hz;
    if (polar_) polar_->show_curve(polar_of(document_.show(), ids_.value(0).toStdString(), hz_), hz_);
}

FieldRow* InspectorPanel::row(const QString& label) const {
    for (FieldRow* row : rows_)
        if (row->field().label == label && row->applies()) return row;
    return nullptr;
}

}  // namespace howlmap::app
