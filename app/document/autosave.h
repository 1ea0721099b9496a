// SPDX-License-Identifier: GPL-3.0-or-later
// A copy aside of what has not been saved, never over the user's own file: written when the hands rest, gone when the
// show is saved or closed on purpose.
#pragma once
#include <QDateTime>
#include <QElapsedTimer>
#include <QList>
#include <QLockFile>
#include <QObject>
#include <QTimer>

#include "app/document/document.h"
#include "app/document/trouble.h"
#include "app/document/worker.h"

namespace howlmap::app {

class Autosave : public QObject {
    Q_OBJECT
  public:
    /// Waits for this much rest after an edit, but no longer than `at_most_ms` after the first unsaved one.
    explicit Autosave(Document& document, int rest_ms = 3000, int at_most_ms = 20000, QObject* parent = nullptr);
    ~Autosave() override;

    /// Writes now if there is something unsaved (waits until it is on disk).
    void write_now();
    /// Nothing is worth keeping any more: after a save, or when the user discards.
    void discard();
    QString file() const { return file_; }

    static QString folder();

  Q_SIGNALS:
    void failed(const QString& reason);

  private:
    void edited();
    void write();

    Document& document_;
    int at_most_ms_;
    QString file_;
    QLockFile lock_;
    QTimer rest_;
    QElapsedTimer first_edit_;
    Worker worker_;
};

/// What a run that ended badly left behind.
struct Recoverable {
    QString file;  ///< of the copy aside
    QString path;  ///< of the show it belongs to; empty: never saved
    QString title;
    QDateTime time;
};

/// Copies whose writer is no longer alive, newest first. Unreadable ones are left where they are and not listed.
QList<Recoverable> recoverable();
/// The show of a copy.
tl::expected<Show, Trouble> read_recoverable(const Recoverable& copy);
void remove_recoverable(const Recoverable& copy);

}  // namespace howlmap::app
