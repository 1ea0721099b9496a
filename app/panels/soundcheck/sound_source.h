// SPDX-License-Identifier: GPL-3.0-or-later
// Where live sound comes from: a device, or a file in its place.
#pragma once
#include <QObject>
#include <QStringList>
#include <memory>
#include <optional>
#include <vector>

#include "core/audio/recording.h"

namespace howlmap::app {

class SoundSource : public QObject {
    Q_OBJECT
  public:
    using QObject::QObject;
    virtual double rate() const = 0;  ///< Hz, 8000..192000
    virtual void start() = 0;
    virtual void stop() = 0;

  Q_SIGNALS:
    void samples(const std::vector<float>& mono);  ///< the next ones, full scale 1
    void ended();                                  ///< nothing more will come
    void failed(const QString& why);               ///< one sentence; nothing more will come
};

/// Plays a recording as if it came from a device.
class FileSource : public SoundSource {
    Q_OBJECT
  public:
    /// pace: times real time; 0: as fast as the event loop turns.
    FileSource(RecordingReader reader, double pace, QObject* parent = nullptr);
    double rate() const override { return reader_.rate(); }
    void start() override;
    void stop() override;

  protected:
    void timerEvent(QTimerEvent* event) override;

  private:
    RecordingReader reader_;
    double pace_;
    int timer_ = 0;
    std::vector<float> interleaved_, mono_;
};

/// Names of the sound inputs of this machine; empty where there is none or the program was built without sound.
QStringList sound_inputs();
/// Opens one by its place in the list. Null, and why, when that cannot be done.
std::unique_ptr<SoundSource> open_sound_input(int index, QString* why);
/// Why there is no sound input, and that everything else works.
QString no_sound_input_words();

}  // namespace howlmap::app
