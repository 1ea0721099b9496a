// SPDX-License-Identifier: GPL-3.0-or-later
// The log kept while ringing out, as edits of a show.
#pragma once
#include <QString>
#include <string>

#include "core/analysis/ring_out.h"
#include "core/show/show.h"

namespace howlmap::app {

/// What was heard, and what is done about it.
struct RingOutStep {
    double hz = 1000.0;
    std::string input, loudspeaker, mix;
    CutWith with = CutWith::graphic_band;
    double cut_db = 0.0;  ///< 0 or below
    QString note;
};

/// Time of day for the log, "14:05".
QString log_time();
/// An entry for the step; `action` says in words what was done.
SoundcheckEntry log_entry(const RingOutStep& step);
/// The cut goes into the mix, the entry into the log.
void cut_and_log(Show& show, const RingOutStep& step);

}  // namespace howlmap::app
