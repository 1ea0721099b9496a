// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a show file: everything is checked before anything is used; a refusal names the place.
#pragma once
#include <filesystem>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

#include "core/show/show.h"

namespace howlmap {

/// Why a file was refused: where (a JSON pointer such as "/inputs/3/position/0", or "line 4, column 7" for broken
/// JSON), what stood there and what was expected.
struct FileError {
    std::string place, found, expected;
    /// One sentence: "stage.howlmap: /inputs/3/position/0: found "left", expected a number from -1000 to 1000".
    std::string message(std::string_view file = {}) const;
};

struct ReadShow {
    Show show;
    int version = 1;         ///< that the file was written with
    bool read_only = false;  ///< written by a newer version whose keys allow reading
};

/// Parses the text of a show file (UTF-8, a byte order mark is taken).
tl::expected<ReadShow, FileError> read_show(std::string_view text);
/// Reads and parses a file; trouble with the file itself has place "" and says what the system said.
tl::expected<ReadShow, FileError> load_show(const std::filesystem::path& path);

}  // namespace howlmap
