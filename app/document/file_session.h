// SPDX-License-Identifier: GPL-3.0-or-later
// The tie between the document and its file: read, lock, watch, save. Asks nothing; who calls it asks.
#pragma once
#include <QByteArray>
#include <QFileSystemWatcher>
#include <QLockFile>
#include <QObject>
#include <QTimer>
#include <memory>

#include "app/document/document.h"
#include "app/document/trouble.h"

namespace howlmap::app {

class FileSession : public QObject {
    Q_OBJECT
  public:
    explicit FileSession(Document& document, QObject* parent = nullptr);
    ~FileSession() override;

    /// A new show that has never been saved.
    void start_new(Show show = {});
    /// Opens a file; the document is replaced only if all went well.
    Outcome open(const QString& path);
    /// Opens a show that comes with the program (a resource), or any other text, as a read-only copy without a file.
    Outcome open_copy(const QString& resource);
    /// Saves to the document's own file; without one, or read-only, that is trouble.
    Outcome save();
    /// Saves to another file, which becomes the document's own.
    Outcome save_as(const QString& path);
    /// Back to what the file holds; the undo stack is emptied.
    Outcome revert();
    /// After a change on disk that was declined: the document now differs from its file.
    void keep_mine();

    /// Why the document is read-only, empty if it is not.
    QString read_only_reason() const { return read_only_reason_; }

  Q_SIGNALS:
    void changed_on_disk();            ///< somebody else wrote the file; asked once a change
    void removed_from_disk();          ///< the file is gone
    void opened(const QString& path);  ///< also after save_as
    void saved();

  private:
    void take_over(Show show, const QString& path, const QString& read_only_reason, const QByteArray& bytes);
    QString lock(const QString& path);
    Outcome write(const QString& path);
    void watch(const QString& path);
    void look_at_disk();

    Document& document_;
    QString read_only_reason_;
    std::unique_ptr<QLockFile> lock_;
    QFileSystemWatcher watcher_;
    QTimer settle_;
    QByteArray on_disk_;  ///< digest of what the file held when last read or written
};

/// Name of the lock beside a file.
QString lock_name(const QString& path);

}  // namespace howlmap::app
