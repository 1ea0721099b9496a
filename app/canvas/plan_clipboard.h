// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QMimeData>
#include <memory>
#include <optional>

#include "core/show/show.h"

namespace howlmap::app {

/// Type of a part of a show on the clipboard: the text of a show file.
QString part_mime_type();
/// A part as own type, as a drawing (SVG) and as a list of names.
std::unique_ptr<QMimeData> mime_of(const Show& part);
/// The part on a clipboard, if there is one that can be read.
std::optional<Show> part_in(const QMimeData& mime);

}  // namespace howlmap::app
