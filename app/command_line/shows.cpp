// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/shows.h"

#include "app/command_line/verb.h"
#include "core/file/read.h"
#include "core/file/write.h"

namespace howlmap::app {

std::optional<Show> open_show(const QString& file, Console& console) {
    auto read = load_show(to_path(file));
    if (read) return std::move(read->show);
    console.complain(QString::fromStdString(read.error().message(file.toStdString())));
    return std::nullopt;
}

std::optional<Status> refuse_other_endings(const QString& file, const char* ending, Console& console) {
    if (file.endsWith(QLatin1StringView(ending), Qt::CaseInsensitive)) return std::nullopt;
    return console.complain(cli_text(QT_TRANSLATE_NOOP("command_line", "%1: expected a name that ends in %2"))
                                .arg(file, QLatin1StringView(ending)));
}

Status write_output(const QString& file, std::string_view bytes, Console& console) {
    const auto saved = save_atomically(to_path(file), bytes);
    if (saved) return Status::done;
    return console.complain(QString::fromStdString(saved.error()), Status::not_written);
}

}  // namespace howlmap::app
