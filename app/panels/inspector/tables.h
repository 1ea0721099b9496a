// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QList>

#include "app/panels/inspector/number_table.h"

namespace howlmap::app {

/// The tables of one object (or of the show for an empty id): filters, body modes, response points, sends' equaliser,
/// corners, absorption.
QList<NumberTableSource> tables_of(const Show& show, const QString& id);

}  // namespace howlmap::app
