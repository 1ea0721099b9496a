// SPDX-License-Identifier: GPL-3.0-or-later
// The plotting library's header speaks Qt's keywords, which are switched off here: they are lent to it, and only to it.
#pragma once
#include <QObject>

#define signals Q_SIGNALS
#define slots Q_SLOTS
#define emit Q_EMIT
#define foreach Q_FOREACH
#include <qcustomplot.h>
#undef signals
#undef slots
#undef emit
#undef foreach
