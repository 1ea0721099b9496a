// SPDX-License-Identifier: GPL-3.0-or-later
// What most verbs begin and end with: a show from a file, bytes to a file.
#pragma once
#include <QString>
#include <optional>
#include <string_view>

#include "app/command_line/console.h"
#include "app/document/file_names.h"
#include "core/show/show.h"

namespace howlmap::app {

/// The show in a file. Refused: says on `err` which file, where in it and what was expected, and gives none (exit with
/// Status::refused).
std::optional<Show> open_show(const QString& file, Console& console);

/// A name that does not end in what is written (".pdf", in letters of any size) is refused: says so on `err`.
std::optional<Status> refuse_other_endings(const QString& file, const char* ending, Console& console);

/// Writes a whole file or nothing. Says on `err` what went wrong.
Status write_output(const QString& file, std::string_view bytes, Console& console);

}  // namespace howlmap::app
