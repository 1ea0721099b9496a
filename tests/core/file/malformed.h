// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <vector>

namespace howlmap::test {

/// A file that must be refused.
struct Malformed {
    std::string kind;      ///< class of mistake
    std::string text;      ///< of the file
    std::string place;     ///< that the refusal must name; "line" for any line and column
    std::string expected;  ///< that its message must hold, may be empty
};

/// Files made from the sample by one mistake each, class by class.
std::vector<Malformed> malformed_files();

}  // namespace howlmap::test
