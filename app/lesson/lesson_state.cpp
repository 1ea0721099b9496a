// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/lesson_state.h"

#include <algorithm>

#include "core/lesson/words.h"

namespace howlmap::app {

LessonState::LessonState(QObject* parent) : QObject(parent), lessons_(shipped_lessons()) { set_bench(plain_bench()); }

void LessonState::put(const Bench& bench) {
    bench_ = bench;
    figures_ = figures_of(bench_);
    drag_start_.reset();
    sentence_ = QString::fromStdString(where_it_stands(bench_, figures_));
}

void LessonState::set_bench(const Bench& bench) {
    put(bench);
    start_ = bench_, start_figures_ = figures_;
    lesson_ = -1, step_ = 0;
    Q_EMIT lesson_changed();
    Q_EMIT changed();
}

void LessonState::back_to_start() {
    put(start_);
    Q_EMIT changed();
}

void LessonState::turn(Knob knob, double value) {
    Bench next = bench_;
    howlmap::turn(next, knob, value);
    take(knob, next);
}

void LessonState::move_microphone(double distance_m, double height_m) {
    Bench next = bench_;
    howlmap::turn(next, Knob::height, height_m);
    howlmap::turn(next, Knob::distance, distance_m);
    take(Knob::distance, next);
}

void LessonState::take(Knob knob, const Bench& next) {
    if (next == bench_) return;
    const Bench before = std::exchange(bench_, next);
    const LessonFigures is =
        before.show == bench_.show ? figures_at_other_frequency(bench_, figures_) : figures_of(bench_);
    const LessonFigures was = std::exchange(figures_, is);
    const auto& from = drag_start_;
    sentence_ = QString::fromStdString(
        what_changed(knob, from ? from->first : before, from ? from->second : was, bench_, figures_));
    Q_EMIT changed();
}

const Lesson* LessonState::current() const {
    return lesson_ < 0 ? nullptr : &lessons_[static_cast<std::size_t>(lesson_)];
}

void LessonState::choose(int lesson) {
    if (lesson < 0 || lesson >= static_cast<int>(lessons_.size())) return set_bench(plain_bench());
    lesson_ = lesson;
    go_to(0);
}

void LessonState::go_to(int step) {
    if (!current()) return;
    const auto& steps = current()->steps;
    step_ = std::clamp(step, 0, static_cast<int>(steps.size()));
    Bench bench = bench_with(current()->state);
    for (int k = 0; k < std::min(step_ + 1, static_cast<int>(steps.size())); ++k)
        bench = bench_with(steps[static_cast<std::size_t>(k)].state, bench);
    put(bench);
    start_ = bench_, start_figures_ = figures_;
    Q_EMIT lesson_changed();
    Q_EMIT changed();
}

bool LessonState::at_task() const { return current() && step_ == static_cast<int>(current()->steps.size()); }

bool LessonState::solved() const {
    return at_task() && is_solved(current()->conditions, {start_, start_figures_, bench_, figures_});
}

void LessonState::show_solution() {
    if (!at_task()) return;
    put(bench_with(current()->solution, start_));
    Q_EMIT changed();
}

void LessonState::next_fit(bool up) {
    const auto& comb = figures_.comb;
    const double beside = 0.02;
    const auto above = std::ranges::find_if(comb, [&](const Fit& fit) { return fit.hz > bench_.hz + beside; });
    const auto below =
        std::find_if(comb.rbegin(), comb.rend(), [&](const Fit& f) { return f.hz < bench_.hz - beside; });
    if (up && above != comb.end()) turn(Knob::hz, above->hz);
    if (!up && below != comb.rend()) turn(Knob::hz, below->hz);
}

}  // namespace howlmap::app
