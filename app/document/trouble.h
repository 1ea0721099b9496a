// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <tl/expected.hpp>

namespace howlmap::app {

/// Why something could not be done, in the words of the person it happened to.
struct Trouble {
    QString what;    ///< "The show cannot be opened."
    QString file;    ///< may be empty
    QString detail;  ///< where in the file, what was found, what was expected; or what the system said
    QString advice;  ///< what to do now
};

using Outcome = tl::expected<void, Trouble>;

}  // namespace howlmap::app
