// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QList>
#include <QScrollArea>
#include <QStringList>

#include "app/document/document.h"
#include "app/document/selection.h"
#include "app/panels/inspector/field.h"

class QLabel;
class QVBoxLayout;

namespace howlmap::app {

class FieldRow;
class MeasuredDirectivity;
class NumberTable;
class PolarPlot;

/// Every property of what is selected; with nothing selected those of the show. Several objects of a kind are edited at
/// once.
class InspectorPanel : public QScrollArea {
    Q_OBJECT
  public:
    InspectorPanel(Document& document, Selection& selection, QWidget* parent = nullptr);
    /// The row of a field by its English label's translation, null where it is not shown.
    FieldRow* row(const QString& label) const;
    const QStringList& shown_ids() const { return ids_; }

  public Q_SLOTS:
    void set_frequency(double hz);  ///< at which polar plots are drawn

  private:
    void put_away();
    int focused_row() const;
    void rebuild();
    void refresh();
    void add_groups(QVBoxLayout* layout, const Fields& fields);
    void add_tables(QVBoxLayout* layout);
    QString heading() const;

    Document& document_;
    Selection& selection_;
    QStringList ids_;
    Units units_ = Units::metric;
    double hz_ = 1000.0;
    QList<FieldRow*> rows_;
    QList<QLabel*> labels_, group_titles_;  ///< the latter one for each row, alike within a group
    QList<NumberTable*> tables_;
    QList<QLabel*> table_titles_;
    PolarPlot* polar_ = nullptr;
    MeasuredDirectivity* measured_ = nullptr;
    QWidget* tap_ = nullptr;  ///< of a pickup
};

}  // namespace howlmap::app
