// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet for the venue's engineer: what goes in at the left, the pages at the right as they will be printed.
#pragma once
#include <QDialog>
#include <functional>
#include <memory>

#include "app/document/trouble.h"
#include "app/document/worker.h"
#include "app/export/sheet/advance_sheet.h"
#include "app/export/sheet/sheet_plan.h"
#include "core/report/table.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QPrintPreviewWidget;
class QPrinter;
class QPushButton;

namespace howlmap::app {

class AnalysisService;
class Document;

/// Where file names come from: the dialogs of the desktop, or a test.
struct SheetQuestions {
    std::function<QString(QWidget* parent, const QString& suggestion)> pdf;
    std::function<QString(QWidget*parent)> folder, older_show;
    static SheetQuestions by_dialog();
};

class SheetDialog : public QDialog {
    Q_OBJECT
  public:
    SheetDialog(Document& document, AnalysisService& analysis, QWidget* parent = nullptr);
    ~SheetDialog() override;

    SheetQuestions questions = SheetQuestions::by_dialog();
    SheetOptions options() const;
    QPrintPreviewWidget& preview() { return *preview_; }
    /// Whether the figures of the show as it is now are all there; until then nothing can be written.
    bool ready() const;
    /// The whole sheet; the file says no more than the preview shows.
    QByteArray pdf() const;

    // Each says in the line below what came of it.
    void save_pdf();
    void save_lists();
    void print();
    void compare_with(const QString& file);
    void forget_older();
    void copy_table(const report::Table& table);

  private:
    QWidget* build_options();
    QWidget* build_pages();
    QWidget* build_buttons();
    QCheckBox* check(QWidget* column, const char* name, const QString& text, bool on);
    QPushButton* button(QWidget* row, const char* name, const QString& text, const QString& tip,
                        const std::function<void()>& what);
    void fill_map_choice();
    void fill_copy_menu();
    void take_figures();
    void show_state();
    void make_map();
    void refresh();
    void told(const Outcome& outcome, const QString& done);
    PlanBlock plan() const;

    Document& document_;
    AnalysisService& analysis_;
    SheetContent content_;
    std::shared_ptr<const Show> older_;
    QString older_name_;
    std::shared_ptr<const MapPicture> map_;
    std::unique_ptr<QPrinter> printer_;
    QPrintPreviewWidget* preview_ = nullptr;
    QCheckBox *plan_ = nullptr, *inputs_ = nullptr, *mixes_ = nullptr, *risks_ = nullptr, *loops_ = nullptr,
              *one_mix_ = nullptr;
    QComboBox *map_choice_ = nullptr, *paper_ = nullptr;
    QLabel *older_label_ = nullptr, *message_ = nullptr;
    QList<QPushButton*> writers_;  ///< off until the figures are there
    Worker worker_;
};

}  // namespace howlmap::app
