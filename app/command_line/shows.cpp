// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/shows.h"

#include "core/file/read.h"
#include "core/file/write.h"

namespace howlmap::app {

std::optional<Show> open_show(const QString& file, Console& console) {
    auto read = load_show(to_path(file));
    if (read) return std::move(read->show);
    console.complain(QString::fromStdString(read.error().message(file.toStdString())));
    return std::nullopt;
}

Status write_output(const QString& file, std::string_view bytes, Console& console) {
    const auto saved = save_atomically(to_path(file), bytes);
    if (saved) return Status::done;
    return console.complain(QStringLiteral("%1: %2").arg(file, QString::fromStdString(saved.error())),
                            Status::not_written);
}

}  // namespace howlmap::app
