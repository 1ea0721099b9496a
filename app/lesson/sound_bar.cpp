// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/sound_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "app/lesson/player.h"
#include "app/settings/icons.h"
#include "app/settings/number_box.h"

namespace howlmap::app {

SoundBar::SoundBar(std::function<Wish()> wish, QWidget* parent)
    : QWidget(parent),
      wish_(std::move(wish)),
      player_(new Player(this)),
      play_(new QPushButton(icon(QStringLiteral("play")), tr("Hea&r it"))),
      stop_(new QPushButton(icon(QStringLiteral("stop")), tr("&Stop"))),
      raise_(new NumberBox),
      words_(new QLabel) {
    play_->setObjectName(QStringLiteral("hear"));
    stop_->setObjectName(QStringLiteral("stop"));
    words_->setObjectName(QStringLiteral("sound_words"));
    words_->setWordWrap(true);
    play_->setToolTip(tr("Plays a phrase through the loop as it is set; it howls if it must."));
    stop_->setToolTip(tr("Silence at once."));
    raise_->setObjectName(QStringLiteral("raise"));
    raise_->setRange(-60.0, 60.0);
    raise_->setDecimals(1);
    raise_->setSuffix(tr(" dB"));
    raise_->setPrefix(tr("raised by "));
    raise_->setAccessibleName(tr("How far all sends are raised while it plays"));
    raise_->setToolTip(
        tr("Raises all sends while it plays; the show stays as it is. At the margin it starts to howl."));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(play_);
    row->addWidget(stop_);
    row->addWidget(raise_);
    row->addWidget(words_, 1);
    connect(play_, &QPushButton::clicked, this, &SoundBar::pressed);
    connect(stop_, &QPushButton::clicked, this, &SoundBar::stop);
    connect(raise_, &QDoubleSpinBox::valueChanged, player_, &Player::set_raise_db);
    connect(player_, &Player::state_changed, this, &SoundBar::refresh);
    connect(player_, &Player::told, words_, &QLabel::setText);
    refresh();
}

double SoundBar::raise_db() const { return raise_->value(); }

void SoundBar::pressed() {
    if (!warned_) {
        warned_ = true;
        words_->setText(sound_caution());
        play_->setText(tr("I have: play"));
        return;
    }
    words_->clear();
    play_->setText(tr("Hea&r it"));
    Wish wish = wish_();
    wish.options.raise_db = raise_->value();
    player_->play(wish.show, std::move(wish.options));
}

void SoundBar::stop() { player_->stop(); }

void SoundBar::hideEvent(QHideEvent* event) {
    stop();
    QWidget::hideEvent(event);
}

void SoundBar::refresh() {
    play_->setEnabled(player_->state() != Player::State::preparing);
    stop_->setEnabled(player_->state() != Player::State::quiet);
    if (player_->state() == Player::State::preparing) words_->setText(tr("Getting ready..."));
    if (player_->state() == Player::State::playing) words_->setText(tr("Playing."));
}

}  // namespace howlmap::app
