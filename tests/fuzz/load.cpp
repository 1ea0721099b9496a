// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a show file: refused with a place, or read; what is read is written and read again to the same bytes.
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/file/read.h"
#include "core/file/write.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto read = howlmap::read_show({reinterpret_cast<const char*>(data), size});
    if (!read) {
        if (read.error().message("x").empty()) std::abort();
        return 0;
    }
    const std::string once = howlmap::write_show(read->show);
    const auto again = howlmap::read_show(once);
    if (!again || howlmap::write_show(again->show) != once) std::abort();
    return 0;
}
