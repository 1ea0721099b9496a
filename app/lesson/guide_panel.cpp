// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/guide_panel.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/lesson/lesson_state.h"
#include "app/settings/icons.h"

namespace howlmap::app {
namespace {

QLabel* paragraph(const char* name) {
    auto* label = new QLabel;
    label->setObjectName(QString::fromLatin1(name));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setAlignment(Qt::AlignTop);
    label->setProperty("reading", true);
    return label;
}

QPushButton* button(const char* name, const QString& text, const QString& tip) {
    auto* out = new QPushButton(text);
    out->setObjectName(QString::fromLatin1(name));
    out->setToolTip(tip);
    return out;
}

}  // namespace

GuidePanel::GuidePanel(LessonState& state, QWidget* parent)
    : QWidget(parent),
      state_(state),
      lesson_(new QComboBox),
      where_(paragraph("where")),
      text_(paragraph("lesson_text")),
      verdict_(paragraph("verdict")),
      hint_(paragraph("hint_text")),
      back_(button("back", tr("Back"), tr("The step before (Page up)."))),
      next_(button("next", tr("&Next"), tr("The next step (Page down)."))),
      help_(button("hint", tr("Hint"), tr("Shows a hint for this task."))),
      solution_(button("solution", tr("Show one way"), tr("Sets the bench so that the task is solved."))),
      again_(button("again", tr("As at first"), tr("Sets the bench back to how it was."))) {
    lesson_->setObjectName(QStringLiteral("lesson"));
    lesson_->setAccessibleName(tr("Lesson"));
    lesson_->addItem(tr("Free play"));
    lesson_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    int number = 0;
    for (const Lesson& lesson : state_.lessons()) lesson_->addItem(tr("%1. %2").arg(++number).arg(lesson.title));
    auto* buttons = new QGridLayout;
    buttons->addWidget(back_, 0, 0);
    buttons->addWidget(next_, 0, 1);
    buttons->addWidget(help_, 1, 0);
    buttons->addWidget(solution_, 1, 1);
    buttons->addWidget(again_, 2, 0, 1, 2);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 10, 12, 8);
    column->setSpacing(8);
    for (QWidget* widget : std::initializer_list<QWidget*>{lesson_, where_, text_, verdict_, hint_})
        column->addWidget(widget);
    column->addStretch(1);
    column->addLayout(buttons);
    connect(lesson_, &QComboBox::activated, this, [this](int index) { state_.choose(index - 1); });
    connect(back_, &QPushButton::clicked, this, [this] { state_.go_to(state_.step() - 1); });
    connect(next_, &QPushButton::clicked, this, [this] {
        state_.lesson() < 0 ? state_.choose(0)
        : state_.at_task()  ? state_.choose(state_.lesson() + 1)
                            : state_.go_to(state_.step() + 1);
    });
    connect(help_, &QPushButton::clicked, this, [this] { hinted_ = state_.lesson(), refresh(); });
    connect(solution_, &QPushButton::clicked, &state_, &LessonState::show_solution);
    connect(again_, &QPushButton::clicked, &state_, &LessonState::back_to_start);
    connect(&state_, &LessonState::changed, this, &GuidePanel::refresh);
    connect(&state_, &LessonState::lesson_changed, this, [this] { hinted_ = -1, refresh(); });
    refresh();
}

void GuidePanel::show_free_play() {
    where_->hide();
    text_->setText(tr(
        "Drag the microphone and the loudspeaker, turn the knobs, and watch which frequencies fit. Below the picture "
        "stands what just changed."));
    verdict_->clear();
    next_->setText(tr("&First lesson"));
}

void GuidePanel::refresh() {
    const int index = state_.lesson();
    const QSignalBlocker quiet(lesson_);
    lesson_->setCurrentIndex(index + 1);
    const bool task = state_.at_task();
    back_->setEnabled(index >= 0 && state_.step() > 0);
    help_->setVisible(task);
    solution_->setVisible(task);
    hint_->clear();
    if (index < 0) return show_free_play();
    const Lesson& lesson = state_.lessons()[static_cast<std::size_t>(index)];
    const int steps = static_cast<int>(lesson.steps.size());
    const bool last = index + 1 == static_cast<int>(state_.lessons().size());
    where_->show();
    where_->setText(task ? tr("Your task") : tr("Step %1 of %2").arg(state_.step() + 1).arg(steps));
    text_->setText(task ? lesson.task : lesson.steps[static_cast<std::size_t>(state_.step())].text);
    QFont verdict = text_->font();
    verdict.setBold(task && state_.solved());
    verdict_->setFont(verdict);
    verdict_->setText(!task ? QString() : state_.solved() ? tr("✓ Solved.") : tr("Not yet."));
    next_->setText(!task ? tr("&Next") : last ? tr("&Free play") : tr("&Next lesson"));
    if (task && hinted_ == index) hint_->setText(lesson.hint);
}

}  // namespace howlmap::app
