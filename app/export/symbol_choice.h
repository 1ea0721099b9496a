// SPDX-License-Identifier: GPL-3.0-or-later
// Which symbol a thing is drawn with.
#pragma once
#include <QString>

#include "core/show/show.h"

namespace howlmap::app {

QString symbol_of(const Loudspeaker& loudspeaker);
/// A microphone; a pickup is drawn as its instrument, told by the key "symbol" of its preset or by the words of its
/// name.
QString symbol_of(const Input& input);
/// A player, standing or seated.
QString symbol_of(const Performer& performer);
QString symbol_of(const Backline& backline);
QString symbol_of(const Mark& mark);

}  // namespace howlmap::app
