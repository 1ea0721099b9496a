// SPDX-License-Identifier: GPL-3.0-or-later
// The window: holds the open show and its views, and connects them. What it does is in the pieces it is built from.
#pragma once
#include <QMainWindow>
#include <memory>

#include "app/document/analysis_service.h"
#include "app/document/autosave.h"
#include "app/document/document.h"
#include "app/document/file_session.h"
#include "app/document/response_service.h"
#include "app/document/selection.h"
#include "app/document/spotlight.h"
#include "app/panels/workspace.h"
#include "app/settings/memory.h"

class QLabel;
class QMenu;

namespace howlmap::app {

class ActionTable;
class CautionStrip;
class DockLayout;
class FileActions;
class HelpViewer;
class LessonActions;
class PlanView;
class RecentFiles;
class TourStrip;

class MainWindow : public QMainWindow {
    Q_OBJECT
  public:
    MainWindow();
    ~MainWindow() override;

    /// What to show first: what a bad end left behind, the shows asked for, the last one, or at the very first start an
    /// example.
    void start(const QStringList& shows);

    Document& document() { return document_; }
    Selection& selection() { return selection_; }
    AnalysisService& analysis() { return analysis_; }
    Spotlight& spotlight() { return spotlight_; }
    ResponseService& response() { return response_; }
    FileActions& files() { return *files_; }
    Autosave& autosave() { return autosave_; }
    MemoryKeeper& memory() { return memory_; }
    DockLayout& docks() { return *docks_; }
    ActionTable& actions_table() { return *actions_; }
    PlanView& plan() { return *plan_; }
    /// One sentence in the status bar; it stays until the next one.
    void say(const QString& sentence);

  protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void build_centre();
    void build_status_bar();
    void connect_file_actions();
    void connect_edit_actions();
    void connect_view_actions();
    void connect_help_actions();
    void connect_views();
    void refresh_title();
    void open_help(const QString& page = {});
    void tour_step(int step);
    bool offer_recovery();

    Document document_;
    Selection selection_;
    AnalysisService analysis_;
    Spotlight spotlight_;
    ResponseService response_;
    FileSession session_;
    Autosave autosave_;
    MemoryKeeper memory_;
    ActionTable* actions_;
    RecentFiles* recent_;
    FileActions* files_;
    PlanView* plan_ = nullptr;
    CautionStrip* cautions_ = nullptr;
    TourStrip* tour_ = nullptr;
    QLabel* message_ = nullptr;
    HelpViewer* help_ = nullptr;
    LessonActions* lesson_ = nullptr;
    std::unique_ptr<Workspace> workspace_;
    DockLayout* docks_ = nullptr;
};

}  // namespace howlmap::app
