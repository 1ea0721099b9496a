// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/sound_source.h"

#include <QCoreApplication>
#include <QTimerEvent>
#include <utility>

#ifdef HOWLMAP_MULTIMEDIA
#include <QAudioDevice>
#include <QAudioSource>
#include <QMediaDevices>
#endif

namespace howlmap::app {
namespace {

constexpr int kTickMs = 40;

void mix_down(const std::vector<float>& interleaved, std::size_t frames, std::size_t channels,
              std::vector<float>& mono) {
    mono.resize(frames);
    for (std::size_t i = 0; i < frames; ++i) {
        float sum = 0.0f;
        for (std::size_t c = 0; c < channels; ++c) sum += interleaved[i * channels + c];
        mono[i] = sum / static_cast<float>(channels);
    }
}

}  // namespace

FileSource::FileSource(RecordingReader reader, double pace, QObject* parent)
    : SoundSource(parent), reader_(std::move(reader)), pace_(pace) {
    const double seconds = kTickMs / 1000.0 * (pace_ > 0.0 ? pace_ : 1.0);
    interleaved_.resize(static_cast<std::size_t>(seconds * reader_.rate()) *
                        static_cast<std::size_t>(reader_.channels()));
}

void FileSource::start() {
    if (!timer_) timer_ = startTimer(pace_ > 0.0 ? kTickMs : 0);
}

void FileSource::stop() {
    if (timer_) killTimer(std::exchange(timer_, 0));
}

void FileSource::timerEvent(QTimerEvent* event) {
    if (event->timerId() != timer_) return;
    const auto got = reader_.read(interleaved_);
    if (!got || *got == 0) {
        stop();
        if (got)
            Q_EMIT ended();
        else
            Q_EMIT failed(QString::fromStdString(got.error()));
        return;
    }
    mix_down(interleaved_, static_cast<std::size_t>(*got), static_cast<std::size_t>(reader_.channels()), mono_);
    Q_EMIT samples(mono_);
}

#ifdef HOWLMAP_MULTIMEDIA
namespace {

/// A sound card, microphone or interface. Floats, mixed down to one channel.
class DeviceSource : public SoundSource {
  public:
    DeviceSource(const QAudioDevice& device, const QAudioFormat& format)
        : format_(format), source_(std::make_unique<QAudioSource>(device, format)) {}
    ~DeviceSource() override { source_->stop(); }
    double rate() const override { return format_.sampleRate(); }
    void start() override {
        stream_ = source_->start();
        if (!stream_ || source_->error() != QAudio::NoError) {
            Q_EMIT failed(QCoreApplication::translate("soundcheck", "The sound input could not be opened."));
            return;
        }
        connect(stream_, &QIODevice::readyRead, this, [this] { take(stream_->readAll()); });
        connect(source_.get(), &QAudioSource::stateChanged, this, [this](QAudio::State state) {
            if (state == QAudio::StoppedState && source_->error() != QAudio::NoError)
                Q_EMIT failed(QCoreApplication::translate("soundcheck", "The sound input has gone away."));
        });
    }
    void stop() override {
        disconnect(source_.get(), nullptr, this, nullptr);
        source_->stop();
    }

  private:
    void take(const QByteArray& bytes) {
        rest_ += bytes;
        const int frame = format_.bytesPerFrame(), sample = format_.bytesPerSample();
        const auto frames = static_cast<std::size_t>(rest_.size() / frame);
        const auto channels = static_cast<std::size_t>(format_.channelCount());
        interleaved_.resize(frames * channels);
        for (std::size_t i = 0; i < interleaved_.size(); ++i)
            interleaved_[i] = format_.normalizedSampleValue(rest_.constData() + static_cast<qsizetype>(i) * sample);
        rest_.remove(0, static_cast<qsizetype>(frames) * frame);
        mix_down(interleaved_, frames, channels, mono_);
        Q_EMIT samples(mono_);
    }

    QAudioFormat format_;
    std::unique_ptr<QAudioSource> source_;
    QIODevice* stream_ = nullptr;
    QByteArray rest_;
    std::vector<float> interleaved_, mono_;
};

}  // namespace

QStringList sound_inputs() {
    QStringList names;
    for (const QAudioDevice& device : QMediaDevices::audioInputs()) names.append(device.description());
    return names;
}

std::unique_ptr<SoundSource> open_sound_input(int index, QString* why) {
    const QAudioDevice device = QMediaDevices::audioInputs().value(index);
    if (device.isNull()) {
        *why = no_sound_input_words();
        return nullptr;
    }
    QAudioFormat format = device.preferredFormat();
    if (!format.isValid() || format.sampleRate() < kLowestRate || format.sampleRate() > kHighestRate) {
        *why = QCoreApplication::translate("soundcheck", "%1 offers no rate between 8 and 192 kHz.")
                   .arg(device.description());
        return nullptr;
    }
    return std::make_unique<DeviceSource>(device, format);
}
#else
QStringList sound_inputs() { return {}; }
std::unique_ptr<SoundSource> open_sound_input(int, QString* why) {
    *why = no_sound_input_words();
    return nullptr;
}
#endif

QString no_sound_input_words() {
    return QCoreApplication::translate("soundcheck",
                                       "This machine offers no sound input. Everything else works: record elsewhere "
                                       "and load the file, or plug a sound input in and look again.");
}

}  // namespace howlmap::app
