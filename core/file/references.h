// SPDX-License-Identifier: GPL-3.0-or-later
// Private to core/file.
#pragma once
#include <optional>

#include "core/file/read.h"

namespace howlmap::file {

/// The first breach of: every id is unique over the whole show, every reference leads somewhere, 5,000 objects at most.
std::optional<FileError> check_references(const Show& show);

}  // namespace howlmap::file
