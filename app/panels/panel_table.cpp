// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/panel_table.h"

#include <QCoreApplication>
#include <type_traits>
#include <vector>

#include "app/canvas/plan_view.h"
#include "app/panels/cures/cures_panel.h"
#include "app/panels/ears/ears_panel.h"
#include "app/panels/inputs/inputs_panel.h"
#include "app/panels/inspector/inspector_panel.h"
#include "app/panels/loops/loops_panel.h"
#include "app/panels/mixes/mixes_panel.h"
#include "app/panels/parts/parts_panel.h"
#include "app/panels/response/response_panel.h"
#include "app/panels/soundcheck/soundcheck_panel.h"

namespace howlmap::app {
namespace {

template <class Widget>
QWidget* make(const Workspace& work, QWidget* parent) {
    if constexpr (std::is_constructible_v<Widget, const Workspace&, QWidget*>)
        return new Widget(work, parent);
    else
        return new Widget(work.document, work.selection, parent);
}

/// Tables say in the status bar what they did.
template <class Widget>
QWidget* make_talking(const Workspace& work, QWidget* parent) {
    auto* panel = new Widget(work.document, work.selection, parent);
    QObject::connect(panel, &Widget::message, panel, [say = work.say](const QString& text) { say(text); });
    return panel;
}

/// Patterns are drawn at the frequency that the plan shows.
QWidget* make_inspector(const Workspace& work, QWidget* parent) {
    auto* panel = new InspectorPanel(work.document, work.selection, parent);
    panel->set_frequency(work.plan.shown_frequency());
    QObject::connect(&work.plan, &PlanView::shown_frequency_changed, panel, &InspectorPanel::set_frequency);
    return panel;
}

QWidget* make_parts(const Workspace& work, QWidget* parent) {
    auto* panel = new PartsPanel(parent);
    QObject::connect(panel, &PartsPanel::chosen, &work.plan,
                     [plan = &work.plan](const QByteArray& preset) { plan->place(preset); });
    return panel;
}

}  // namespace

std::span<const PanelEntry> panel_table() {
    static const std::vector<PanelEntry> table{
        {"parts", QT_TRANSLATE_NOOP("panels", "Parts"), QT_TRANSLATE_NOOP("panels", "What can be put on the plan."),
         "Alt+1", Qt::LeftDockWidgetArea, make_parts},
        {"loops", QT_TRANSLATE_NOOP("panels", "Loops"),
         QT_TRANSLATE_NOOP("panels", "What rings first, worst first, and who makes it."), "Alt+2",
         Qt::RightDockWidgetArea, make<LoopsPanel>},
        {"cures", QT_TRANSLATE_NOOP("panels", "Cures"),
         QT_TRANSLATE_NOOP("panels", "What to do about it, best first, at equal loudness."), "Alt+3",
         Qt::RightDockWidgetArea, make<CuresPanel>},
        {"inspector", QT_TRANSLATE_NOOP("panels", "Inspector"),
         QT_TRANSLATE_NOOP("panels", "Every property of what is selected."), "Alt+4", Qt::RightDockWidgetArea,
         make_inspector},
        {"response", QT_TRANSLATE_NOOP("panels", "Response"),
         QT_TRANSLATE_NOOP("panels", "Loop gain over frequency, and the faders that change it."), "Alt+5",
         Qt::BottomDockWidgetArea, make<ResponsePanel>},
        {"inputs", QT_TRANSLATE_NOOP("panels", "Inputs"),
         QT_TRANSLATE_NOOP("panels", "The input list: channels, names, transducers, stands."), "Alt+6",
         Qt::BottomDockWidgetArea, make_talking<InputsPanel>},
        {"mixes", QT_TRANSLATE_NOOP("panels", "Mixes"),
         QT_TRANSLATE_NOOP("panels", "Which input goes how loud into which mix."), "Alt+7", Qt::BottomDockWidgetArea,
         make_talking<MixesPanel>},
        {"ears", QT_TRANSLATE_NOOP("panels", "Ears"),
         QT_TRANSLATE_NOOP("panels", "What every player hears, for how long, and what reaches the house."), "Alt+8",
         Qt::BottomDockWidgetArea, make<EarsPanel>},
        {"soundcheck", QT_TRANSLATE_NOOP("panels", "Soundcheck"),
         QT_TRANSLATE_NOOP("panels",
                           "What rings first, the walk through it, recordings, live sound, taps, and the log."),
         "Alt+9", Qt::BottomDockWidgetArea, make<SoundcheckPanel>},
    };
    return table;
}

QString panel_text(const char* english) { return QCoreApplication::translate("panels", english); }

}  // namespace howlmap::app
