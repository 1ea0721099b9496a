// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/lesson_actions.h"

#include <QWidget>
#include <algorithm>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/document/selection.h"
#include "app/document/spotlight.h"
#include "app/lesson/hear_window.h"
#include "app/lesson/lesson_window.h"

namespace howlmap::app {
namespace {

void bring_up(QWidget& window) {
    window.show();
    window.raise();
    window.activateWindow();
}

}  // namespace

LessonActions::LessonActions(const Workspace& workspace, std::function<void(const QString&)> help, QWidget* owner)
    : QObject(owner), work_(workspace), help_(std::move(help)), owner_(owner) {}

LessonActions::~LessonActions() {
    delete lesson_;
    delete hear_;
}

LessonWindow& LessonActions::need_lesson() {
    if (!lesson_) {
        lesson_ = new LessonWindow(work_.document, help_, owner_);
        connect(lesson_, &LessonWindow::said, this, work_.say);
    }
    return *lesson_;
}

void LessonActions::open_lesson() { bring_up(need_lesson()); }

void LessonActions::show_pair(const std::string& input, const std::string& loudspeaker, const std::string& mix) {
    if (need_lesson().show_pair(input, loudspeaker, mix)) bring_up(*lesson_);
}

bool LessonActions::show_selected_objects() {
    const auto result = work_.analysis.result();
    const Selection& selection = work_.selection;
    if (!result || selection.ids().isEmpty()) return false;
    const auto selected = [&](const std::string& id) { return selection.contains(QString::fromStdString(id)); };
    // The pairs come worst first.
    const auto& pairs = result->pairs;
    auto found =
        std::ranges::find_if(pairs, [&](const auto& p) { return selected(p.input) && selected(p.loudspeaker); });
    if (found == pairs.end())
        found =
            std::ranges::find_if(pairs, [&](const auto& p) { return selected(p.input) || selected(p.loudspeaker); });
    if (found == pairs.end()) return false;
    show_pair(found->input, found->loudspeaker, found->mix);
    return true;
}

void LessonActions::show_selected() {
    if (show_selected_objects()) return;
    const auto result = work_.analysis.result();
    std::optional<Ring> ring = work_.spotlight.ring();
    if (!ring && result && !result->rings.empty()) ring = result->rings.front();
    if (ring) return show_pair(ring->strongest_input, ring->strongest_loudspeaker, ring->strongest_mix);
    work_.say(tr("There is no loop to show: select a microphone and a loudspeaker that plays it."));
}

void LessonActions::hear_stage() {
    if (!hear_) hear_ = new HearWindow(work_.document, work_.analysis, owner_);
    bring_up(*hear_);
}

}  // namespace howlmap::app
