// SPDX-License-Identifier: GPL-3.0-or-later
// Guided lessons as they come with the program: text by language, what the bench is set to, and a task.
#pragma once
#include <QByteArray>
#include <QString>
#include <map>
#include <tl/expected.hpp>
#include <vector>

#include "core/lesson/task.h"

namespace howlmap::app {

/// What a state sets, in the order in which knobs are listed.
using KnobValues = std::map<Knob, double>;

struct LessonStep {
    QString text;
    KnobValues state;
};

struct Lesson {
    QString id, title;
    KnobValues state;  ///< beside the plain bench
    std::vector<LessonStep> steps;
    QString task, hint;
    std::vector<Condition> conditions;
    KnobValues solution;  ///< one way to solve the task
};

/// Given: the file's text and a language code ("de"); English where that is missing. Error: one sentence that names the
/// place in the file, what was found and what was expected.
tl::expected<Lesson, QString> read_lesson(const QByteArray& json, const QString& language);

/// All lessons of the program, in order, in the language of the window. One that can not be read is left out and told
/// of in `errors`.
std::vector<Lesson> shipped_lessons(QStringList* errors = nullptr);

/// The plain bench with a state set on it.
Bench bench_with(const KnobValues& state, Bench bench = plain_bench());

}  // namespace howlmap::app
