// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/file_session.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <utility>

#include "app/document/file_names.h"
#include "core/file/read.h"
#include "core/file/write.h"

namespace howlmap::app {
namespace {

constexpr int kFileSettleMs = 150;  ///< a writer may replace a file in several steps

QByteArray digest(const QByteArray& bytes) { return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256); }

tl::expected<QByteArray, Trouble> read_bytes(const QString& path) {
    QFile file(path);
    if (file.open(QIODevice::ReadOnly)) {
        QByteArray bytes = file.readAll();
        if (file.error() == QFileDevice::NoError) return bytes;
    }
    return tl::unexpected(Trouble{FileSession::tr("The show cannot be opened."), path, file.errorString(),
                                  FileSession::tr("Check that the file is there and that you may read it.")});
}

tl::expected<ReadShow, Trouble> parse(const QByteArray& bytes, const QString& path) {
    auto read = read_show({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (read) return std::move(*read);
    return tl::unexpected(
        Trouble{FileSession::tr("The show cannot be opened."), path, QString::fromStdString(read.error().message()),
                FileSession::tr("Nothing was changed. Mend this place in a text editor, or open an older copy.")});
}

}  // namespace

QString lock_name(const QString& path) {
    const QFileInfo info(path);
    return info.absolutePath() + QStringLiteral("/.") + info.fileName() + QStringLiteral(".lock");
}

FileSession::FileSession(Document& document, QObject* parent) : QObject(parent), document_(document) {
    settle_.setSingleShot(true);
    settle_.setInterval(kFileSettleMs);
    connect(&settle_, &QTimer::timeout, this, &FileSession::look_at_disk);
    connect(&watcher_, &QFileSystemWatcher::fileChanged, this, [this] { settle_.start(); });
    connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, [this] { settle_.start(); });
}

FileSession::~FileSession() = default;

void FileSession::start_new(Show show) {
    lock_.reset();
    take_over(std::move(show), {}, {}, {});
}

Outcome FileSession::open(const QString& name) {
    const QString path = QFileInfo(name).absoluteFilePath();
    auto bytes = read_bytes(path);
    if (!bytes) return tl::unexpected(bytes.error());
    auto read = parse(*bytes, path);
    if (!read) return tl::unexpected(read.error());

    QString reason = lock(path);
    if (!reason.isEmpty()) lock_.reset();
    if (read->read_only)
        reason = tr("It was written by a newer version (file version %1); saving it from here could lose what that "
                    "version added.")
                     .arg(read->version);
    take_over(std::move(read->show), path, reason, *bytes);
    Q_EMIT opened(path);
    return {};
}

Outcome FileSession::open_copy(const QString& resource) {
    auto bytes = read_bytes(resource);
    if (!bytes) return tl::unexpected(bytes.error());
    auto read = parse(*bytes, resource);
    if (!read) return tl::unexpected(read.error());
    lock_.reset();
    take_over(std::move(read->show), {}, tr("It is a copy of an example. Save it under a name of your own to keep it."),
              {});
    return {};
}

Outcome FileSession::save() {
    if (document_.read_only() || document_.path().isEmpty())
        return tl::unexpected(Trouble{tr("The show cannot be saved here."), document_.path(), read_only_reason_,
                                      tr("Use Save As to save it under another name.")});
    return save_as(document_.path());
}

Outcome FileSession::save_as(const QString& name) {
    const QString path = QFileInfo(name).absoluteFilePath();
    if (const QString reason = lock(path); !reason.isEmpty())
        return tl::unexpected(
            Trouble{tr("The show cannot be saved there."), path, reason, tr("Choose another name or folder.")});
    if (Outcome written = write(path); !written) {
        if (document_.path().isEmpty() || document_.read_only())
            lock_.reset();
        else
            lock(document_.path());
        return written;
    }
    const bool moved = path != document_.path() || document_.read_only();
    read_only_reason_.clear();
    if (moved) document_.set_path(path);
    document_.set_clean();
    watch(path);
    Q_EMIT saved();
    if (moved) Q_EMIT opened(path);
    return {};
}

Outcome FileSession::write(const QString& path) {
    const std::string text = write_show(document_.show());
    const QByteArray before = std::exchange(on_disk_, digest(QByteArray::fromStdString(text)));
    const auto saved = save_atomically(to_path(path), text);
    if (saved) return {};
    on_disk_ = before;
    return tl::unexpected(Trouble{tr("The show could not be saved. The file is as it was before."), path,
                                  QString::fromStdString(saved.error()),
                                  tr("Save it in another place with Save As. Until then nothing here is lost.")});
}

Outcome FileSession::revert() {
    if (document_.path().isEmpty()) return {};
    return open(document_.path());
}

void FileSession::keep_mine() { document_.set_unsaved(); }

void FileSession::take_over(Show show, const QString& path, const QString& reason, const QByteArray& bytes) {
    read_only_reason_ = reason;
    on_disk_ = digest(bytes);
    document_.replace(std::move(show), path, !reason.isEmpty());
    watch(path);
}

/// Takes the lock of a file instead of the one held; gives the reason why it cannot be written and keeps the old lock
/// then.
QString FileSession::lock(const QString& path) {
    if (QFileInfo::exists(path) && !QFileInfo(path).isWritable()) return tr("The file is write-protected.");
    if (lock_ && lock_->isLocked() && lock_->fileName() == lock_name(path)) return {};
    auto next = std::make_unique<QLockFile>(lock_name(path));
    next->setStaleLockTime(0);  // only a holder that is no longer alive makes a lock stale
    if (next->tryLock(0)) {
        lock_ = std::move(next);
        return {};
    }
    if (next->error() != QLockFile::LockFailedError) return tr("Its folder is write-protected.");
    qint64 process = 0;
    QString host, program;
    next->getLockInfo(&process, &host, &program);
    return tr("It is open in another window (%1, process %2 on %3).").arg(program).arg(process).arg(host);
}

void FileSession::watch(const QString& path) {
    if (const QStringList old = watcher_.files() + watcher_.directories(); !old.isEmpty()) watcher_.removePaths(old);
    if (path.isEmpty()) return;
    watcher_.addPath(path);
    watcher_.addPath(
        QFileInfo(path).absolutePath());  // a file that is replaced by renaming is lost from sight otherwise
}

void FileSession::look_at_disk() {
    const QString path = document_.path();
    if (path.isEmpty()) return;
    QFile file(path);
    if (!file.exists()) {
        if (std::exchange(on_disk_, {}).isEmpty()) return;
        document_.set_unsaved();
        Q_EMIT removed_from_disk();
        return;
    }
    if (!watcher_.files().contains(path)) watcher_.addPath(path);
    if (!file.open(QIODevice::ReadOnly)) return;
    const QByteArray now = digest(file.readAll());
    if (now == std::exchange(on_disk_, now)) return;
    Q_EMIT changed_on_disk();
}

}  // namespace howlmap::app
