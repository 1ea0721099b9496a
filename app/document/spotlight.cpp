// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/spotlight.h"

#include <utility>

namespace howlmap::app {

void Spotlight::set_ring(std::optional<Ring> ring) {
    if (!ring && !ring_) return;
    ring_ = std::move(ring);
    Q_EMIT ring_changed();
}

void Spotlight::set_preview(std::optional<Preview> preview) {
    if (!preview && !preview_) return;
    preview_ = std::move(preview);
    Q_EMIT preview_changed();
}

}  // namespace howlmap::app
