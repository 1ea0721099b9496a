// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/lesson_window.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShowEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "app/document/document.h"
#include "app/lesson/comb_view.h"
#include "app/lesson/guide_panel.h"
#include "app/lesson/knob_panel.h"
#include "app/lesson/lesson_state.h"
#include "app/lesson/phasor_view.h"
#include "app/lesson/side_view.h"
#include "app/lesson/sound_bar.h"
#include "app/lesson/wave_clock.h"
#include "app/settings/figures.h"
#include "app/settings/icons.h"
#include "app/settings/preferences.h"
#include "app/settings/theme.h"
#include "core/lesson/pair.h"
#include "core/units/notes.h"

namespace howlmap::app {
namespace {

constexpr double kLeastPoints = 10.0, kMostPoints = 24.0, kLinesOnPage = 74.0;
constexpr int kSentenceLines = 3;
constexpr auto kMotion = "lesson/motion";

}  // namespace

LessonWindow::LessonWindow(Document& document, std::function<void(const QString&)> help, QWidget* parent)
    : QWidget(parent, Qt::Window),
      document_(document),
      help_(std::move(help)),
      state_(new LessonState(this)),
      clock_(new WaveClock(this)),
      wants_motion_(settings()->value(QLatin1StringView(kMotion), true).toBool()) {
    setObjectName(QStringLiteral("lesson_window"));
    setWindowTitle(tr("Lesson - Howlmap"));
    setWindowIcon(icon(QStringLiteral("lesson")));
    resize(1280, 800);
    build();
    add_keys();
    connect(state_, &LessonState::changed, this, &LessonWindow::refresh);
    refresh();
}

void LessonWindow::build() {
    auto* centre = new QVBoxLayout;
    centre->setSpacing(0);
    side_ = new SideView(*state_, *clock_, this);
    sentence_ = new QLabel;
    sentence_->setObjectName(QStringLiteral("sentence"));
    sentence_->setWordWrap(true);
    sentence_->setProperty("reading", true);
    sentence_->setMargin(10);
    sentence_->setAlignment(Qt::AlignVCenter | Qt::AlignLeft);
    sentence_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    sentence_->setAccessibleName(tr("What just changed"));
    centre->addWidget(side_, 5);
    centre->addWidget(sentence_);
    centre->addWidget(new CombView(*state_, this), 2);
    auto* top = new QHBoxLayout;
    top->setSpacing(1);
    auto* guide = new GuidePanel(*state_, this);
    top->addWidget(guide, 26);
    top->addLayout(centre, 58);
    auto* right = new QVBoxLayout;
    right->setSpacing(0);
    auto* figures = new QVBoxLayout;
    figures->setContentsMargins(12, 10, 12, 6);
    for (QLabel** label : {&margin_, &ring_, &cost_}) figures->addWidget(*label = new QLabel);
    margin_->setObjectName(QStringLiteral("margin"));
    ring_->setObjectName(QStringLiteral("first_ring"));
    ring_->setWordWrap(true);
    cost_->setObjectName(QStringLiteral("tone_cost"));
    right->addLayout(figures);
    right->addWidget(new PhasorView(*state_, *clock_, this), 1);
    top->addLayout(right, 22);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(top, 1);
    column->addWidget(new KnobPanel(*state_, this));
    column->addWidget(build_foot());
}

QWidget* LessonWindow::build_foot() {
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(10, 2, 10, 8);
    pause_ = new QPushButton(icon(QStringLiteral("pause")), tr("Stand still"));
    pause_->setObjectName(QStringLiteral("pause"));
    pause_->setCheckable(true);
    pause_->setChecked(!wants_motion_);
    pause_->setToolTip(tr("Stops or starts the waves (Space). It is remembered."));
    back_ = new QPushButton(icon(QStringLiteral("apply")), tr("Put &back into the show"));
    back_->setObjectName(QStringLiteral("put_back"));
    back_->setToolTip(
        tr("What was changed here since the pair came from the show is changed there, as one step that can "
           "be undone."));
    full_ = new QPushButton(tr("Full screen"));
    full_->setObjectName(QStringLiteral("full_screen"));
    full_->setToolTip(tr("Uses the whole screen, for a class or a projector (F11, back with Esc)."));
    sound_ = new SoundBar([this] { return SoundBar::Wish{state_->bench().show, {}}; }, foot);
    row->addWidget(pause_);
    row->addWidget(sound_, 1);
    row->addWidget(back_);
    row->addWidget(full_);
    connect(pause_, &QPushButton::toggled, this, [this](bool still) {
        wants_motion_ = !still;
        settings()->setValue(QLatin1StringView(kMotion), wants_motion_);
        clock_->set_running(wants_motion_ && isVisible());
    });
    connect(back_, &QPushButton::clicked, this, &LessonWindow::put_back);
    connect(full_, &QPushButton::clicked, this, [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });
    return foot;
}

void LessonWindow::add_keys() {
    const auto key = [this](const QKeySequence& keys, const QString& name, std::function<void()> what) {
        auto* action = new QAction(name, this);
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WindowShortcut);
        action->setToolTip(QStringLiteral("%1 (%2)").arg(name, keys.toString(QKeySequence::NativeText)));
        action->setStatusTip(name);
        connect(action, &QAction::triggered, this, std::move(what));
        addAction(action);
    };
    const auto flip = [this](Knob knob) {
        return [this, knob] { state_->turn(knob, state_->value(knob) > 0.5 ? 0.0 : 1.0); };
    };
    key(Qt::Key_F11, tr("Full screen"), [this] { full_->click(); });
    key(Qt::Key_Escape, tr("Back to the window, silence"), [this] {
        sound_->stop();
        setWindowState(windowState() & ~Qt::WindowFullScreen);
    });
    key(Qt::Key_F1, tr("Help"), [this] { help_(QStringLiteral("lesson")); });
    key(Qt::Key_Space, tr("Stand still"), [this] { pause_->toggle(); });
    key(Qt::Key_PageDown, tr("Next step"), [this] { state_->go_to(state_->step() + 1); });
    key(Qt::Key_PageUp, tr("Step before"), [this] { state_->go_to(state_->step() - 1); });
    key(Qt::Key_N, tr("Next frequency that fits"), [this] { state_->next_fit(true); });
    key(Qt::SHIFT | Qt::Key_N, tr("Frequency before that fits"), [this] { state_->next_fit(false); });
    key(Qt::Key_P, tr("Polarity"), flip(Knob::polarity));
    key(Qt::Key_F, tr("Floor"), flip(Knob::floor));
    key(Qt::Key_B, tr("Body"), flip(Knob::body));
    key(Qt::Key_C, tr("Sound holes"), flip(Knob::covered));
    key(Qt::Key_I, tr("In-ears"), flip(Knob::in_ears));
}

