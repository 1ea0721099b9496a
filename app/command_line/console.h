// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <ostream>

namespace howlmap::app {

/// Exit statuses of the verbs.
enum class Status {
    done = 0,           ///< for check: the margin to count on reaches the target
    target_missed = 1,  ///< check only
    refused = 2,        ///< bad usage, or an input that cannot be used
    not_written = 3     ///< the output could not be written
};

/// Where a verb writes: what was asked for to `out`, what went wrong to `err`.
struct Console {
    std::ostream& out;
    std::ostream& err;

    /// Writes UTF-8 text to `out`.
    void print(const QString& text) { out << text.toStdString(); }
    /// Writes "howlmap: message" to `err` and hands the status on, so that a verb can say `return
    /// console.complain(..)`.
    Status complain(const QString& message, Status status = Status::refused) {
        err << "howlmap: " << message.toStdString() << '\n';
        return status;
    }
};

}  // namespace howlmap::app
