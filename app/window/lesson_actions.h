// SPDX-License-Identifier: GPL-3.0-or-later
// The lesson and the sound of the stage, and which pair of the open show is shown.
#pragma once
#include <QObject>
#include <functional>
#include <string>

#include "app/panels/workspace.h"

namespace howlmap::app {

class HearWindow;
class LessonWindow;

class LessonActions : public QObject {
    Q_OBJECT
  public:
    LessonActions(const Workspace& workspace, std::function<void(const QString&)> help, QWidget* owner);
    ~LessonActions() override;

    void open_lesson();
    /// The selected loudspeaker and input; with one of them selected the pair of it that is nearest to ringing; else
    /// the ring that is looked at, else the first ring.
    void show_selected();
    void show_pair(const std::string& input, const std::string& loudspeaker, const std::string& mix);
    void hear_stage();
    LessonWindow* lesson() { return lesson_; }
    HearWindow* hear() { return hear_; }

  private:
    LessonWindow& need_lesson();
    bool show_selected_objects();

    const Workspace& work_;
    std::function<void(const QString&)> help_;
    QWidget* owner_;
    LessonWindow* lesson_ = nullptr;
    HearWindow* hear_ = nullptr;
};

}  // namespace howlmap::app
