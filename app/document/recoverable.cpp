// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "app/document/autosave.h"
#include "core/file/read.h"

namespace howlmap::app {
namespace {

QJsonObject read_envelope(const QString& file) {
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly)) return {};
    const QJsonObject object = QJsonDocument::fromJson(in.readAll()).object();
    return object[QStringLiteral("format")] == QStringLiteral("howlmap-autosave") ? object : QJsonObject();
}

/// Whoever wrote it holds its lock as long as he lives.
bool writer_alive(const QString& file) {
    QLockFile lock(file + QStringLiteral(".lock"));
    lock.setStaleLockTime(0);
    return !lock.tryLock(0);
}

}  // namespace

QList<Recoverable> recoverable() {
    QList<Recoverable> found;
    for (const QFileInfo& info : QDir(Autosave::folder()).entryInfoList({QStringLiteral("*.autosave")}, QDir::Files)) {
        const QString file = info.absoluteFilePath();
        if (writer_alive(file)) continue;
        const QJsonObject object = read_envelope(file);
        if (object.isEmpty()) continue;
        found.append(
            {file, object[QStringLiteral("path")].toString(), object[QStringLiteral("title")].toString(),
             QDateTime::fromString(object[QStringLiteral("time")].toString(), Qt::ISODateWithMs).toLocalTime()});
    }
    std::ranges::sort(found, std::ranges::greater(), &Recoverable::time);
    return found;
}

tl::expected<Show, Trouble> read_recoverable(const Recoverable& copy) {
    const std::string text = read_envelope(copy.file)[QStringLiteral("show")].toString().toStdString();
    auto read = read_show(text);
    if (read) return std::move(read->show);
    return tl::unexpected(Trouble{Autosave::tr("The copy aside cannot be read."), copy.file,
                                  QString::fromStdString(read.error().message()),
                                  Autosave::tr("It was left where it is.")});
}

void remove_recoverable(const Recoverable& copy) {
    QFile::remove(copy.file);
    QFile::remove(copy.file + QStringLiteral(".lock"));
}

}  // namespace howlmap::app
