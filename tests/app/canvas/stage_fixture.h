// SPDX-License-Identifier: GPL-3.0-or-later
// A small stage and the hands of a user, for tests of the plan.
#pragma once
#include <QtTest>

#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "core/show/find.h"

namespace howlmap::app {

inline Loudspeaker wedge(const std::string& id, Vec2 at) {
    Loudspeaker l;
    l.id = id;
    l.name = "Wedge " + id;
    l.position = {at.x, at.y, 0.3};
    l.aim = {180.0, 40.0, 0.0};
    l.directivity = Coverage{};
    return l;
}

inline Input microphone(const std::string& id, int channel, Vec2 at) {
    Input i;
    i.id = id;
    i.channel = channel;
    i.name = "Voice " + id;
    i.position = {at.x, at.y, 1.6};
    i.aim = {180.0, 0.0, 0.0};
    return i;
}

/// Two wedges, a microphone and a player, one mix; an 8 by 6 m stage with a riser.
inline Show small_stage() {
    Show show;
    show.title = "Small stage";
    show.stage.outline = {{-4, 0}, {4, 0}, {4, 6}, {-4, 6}};
    show.stage.risers.push_back({"riser", "Riser", {{1, 3}, {3, 3}, {3, 5}, {1, 5}}, 0.4, {}});
    show.loudspeakers = {wedge("w1", {-1.5, 1.0}), wedge("w2", {1.5, 1.0})};
    show.inputs = {microphone("m1", 1, {-1.5, 2.5})};
    Performer player;
    player.id = "p1";
    player.name = "Singer";
    player.position = {-1.5, 3.0};
    player.mix = "mix";
    show.performers = {player};
    show.inputs.front().performer = "p1";
    Mix mix;
    mix.id = "mix";
    mix.name = "Singer";
    mix.loudspeakers = {"w1"};
    mix.sends = {{"m1", 96.0, {}}};
    show.mixes = {mix};
    return show;
}

/// The plan of a show in a window of a size, everything shown at 100 pixels a metre.
struct Stage_fixture {
    Document document;
    Selection selection;
    AnalysisService analysis{document};
    PlanView view{document, selection, analysis};

    explicit Stage_fixture(Show show = small_stage(), QSize size = {1100, 900}) {
        view.resize(size);
        document.replace(std::move(show), {}, false);
        view.show();
        (void)QTest::qWaitForWindowExposed(&view);
        view.zoom_actual();
        view.centerOn(0.0, -3.0);
        QCoreApplication::processEvents();
    }

    QPoint at(double x, double y) const { return view.viewport_point({x, y}); }
    QWidget* port() { return view.viewport(); }

    void move_to(QPoint to, Qt::KeyboardModifiers keys = {}) {
        QMouseEvent event(QEvent::MouseMove, to, port()->mapToGlobal(to), Qt::NoButton, Qt::LeftButton, keys);
        QCoreApplication::sendEvent(port(), &event);
    }
    /// Press, move in steps, release.
    void drag(QPoint from, QPoint to, Qt::KeyboardModifiers keys = {}, int steps = 8) {
        QTest::mousePress(port(), Qt::LeftButton, keys, from);
        for (int i = 1; i <= steps; ++i) move_to(from + (to - from) * i / steps, keys);
        QTest::mouseRelease(port(), Qt::LeftButton, keys, to);
    }
    int steps() { return document.undo_stack().count(); }
    const Loudspeaker& loudspeaker(const char* id) { return *find_by_id(document.show().loudspeakers, id); }
};

}  // namespace howlmap::app
