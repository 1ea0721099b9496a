// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/first_start.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>
#include <array>

#include "app/settings/preferences.h"
#include "core/report/risks.h"

namespace howlmap::app {

bool first_start() {
    const auto stored = settings();
    const bool first = !stored->value(QStringLiteral("first_start/over"), false).toBool();
    stored->setValue(QStringLiteral("first_start/over"), true);
    return first;
}

Strip::Strip(const char* key, const QString& name, QWidget* parent)
    : QFrame(parent), text_(new QLabel), key_(QStringLiteral("strips/") + QString::fromLatin1(key)) {
    setObjectName(QString::fromLatin1(key));
    setAccessibleName(name);
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::AlternateBase);
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::RichText);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 6, 10, 6);
    row->addWidget(text_, 1);
    setVisible(!dismissed());
}

bool Strip::dismissed() const { return settings()->value(key_, false).toBool(); }

void Strip::dismiss() {
    settings()->setValue(key_, true);
    hide();
}

void Strip::call_back() {
    settings()->remove(key_);
    show();
}

QPushButton* Strip::add_button(const QString& text, const QString& tip) {
    auto* button = new QPushButton(text);
    button->setToolTip(tip);
    button->setAutoDefault(false);
    layout()->addWidget(button);
    return button;
}

CautionStrip::CautionStrip(QWidget* parent) : Strip("cautions", tr("Cautions"), parent) {
    QStringList sentences;
    for (const std::string& sentence : report::caution_sentences())
        sentences.append(QString::fromStdString(sentence).toHtmlEscaped());
    text_->setText(sentences.join(u' '));
    connect(add_button(tr("Understood"), tr("Hides this strip. Help, Cautions brings it back.")), &QPushButton::clicked,
            this, &Strip::dismiss);
}

TourStrip::TourStrip(QWidget* parent) : Strip("tour", tr("Three steps"), parent) {
    back_ = add_button(tr("Back"), tr("The step before."));
    next_ = add_button(tr("Next"), tr("The next step."));
    auto* never = add_button(tr("Not again"), tr("Hides these steps for ever. Help, Three steps brings them back."));
    connect(back_, &QPushButton::clicked, this, [this] { show_step(step_ - 1); });
    connect(next_, &QPushButton::clicked, this, [this] { show_step(step_ + 1); });
    connect(never, &QPushButton::clicked, this, &Strip::dismiss);
    show_step(0);
}

void TourStrip::restart() {
    call_back();
    show_step(0);
}

void TourStrip::show_step(int step) {
    const std::array texts{
        tr("<b>1 of 3: look.</b> The lines on the plan are the loops that come nearest to ringing. The figure at the "
           "bottom right is the "
           "margin to count on: how far all sends may still come up."),
        tr("<b>2 of 3: ask why.</b> Loops lists what rings first. Click the first row: its loudspeaker, its microphone "
           "and its peak light up."),
        tr("<b>3 of 3: cure it.</b> Cures ranks what helps, at equal loudness for the player. Rest on one to see it as "
           "a ghost, apply it, and "
           "undo it if you do not like it."),
    };
    if (step >= static_cast<int>(texts.size())) return dismiss();
    step_ = std::max(0, step);
    text_->setText(texts[static_cast<std::size_t>(step_)]);
    back_->setEnabled(step_ > 0);
    next_->setText(step_ + 1 == static_cast<int>(texts.size()) ? tr("Done") : tr("Next"));
    Q_EMIT step_changed(step_);
}

}  // namespace howlmap::app
