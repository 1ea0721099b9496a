// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/log_edits.h"

#include <QCoreApplication>
#include <QTime>
#include <cmath>

#include "core/units/bands.h"

namespace howlmap::app {

QString log_time() { return QTime::currentTime().toString(QStringLiteral("HH:mm")); }

SoundcheckEntry log_entry(const RingOutStep& step) {
    const auto text = [](const char* english) { return QCoreApplication::translate("soundcheck", english); };
    SoundcheckEntry entry;
    entry.hz = std::round(step.hz * 10.0) / 10.0;
    entry.band = kNominalThirdOctaves[static_cast<std::size_t>(third_octave_of(step.hz))];
    entry.input = step.input;
    entry.mix = step.mix;
    entry.gain_db = step.cut_db;
    const QString action = step.cut_db == 0.0            ? text(QT_TRANSLATE_NOOP("soundcheck", "heard"))
                           : step.with == CutWith::notch ? text(QT_TRANSLATE_NOOP("soundcheck", "notch"))
                                                         : text(QT_TRANSLATE_NOOP("soundcheck", "pull band"));
    entry.action = action.toStdString();
    entry.time = log_time().toStdString();
    entry.note = step.note.toStdString();
    return entry;
}

void cut_and_log(Show& show, const RingOutStep& step) {
    apply_ring_out_cut(show, step.mix, step.hz, step.with, step.cut_db);
    show.soundcheck.push_back(log_entry(step));
}

}  // namespace howlmap::app
