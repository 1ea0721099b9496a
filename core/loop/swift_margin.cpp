// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/swift_margin.h"

#include "core/loop/blocks/block_scan.h"

namespace howlmap {

std::optional<DrawnMargin> swift_margin(const Show& show) {
    const BlockModel blocks(show, Purpose::strongest);
    if (blocks.model().empty()) return std::nullopt;
    return BlockScan(blocks).as_drawn();
}

}  // namespace howlmap
