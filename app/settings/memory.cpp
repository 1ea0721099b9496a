// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings/memory.h"

#include <cstdlib>  // tells which C library this is
#include <utility>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace howlmap::app {

// By default each thread that computes gets a heap of its own, up to eight a core, and a block that was large once
// raises the size from which blocks are handed back at once, up to 32 MiB: maps and draws then leave holes in many
// heaps.
void give_memory_back() {
#ifdef M_ARENA_MAX
    mallopt(M_ARENA_MAX, 2);
    mallopt(M_MMAP_THRESHOLD, 256 * 1024);
#endif
}

MemoryKeeper::MemoryKeeper(std::function<bool()> busy, int rest_ms, QObject* parent)
    : QObject(parent), busy_(std::move(busy)) {
    rest_.setSingleShot(true);
    rest_.setInterval(rest_ms);
    connect(&rest_, &QTimer::timeout, this, [this] {
        if (busy_()) return stir();
        Q_EMIT resting();
#ifdef __GLIBC__
        malloc_trim(0);
#endif
        Q_EMIT handed_back();
    });
}

}  // namespace howlmap::app
