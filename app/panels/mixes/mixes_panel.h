// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "app/document/document.h"
#include "app/document/selection.h"

class QDoubleSpinBox;
class QLabel;
class QTableView;

namespace howlmap::app {

class SendsModel;

/// The matrix of sends, and for the cell in hand two fields: level at 1 m and level at the ear, each setting the other.
class MixesPanel : public QWidget {
    Q_OBJECT
  public:
    MixesPanel(Document& document, Selection& selection, QWidget* parent = nullptr);
    QTableView& table() { return *table_; }
    SendsModel& model() { return *model_; }

  public Q_SLOTS:
    void add_mix();
    void remove_mix();  ///< the one of the current column
    void copy_cells();
    void paste_cells();

  Q_SIGNALS:
    void message(const QString& text);

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    void build();
    void build_header();
    QWidget* build_fields();
    void show_cell();
    void apply_level();
    void apply_ear();

    Document& document_;
    Selection& selection_;
    SendsModel* model_;
    QTableView* table_;
    QLabel *empty_, *cell_name_, *ear_name_;
    QDoubleSpinBox *level_, *ear_;
    bool showing_ = false;
};

}  // namespace howlmap::app