bool LessonWindow::show_pair(const std::string& input, const std::string& loudspeaker, const std::string& mix) {
    const auto bench = bench_of(document_.show(), input, loudspeaker, mix);
    if (!bench) {
        Q_EMIT said(tr("Nothing sends this input to that loudspeaker, so there is no loop to show."));
        return false;
    }
    sent_ = *bench;
    state_->set_bench(*bench);
    return true;
}

void LessonWindow::put_back() {
    if (!sent_) return;
    const Bench after = state_->bench();
    const bool changed =
        document_.edit(tr("Lesson: what was tried"), [&](Show& show) { howlmap::put_back(show, *sent_, after); });
    if (changed) sent_ = after;
    Q_EMIT said(changed ? tr("The show has what was tried in the lesson.") : tr("Nothing was changed in the lesson."));
    refresh();
}

void LessonWindow::refresh() {
    const LessonFigures& f = state_->figures();
    sentence_->setText(state_->sentence());
    margin_->setText(f.margin_db ? tr("Margin %1").arg(margin_text(f.margin_db)) : tr("No loop"));
    margin_->setAccessibleName(margin_->text());
    ring_->setText(
        f.ring_hz ? tr("First ring %1, %2").arg(hz_text(*f.ring_hz), QString::fromStdString(note_of(*f.ring_hz).name))
                  : QString());
    cost_->setText(tr("Tone cost %1 dB").arg(decimal_text(f.tone_cost_db, 1)));
    clock_->set_wavelength(f.speed / f.hz);
    const bool same_pair = sent_ && state_->lesson() < 0 && input_of(*sent_).id == input_of(state_->bench()).id &&
                           sent_->loudspeaker == state_->bench().loudspeaker;
    back_->setVisible(same_pair);
    back_->setEnabled(same_pair && !(state_->bench().show == sent_->show));
}

void LessonWindow::showEvent(QShowEvent* event) {
    clock_->set_running(wants_motion_);
    QWidget::showEvent(event);
}

void LessonWindow::hideEvent(QHideEvent* event) {
    clock_->set_running(false);
    QWidget::hideEvent(event);
}

// Type as large as the window allows: it is read from the back of a class room.
void LessonWindow::resizeEvent(QResizeEvent* event) {
    const double lines = std::min(height() / kLinesOnPage, width() / (1.6 * kLinesOnPage));
    QFont font = this->font();
    font.setPointSizeF(std::clamp(lines, kLeastPoints, kMostPoints));
    setFont(tabular(font));
    margin_->setFont(figure_font(font));
    // What is to be read comes before what is to be turned.
    QFont reading = tabular(font);
    reading.setPointSizeF(1.25 * font.pointSizeF());
    for (QLabel* label : findChildren<QLabel*>())
        if (label->property("reading").toBool()) label->setFont(reading);
    // Most sentences take three lines; the picture must not jump while the shorter ones pass.
    sentence_->setMinimumHeight(kSentenceLines * QFontMetrics(reading).lineSpacing() + 2 * sentence_->margin());
    QWidget::resizeEvent(event);
}

void LessonWindow::changeEvent(QEvent* event) {
    if (event->type() == QEvent::WindowStateChange && full_)
        full_->setText(isFullScreen() ? tr("Leave full screen") : tr("Full screen"));
    QWidget::changeEvent(event);
}

}  // namespace howlmap::app
