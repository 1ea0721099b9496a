// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/panels/inspector/field.h"

namespace howlmap::app {

/// What the presets of a list of the show ("backline", "marks") call its kinds, and after them those of this show that
/// no preset knows, by themselves.
QList<Choice> kind_choices(const QString& list, const QStringList& used);

}  // namespace howlmap::app
