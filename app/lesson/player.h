// SPDX-License-Identifier: GPL-3.0-or-later
// Lets loops be heard through the sound device of the machine, where there is one.
#pragma once
#include <QObject>
#include <memory>

#include "app/document/worker.h"
#include "core/audio/loop_sound.h"

class QAudioSink;

namespace howlmap::app {

class SoundFeed;

class Player : public QObject {
    Q_OBJECT
  public:
    enum class State { quiet, preparing, playing };

    explicit Player(QObject* parent = nullptr);
    ~Player() override;

    State state() const { return state_; }
    /// Prepares in another thread and then plays until it is stopped. What can not be had is told.
    void play(const Show& show, HearOptions options);
    void stop();
    /// While it plays, too.
    void set_raise_db(double db);

  Q_SIGNALS:
    void state_changed();
    void told(const QString& sentence);

  private:
    void start(std::shared_ptr<LoopSound> sound);
    void set_state(State state);

    State state_ = State::quiet;
    double raise_db_ = 0.0;
    std::unique_ptr<SoundFeed> feed_;
    QAudioSink* sink_ = nullptr;
    Worker worker_;
};

/// Why nothing can be played on this machine; empty where it can.
QString why_no_sound();
/// What is said before anything is played.
QString sound_caution();

}  // namespace howlmap::app
