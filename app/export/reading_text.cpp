// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/reading_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "app/export/length_text.h"
#include "app/settings/figures.h"
#include "core/air/air.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {
QString degrees_text(double value) { return QStringLiteral("%1°").arg(std::lround(value)); }

QString name_of(const std::string& name) { return QString::fromStdString(name); }
}  // namespace

std::optional<Vec3> acoustic_centre(const Show& show, std::string_view id) {
    if (const auto* l = find_by_id(show.loudspeakers, id)) return l->position;
    if (const auto* i = find_by_id(show.inputs, id); i && i->has_position) return i->position;
    if (const auto* b = find_by_id(show.backline, id)) return b->position;
    if (const auto* listener = find_by_id(show.listeners, id)) return listener->position;
    if (const auto* m = find_by_id(show.marks, id)) return Vec3{m->position.x, m->position.y, 0.0};
    if (const auto* p = find_by_id(show.performers, id))
        return Vec3{p->position.x, p->position.y, riser_height_at(show.stage, p->position) + p->ear_height_m};
    return std::nullopt;
}

QString measure_text(const Show& show, Vec3 from, Vec3 to, std::optional<double> hz) {
    const double distance = length(to - from), c = speed_of_sound(show.air.temperature_c);
    const QLocale locale;
    QString text = QCoreApplication::translate("Plan", "%1, bearing %2, %3 ms")
                       .arg(length_text(distance, show.display.units), degrees_text(aim_towards(from, to).yaw_deg),
                            locale.toString(1000.0 * distance / c, 'f', 1));
    if (hz)
        text += QCoreApplication::translate("Plan", ", %1 waves at %2")
                    .arg(locale.toString(distance * *hz / c, 'f', 1), hz_text(*hz));
    return text;
}

QString pair_text(const Show& show, std::string_view loudspeaker, std::string_view input) {
    const auto* l = find_by_id(show.loudspeakers, loudspeaker);
    const auto* i = find_by_id(show.inputs, input);
    if (!l || !i) return {};
    const Vec3 way = l->position - i->position;
    const double distance = length(way);
    QString text = QCoreApplication::translate("Plan", "%1 to %2: %3")
                       .arg(name_of(l->name), name_of(i->name), coarse_length_text(distance, show.display.units));
    if (microphone_of(*i) && distance > 0.0)
        text += QCoreApplication::translate("Plan", ", %1 off the microphone's axis")
                    .arg(degrees_text(degrees(local_angles(frame_of(i->aim), way * (1.0 / distance)).off_axis)));
    else if (distance > 0.0)
        text += QCoreApplication::translate("Plan", ", %1 off the loudspeaker's axis")
                    .arg(degrees_text(degrees(local_angles(frame_of(l->aim), way * (-1.0 / distance)).off_axis)));
    return text;
}

}  // namespace howlmap::app
