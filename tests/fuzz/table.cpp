// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a measured directivity: refused with a line, or read; what is read is written and read again the same.
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/file/directivity_csv.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto table = howlmap::read_directivity_csv({reinterpret_cast<const char*>(data), size});
    if (!table) {
        if (table.error().message("x").empty()) std::abort();
        return 0;
    }
    const auto again = howlmap::read_directivity_csv(howlmap::write_directivity_csv(*table));
    if (!again || again->angles_deg != table->angles_deg || again->hz != table->hz || again->db != table->db)
        std::abort();
    return 0;
}
