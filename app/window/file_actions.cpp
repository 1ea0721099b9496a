// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/file_actions.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPointer>
#include <QProcess>
#include <QPushButton>
#include <QStandardPaths>

#include "app/settings/preferences.h"
#include "app/window/reporter.h"

namespace howlmap::app {
namespace {

QString filter() { return FileActions::tr("Shows (*.howlmap);;All files (*)"); }

/// Where shows are kept by default; not every home has a folder for documents.
QString documents_folder() {
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QFileInfo(documents).isDir() ? documents : QDir::homePath();
}

Show fresh_show() {
    Show show;
    show.display.units = Preferences::load().units();
    return show;
}

}  // namespace

NameQuestions NameQuestions::by_dialog() {
    return {[](QWidget* parent, const QString& folder) {
                return QFileDialog::getOpenFileName(parent, FileActions::tr("Open a show"), folder, filter());
            },
            [](QWidget* parent, const QString& suggestion) {
                QString name =
                    QFileDialog::getSaveFileName(parent, FileActions::tr("Save the show"), suggestion, filter());
                if (!name.isEmpty() && QFileInfo(name).suffix().isEmpty()) name += QStringLiteral(".howlmap");
                return name;
            }};
}

FileActions::FileActions(QWidget& window, Document& document, FileSession& session)
    : QObject(&window),
      open_beside(
          [](const QString& path) { return QProcess::startDetached(QCoreApplication::applicationFilePath(), {path}); }),
      window_(window),
      document_(document),
      session_(session) {
    connect(&session_, &FileSession::changed_on_disk, this, &FileActions::ask_changed_on_disk);
    connect(&session_, &FileSession::removed_from_disk, this, &FileActions::tell_removed);
}

bool FileActions::done(const Outcome& outcome) {
    if (!outcome) report_trouble(&window_, outcome.error());
    return outcome.has_value();
}

bool FileActions::new_show() {
    if (!may_leave()) return false;
    session_.start_new(fresh_show());
    return true;
}

bool FileActions::new_on_stage(const QString& resource) {
    if (!may_leave() || !done(session_.open_copy(resource))) return false;
    Show show = document_.show();
    show.title.clear();
    show.notes.clear();  // they tell what the stage is for
    show.display.units = Preferences::load().units();
    session_.start_new(std::move(show));
    return true;
}

bool FileActions::open() {
    const QString path = document_.path();
    const QString folder = path.isEmpty() ? documents_folder() : QFileInfo(path).absolutePath();
    const QString name = names.to_open(&window_, folder);
    return !name.isEmpty() && open(name);
}

bool FileActions::open(const QString& path) { return may_leave() && done(session_.open(path)); }

bool FileActions::open_example(const QString& resource) { return may_leave() && done(session_.open_copy(resource)); }

/// What is still in somebody's hand: a drag, or what stands in a field without Enter.
void FileActions::take_what_is_in_hand() {
    if (const QPointer<QWidget> field = window_.focusWidget()) {
        field->clearFocus();
        if (field) field->setFocus();
    }
    if (document_.in_gesture()) document_.end_gesture();
}

bool FileActions::save() {
    take_what_is_in_hand();
    if (document_.read_only() && !document_.path().isEmpty() && !wants_another_name()) return false;
    if (document_.path().isEmpty() || document_.read_only()) return save_as();
    return done(session_.save());
}

/// Why it is not written here, and the way out.
bool FileActions::wants_another_name() {
    QMessageBox box(QMessageBox::Information, tr("Howlmap"),
                    tr("%1 can only be read.").arg(QFileInfo(document_.path()).fileName()), QMessageBox::Cancel,
                    &window_);
    box.setInformativeText(session_.read_only_reason() + u' ' +
                           tr("Save the show under another name to keep the changes."));
    auto* other = box.addButton(tr("Save &as..."), QMessageBox::AcceptRole);
    box.setDefaultButton(other);
    box.exec();
    return box.clickedButton() == other;
}

bool FileActions::save_as() {
    take_what_is_in_hand();
    const QString name = names.to_save(&window_, suggestion());
    return !name.isEmpty() && done(session_.save_as(name));
}

bool FileActions::revert() {
    if (document_.path().isEmpty()) return false;
    if (document_.modified()) {
        QMessageBox box(QMessageBox::Question, tr("Howlmap"), tr("Give up all changes since the last save?"),
                        QMessageBox::Discard | QMessageBox::Cancel, &window_);
        if (box.exec() != QMessageBox::Discard) return false;
    }
    return done(session_.revert());
}

bool FileActions::may_leave() {
    take_what_is_in_hand();
    if (!document_.modified()) return true;
    const QString name =
        document_.path().isEmpty() ? tr("this new show") : QFileInfo(document_.path()).completeBaseName();
    QMessageBox box(QMessageBox::Warning, tr("Howlmap"), tr("Save the changes to %1?").arg(name),
                    QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, &window_);
    box.setInformativeText(tr("If you do not save, they are lost."));
    box.setDefaultButton(QMessageBox::Save);
    switch (box.exec()) {
        case QMessageBox::Save:
            return save();
        case QMessageBox::Discard:
            return true;
        default:
            return false;
    }
}

void FileActions::open_all(const QStringList& paths) {
    if (paths.isEmpty()) return;
    open(paths.first());
    for (const QString& path : paths.mid(1))
        if (!open_beside(path))
            report_trouble(&window_, {tr("No second window could be opened."),
                                      path,
                                      {},
                                      tr("Open the show by the menu of this window, or from the file manager.")});
}

void FileActions::ask_changed_on_disk() {
    if (asking_) return;
    asking_ = true;
    QMessageBox box(QMessageBox::Question, tr("Howlmap"),
                    tr("%1 was changed by another program.").arg(QFileInfo(document_.path()).fileName()),
                    QMessageBox::NoButton, &window_);
    box.setInformativeText(document_.modified() ? tr("Reload it and lose the changes made here, or keep what is here?")
                                                : tr("Reload it, or keep what is here?"));
    const auto* reload = box.addButton(tr("&Reload"), QMessageBox::AcceptRole);
    box.setDefaultButton(box.addButton(tr("&Keep what is here"), QMessageBox::RejectRole));
    box.exec();
    asking_ = false;
    if (box.clickedButton() == reload)
        done(session_.revert());
    else
        session_.keep_mine();
}

void FileActions::tell_removed() {
    report_trouble(&window_, {tr("The file of this show is gone."),
                              document_.path(),
                              {},
                              tr("The show is still here. Save it to write the file again.")});
}

QString FileActions::suggestion() const {
    if (!document_.path().isEmpty()) return document_.path();
    QString name = QString::fromStdString(document_.show().title).simplified();
    for (const QChar c : QStringLiteral("/\\:*?\"<>|")) name.remove(c);
    if (name.isEmpty()) name = tr("show");
    return QDir(documents_folder()).filePath(name + QStringLiteral(".howlmap"));
}

}  // namespace howlmap::app
