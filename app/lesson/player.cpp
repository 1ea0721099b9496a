// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/player.h"

#ifdef HOWLMAP_MULTIMEDIA
#include <QAudioDevice>
#include <QAudioSink>
#include <QMediaDevices>
#endif
#include <QTimer>

#include "app/lesson/sound_feed.h"

namespace howlmap::app {
namespace {

constexpr int kPlayRate = 48000, kFadeOutMs = 250;

#ifdef HOWLMAP_MULTIMEDIA
QAudioFormat format() {
    QAudioFormat out;
    out.setSampleRate(kPlayRate);
    out.setChannelCount(1);
    out.setSampleFormat(QAudioFormat::Float);
    return out;
}
#endif

}  // namespace

QString why_no_sound() {
#ifdef HOWLMAP_MULTIMEDIA
    const QAudioDevice device = QMediaDevices::defaultAudioOutput();
    if (device.isNull())
        return Player::tr("This machine has no sound device. A sound file can still be written: howlmap hear.");
    if (!device.isFormatSupported(format()))
        return Player::tr("%1 can not play 48 kHz. A sound file can still be written: howlmap hear.")
            .arg(device.description());
    return {};
#else
    return Player::tr("This program was built without sound. A sound file can still be written: howlmap hear.");
#endif
}

QString sound_caution() {
    return Player::tr(
        "Take headphones off and turn the volume down first. A howl is loud and comes suddenly; it fades in and is "
        "held "
        "below half of full scale, but your amplifier makes it as loud as it is set.");
}

Player::Player(QObject* parent) : QObject(parent) {}

Player::~Player() {
#ifdef HOWLMAP_MULTIMEDIA
    delete sink_;
#endif
}

void Player::set_state(State state) {
    if (state == state_) return;
    state_ = state;
    Q_EMIT state_changed();
}

void Player::play(const Show& show, HearOptions options) {
    stop();
    if (const QString why = why_no_sound(); !why.isEmpty()) {
        Q_EMIT told(why);
        return;
    }
    options.rate_hz = kPlayRate;
    raise_db_ = options.raise_db;
    set_state(State::preparing);
    worker_.restart([this, show, options](const Job& job) -> Worker::Deliver {
        auto sound = LoopSound::prepare(show, options, job);
        if (job.cancelled()) return {};
        auto kept = sound ? std::make_shared<LoopSound>(std::move(*sound)) : nullptr;
        return [this, kept] { start(kept); };
    });
}

void Player::start(std::shared_ptr<LoopSound> sound) {
    if (!sound) {
        set_state(State::quiet);
        Q_EMIT told(tr("There is no loop to hear: no microphone or pickup is sent to a loudspeaker."));
        return;
    }
#ifdef HOWLMAP_MULTIMEDIA
    sound->set_raise_db(raise_db_);
    feed_ = std::make_unique<SoundFeed>(std::move(*sound));
    sink_ = new QAudioSink(QMediaDevices::defaultAudioOutput(), format(), this);
    sink_->start(feed_.get());
    if (sink_->error() != QAudio::NoError) {
        Q_EMIT told(tr("The sound device could not be opened."));
        return stop();
    }
    set_state(State::playing);
#endif
}

void Player::stop() {
    worker_.cancel();
    set_state(State::quiet);
#ifdef HOWLMAP_MULTIMEDIA
    if (!feed_) return;
    feed_->fade_out();
    // The rest is heard as it fades; then both go.
    QAudioSink* sink = std::exchange(sink_, nullptr);
    sink->setParent(nullptr);
    QTimer::singleShot(kFadeOutMs, sink, [sink, feed = std::shared_ptr<SoundFeed>(std::move(feed_))] {
        sink->stop();
        sink->deleteLater();
    });
#endif
}

void Player::set_raise_db(double db) {
    raise_db_ = db;
    if (feed_) feed_->set_raise_db(db);
}

}  // namespace howlmap::app
