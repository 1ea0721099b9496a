// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QByteArray>
#include <QString>
#include <tl/expected.hpp>

#include "core/show/show.h"

namespace howlmap::app {

/// Type of a preset dragged from the parts list: one entry of a preset file, JSON.
QString preset_mime_type();
/// A preset as a part of a show that can be inserted: one object at the origin, at the preset's height, with a fresh id
/// and name for the show it is meant for. Error: one sentence.
tl::expected<Show, QString> part_of_preset(const QByteArray& preset_json, const Show& target);

}  // namespace howlmap::app
