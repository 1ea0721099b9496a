// SPDX-License-Identifier: GPL-3.0-or-later
// The open show. There is always one; opening another replaces it whole. Every edit is a Change on the undo stack.
#pragma once
#include <QObject>
#include <QString>
#include <QUndoStack>
#include <functional>
#include <optional>
#include <set>
#include <string>

#include "core/show/change.h"
#include "core/show/show.h"

namespace howlmap::app {

/// Changes a show in place. Called with a copy; the document works out what differs.
using Edit = std::function<void(Show&)>;

class Document : public QObject {
    Q_OBJECT
  public:
    explicit Document(QObject* parent = nullptr);

    const Show& show() const { return show_; }
    QUndoStack& undo_stack() { return undo_stack_; }
    /// Counts every change of the show; results computed for an older revision are stale.
    quint64 revision() const { return revision_; }

    /// Replaces the whole show: no undo across it, nothing selected, clean.
    void replace(Show show, const QString& path, bool read_only);
    QString path() const { return path_; }  ///< empty: never saved
    void set_path(const QString& path);
    bool read_only() const { return read_only_; }
    bool modified() const { return !undo_stack_.isClean(); }
    /// After a save: this state is the clean one.
    void set_clean() { undo_stack_.setClean(); }
    /// A recovered or imported show differs from the file although its stack is empty.
    void set_unsaved() { undo_stack_.resetClean(); }

    /// One undoable step. An edit that changes nothing is not stacked; returns whether it was.
    bool edit(const QString& name, const Edit& change);

    /// One step back or forth. In the middle of a gesture both give the gesture up instead.
    void undo();
    void redo();

    /// A gesture (drag, fader, typing) previews live and ends as one step. Each update starts again from the show at
    /// its beginning.
    void begin_gesture(const QString& name);
    void update_gesture(const Edit& change);
    bool end_gesture();     ///< stacks it as one step
    void cancel_gesture();  ///< as if it had never begun
    bool in_gesture() const { return gesture_.has_value(); }
    /// The show as it was when the gesture began (the current one outside a gesture).
    const Show& before_gesture() const;

  Q_SIGNALS:
    void replaced();                                     ///< everything is new
    void changed(const std::set<std::string>& touched);  ///< ids that changed; empty: only show-wide values did
    void gesture_ended();
    void path_changed();
    void modified_changed(bool modified);

  private:
    friend class ChangeCommand;
    void swap_in(const Change& change);

    struct Gesture {
        QString name;
        Show before;
    };
    Show show_;
    QUndoStack undo_stack_;
    QString path_;
    bool read_only_ = false;
    quint64 revision_ = 0;
    std::optional<Gesture> gesture_;
};

}  // namespace howlmap::app
