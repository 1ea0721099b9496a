// SPDX-License-Identifier: GPL-3.0-or-later
// The lesson: one loop, to see and to hear, large enough for a class.
#pragma once
#include <QWidget>
#include <functional>
#include <optional>

#include "core/lesson/bench.h"

class QLabel;
class QPushButton;

namespace howlmap::app {

class Document;
class LessonState;
class SideView;
class SoundBar;
class WaveClock;

class LessonWindow : public QWidget {
    Q_OBJECT
  public:
    /// help: opens a page of the help.
    LessonWindow(Document& document, std::function<void(const QString&)> help, QWidget* parent);

    /// One loudspeaker and one microphone of the open show on the bench; says why not where there is no loop between
    /// them.
    bool show_pair(const std::string& input, const std::string& loudspeaker, const std::string& mix = {});
    LessonState& state() { return *state_; }
    WaveClock& clock() { return *clock_; }

  Q_SIGNALS:
    void said(const QString& sentence);  ///< for the status bar of the show

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void build();
    QWidget* build_foot();
    void add_keys();
    void refresh();
    void put_back();

    Document& document_;
    std::function<void(const QString&)> help_;
    LessonState* state_;
    WaveClock* clock_;
    SideView* side_ = nullptr;
    QLabel *sentence_ = nullptr, *margin_ = nullptr, *ring_ = nullptr, *cost_ = nullptr;
    QPushButton *pause_ = nullptr, *back_ = nullptr, *full_ = nullptr;
    SoundBar* sound_ = nullptr;
    std::optional<Bench> sent_;  ///< what came from the show, as it was then
    bool wants_motion_ = true;
};

}  // namespace howlmap::app
