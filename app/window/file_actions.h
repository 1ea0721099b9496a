// SPDX-License-Identifier: GPL-3.0-or-later
// New, Open, Save, Save As, Revert, Close: what has to be asked is asked here, what is done is done by the file
// session.
#pragma once
#include <QObject>
#include <QStringList>
#include <functional>

#include "app/document/file_session.h"

class QWidget;

namespace howlmap::app {

/// Where file names come from: the dialogs of the desktop, or a test.
struct NameQuestions {
    std::function<QString(QWidget* parent, const QString& folder)> to_open;
    std::function<QString(QWidget* parent, const QString& suggestion)> to_save;
    static NameQuestions by_dialog();
};

class FileActions : public QObject {
    Q_OBJECT
  public:
    FileActions(QWidget& window, Document& document, FileSession& session);

    NameQuestions names = NameQuestions::by_dialog();
    /// Opens a show in a window of its own: another process of this program. False where it does not start.
    std::function<bool(const QString& path)> open_beside;

    // All say whether it was done; where unsaved changes would be lost, the person is asked first.
    bool new_show();
    bool new_on_stage(const QString& resource);
    bool open();
    bool open(const QString& path);
    bool open_example(const QString& resource);
    bool save();
    bool save_as();
    bool revert();
    /// Whether the document may go: nothing unsaved, or saved now, or given up on purpose.
    bool may_leave();

    /// Opens the first file here and each further one in a window of its own.
    void open_all(const QStringList& paths);

  private:
    void take_what_is_in_hand();
    bool done(const Outcome& outcome);
    void ask_changed_on_disk();
    void tell_removed();
    bool wants_another_name();
    QString suggestion() const;

    QWidget& window_;
    Document& document_;
    FileSession& session_;
    bool asking_ = false;
};

}  // namespace howlmap::app
