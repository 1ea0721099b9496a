// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/members_button.h"

#include <QMenu>
#include <QStyle>

namespace howlmap::app {

MembersButton::MembersButton(QWidget* parent) : QPushButton(parent) {
    setMenu(new QMenu(this));
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void MembersButton::fill(const QList<Choice>& choices) {
    choices_ = choices;
    menu()->clear();
    for (const Choice& choice : choices) {
        QAction* one = menu()->addAction(choice.label);
        one->setData(choice.value);
        one->setCheckable(true);
        // Not at once: what is set may fill this menu anew.
        connect(
            one, &QAction::triggered, this,
            [this, value = choice.value.toString()](bool on) { Q_EMIT ticked(value, on); }, Qt::QueuedConnection);
    }
}

void MembersButton::show_members(const QList<Choice>& choices, const QStringList& members, const QString& words) {
    if (choices != choices_) fill(choices);
    for (QAction* one : menu()->actions()) one->setChecked(members.contains(one->data().toString()));
    setEnabled(!choices.isEmpty());
    words_ = words;
    setAccessibleDescription(words);
    fit_words();
}

void MembersButton::resizeEvent(QResizeEvent* event) {
    QPushButton::resizeEvent(event);
    fit_words();
}

/// Long lists end in dots instead of making the panel wide.
void MembersButton::fit_words() {
    const int frame = 2 * style()->pixelMetric(QStyle::PM_ButtonMargin, nullptr, this) +
                      style()->pixelMetric(QStyle::PM_MenuButtonIndicator, nullptr, this);
    QString text = fontMetrics().elidedText(words_, Qt::ElideRight, std::max(0, width() - frame));
    setText(text.replace(QLatin1Char('&'), QStringLiteral("&&")));
}

}  // namespace howlmap::app
