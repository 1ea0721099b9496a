// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

#include "core/show/show.h"

namespace howlmap::app {

/// What has to be set at the desk to come from one show to another: faders of graphic equalisers by band and mix, then
/// sends by input and mix, in dB. Mixes stand side by side, a few in a table so that it fits into a narrow panel. Rich
/// text; empty where nothing differs.
QString setting_tables(const Show& from, const Show& to);

}  // namespace howlmap::app
