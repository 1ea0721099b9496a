// SPDX-License-Identifier: GPL-3.0-or-later
// What the lesson window shows: a bench, its figures, the last sentence, and how far a guided lesson has come.
#pragma once
#include <QObject>

#include "app/lesson/lesson_file.h"
#include "core/lesson/figures.h"

namespace howlmap::app {

class LessonState : public QObject {
    Q_OBJECT
  public:
    explicit LessonState(QObject* parent = nullptr);

    const Bench& bench() const { return bench_; }
    const LessonFigures& figures() const { return figures_; }
    double value(Knob knob) const { return value_of(bench_, knob); }
    /// What the last turn of a knob did, or where things stand.
    QString sentence() const { return sentence_; }
    void turn(Knob knob, double value);
    void move_microphone(double distance_m, double height_m);
    /// The same from where a drag began: one sentence about the whole of it.
    void begin_drag() { drag_start_ = {bench_, figures_}; }
    void end_drag() { drag_start_.reset(); }
    /// Any other bench, for instance a pair of the open show; leaves the guided lesson.
    void set_bench(const Bench& bench);
    /// The bench as it was set up: by the lesson, or by the show.
    const Bench& start() const { return start_; }
    void back_to_start();

    const std::vector<Lesson>& lessons() const { return lessons_; }
    /// -1: free play.
    int lesson() const { return lesson_; }
    int step() const { return step_; }
    void choose(int lesson);
    void go_to(int step);  ///< held within the lesson; its last place is the task
    bool at_task() const;
    bool solved() const;
    void show_solution();
    /// The next frequency that fits, upwards or downwards.
    void next_fit(bool up);

  Q_SIGNALS:
    void changed();         ///< bench, figures, sentence
    void lesson_changed();  ///< lesson or step

  private:
    void put(const Bench& bench);
    void take(Knob knob, const Bench& next);
    const Lesson* current() const;

    std::vector<Lesson> lessons_;
    int lesson_ = -1, step_ = 0;
    Bench bench_, start_;
    LessonFigures figures_, start_figures_;
    std::optional<std::pair<Bench, LessonFigures>> drag_start_;
    QString sentence_;
};

}  // namespace howlmap::app
