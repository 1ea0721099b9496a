// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/undo_keys.h"

#include <QAbstractItemView>
#include <QCoreApplication>
#include <QDoubleSpinBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace howlmap::app {
namespace {

/// Whether something stands in a field that the show has not got yet.
bool holds_typing(const QLineEdit& edit) {
    const QWidget* around = edit.parentWidget();
    if (const auto* box = qobject_cast<const QDoubleSpinBox*>(around))
        return box->valueFromText(box->text()) != box->value();
    const bool cell = around && qobject_cast<const QAbstractItemView*>(around->parentWidget());
    return cell || edit.isModified();
}

/// Whether a widget would take the keys and do nothing with them.
bool would_swallow(const QObject* widget) {
    if (const auto* box = qobject_cast<const QDoubleSpinBox*>(widget))
        return box->valueFromText(box->text()) == box->value();
    if (const auto* edit = qobject_cast<const QLineEdit*>(widget)) return !holds_typing(*edit);
    if (const auto* text = qobject_cast<const QPlainTextEdit*>(widget)) return !text->document()->isModified();
    return false;
}

}  // namespace

UndoKeys::UndoKeys(QObject* parent) : QObject(parent) { QCoreApplication::instance()->installEventFilter(this); }

bool UndoKeys::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride) return false;
    auto* key = static_cast<QKeyEvent*>(event);
    if (!key->matches(QKeySequence::Undo) && !key->matches(QKeySequence::Redo)) return false;
    if (!would_swallow(watched)) return false;
    event->ignore();
    return true;
}

}  // namespace howlmap::app
