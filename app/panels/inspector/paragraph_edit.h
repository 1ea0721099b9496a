// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPlainTextEdit>

namespace howlmap::app {

/// A few lines of text; entered when the focus leaves. Tab moves on instead of indenting.
class ParagraphEdit : public QPlainTextEdit {
    Q_OBJECT
  public:
    explicit ParagraphEdit(QWidget* parent = nullptr) : QPlainTextEdit(parent) {
        setTabChangesFocus(true);
        setMaximumHeight(fontMetrics().lineSpacing() * 4);
    }
    void show_text(const QString& text) {
        if (text != toPlainText()) setPlainText(text);
        document()->setModified(false);
    }

  Q_SIGNALS:
    void entered(const QString& text);

  protected:
    void focusOutEvent(QFocusEvent* event) override {
        QPlainTextEdit::focusOutEvent(event);
        if (!document()->isModified()) return;
        document()->setModified(false);
        Q_EMIT entered(toPlainText());
    }
};

}  // namespace howlmap::app
