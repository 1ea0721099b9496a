// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/document.h"

#include <QUndoCommand>
#include <utility>

namespace howlmap::app {

/// One step on the stack: swaps before and after.
class ChangeCommand : public QUndoCommand {
  public:
    ChangeCommand(Document& document, Change change, bool applied)
        : QUndoCommand(QString::fromStdString(change.name)),
          document_(document),
          change_(std::move(change)),
          applied_(applied) {}
    void redo() override {
        if (std::exchange(applied_, false)) return;  // a gesture has already shown its result
        document_.swap_in(change_);
    }
    void undo() override { document_.swap_in(inverted(change_)); }

  private:
    Document& document_;
    Change change_;
    bool applied_;
};

Document::Document(QObject* parent) : QObject(parent) {
    connect(&undo_stack_, &QUndoStack::cleanChanged, this, [this](bool clean) { Q_EMIT modified_changed(!clean); });
}

void Document::replace(Show show, const QString& path, bool read_only) {
    gesture_.reset();
    undo_stack_.clear();
    show_ = std::move(show);
    path_ = path;
    read_only_ = read_only;
    ++revision_;
    Q_EMIT path_changed();
    Q_EMIT replaced();
}

void Document::set_path(const QString& path) {
    path_ = path;
    read_only_ = false;
    Q_EMIT path_changed();
}

bool Document::edit(const QString& name, const Edit& change) {
    if (gesture_) end_gesture();
    Show after = show_;
    change(after);
    Change step = difference(show_, after, name.toStdString());
    if (step.empty()) return false;
    undo_stack_.push(new ChangeCommand(*this, std::move(step), false));
    return true;
}

void Document::undo() { gesture_ ? cancel_gesture() : undo_stack_.undo(); }

void Document::redo() { gesture_ ? cancel_gesture() : undo_stack_.redo(); }

void Document::begin_gesture(const QString& name) {
    if (gesture_) end_gesture();
    gesture_ = Gesture{name, show_};
}

void Document::update_gesture(const Edit& change) {
    Show after = gesture_->before;
    change(after);
    const Change step = difference(show_, after, {});
    if (!step.empty()) swap_in(step);
}

bool Document::end_gesture() {
    if (!gesture_) return false;
    Change step = difference(gesture_->before, show_, gesture_->name.toStdString());
    gesture_.reset();
    const bool any = !step.empty();
    if (any) undo_stack_.push(new ChangeCommand(*this, std::move(step), true));
    Q_EMIT gesture_ended();
    return any;
}

void Document::cancel_gesture() {
    if (!gesture_) return;
    const Change back = difference(show_, gesture_->before, {});
    gesture_.reset();
    if (!back.empty()) swap_in(back);
    Q_EMIT gesture_ended();
}

const Show& Document::before_gesture() const { return gesture_ ? gesture_->before : show_; }

void Document::swap_in(const Change& change) {
    apply(show_, change);
    ++revision_;
    Q_EMIT changed(touched_ids(change));
}

}  // namespace howlmap::app
