// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/write.h"

#include "core/file/fields/show.h"
#include "core/file/fields_out.h"

namespace howlmap {

std::string write_show(const Show& show) {
    file::JsonWriter out;
    file::write_object(out, show);
    return out.take() + "\n";
}

}  // namespace howlmap
