// SPDX-License-Identifier: GPL-3.0-or-later
#include <sndfile.h>
#include <sys/stat.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <cmath>
#include <limits>

#include "core/audio/recording.h"
#include "core/audio/ring_recording.h"
#include "core/units/level.h"
#include "tests/support/registry.h"
#include "tests/support/sounds.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {

std::string in(const QTemporaryDir& dir, const char* name) {
    return dir.filePath(QString::fromUtf8(name)).toStdString();
}

void write_with(const std::string& path, int format, int rate, int channels, const Sound& interleaved) {
    SF_INFO info{};
    info.samplerate = rate, info.channels = channels, info.format = format;
    SNDFILE* file = sf_open(path.c_str(), SFM_WRITE, &info);
    QVERIFY(file);
    sf_write_float(file, interleaved.data(), static_cast<sf_count_t>(interleaved.size()));
    sf_close(file);
}

// 440 Hz rising 20 dB/s to -10 dB, then held, at six seconds.
Sound howl(double rate) {
    Sound out = silence(6.0, rate);
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double t = static_cast<double>(i) / rate;
        out[i] = static_cast<float>(db_to_ratio(std::min(-10.0, -80.0 + 20.0 * t)) * std::sin(2 * M_PI * 440.0 * t));
    }
    return out;
}

}  // namespace

class RecordingTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void roundTrip() {
        QTemporaryDir dir;
        Sound sound;
        for (int i = 0; i < 5000; ++i) sound.push_back(static_cast<float>(std::sin(0.01 * i) * 0.7));
        QVERIFY(write_mono(in(dir, "a.wav"), 44100, sound).has_value());
        const auto back = read_mono(in(dir, "a.wav"), 10.0);
        QVERIFY(back.has_value());
        QCOMPARE(back->rate, 44100);
        QCOMPARE(back->samples.size(), sound.size());
        for (std::size_t i = 0; i < sound.size(); ++i) QVERIFY(std::abs(back->samples[i] - sound[i]) < 2e-7f);
        QVERIFY(!QFile::exists(dir.filePath(QStringLiteral("a.wav.part"))));
    }

    void formatsRatesAndChannels_data() {
        QTest::addColumn<int>("format");
        QTest::addColumn<int>("rate");
        QTest::addColumn<int>("channels");
        QTest::addRow("wav 16") << (SF_FORMAT_WAV | SF_FORMAT_PCM_16) << 48000 << 1;
        QTest::addRow("wav float stereo") << (SF_FORMAT_WAV | SF_FORMAT_FLOAT) << 96000 << 2;
        QTest::addRow("flac stereo") << (SF_FORMAT_FLAC | SF_FORMAT_PCM_24) << 44100 << 2;
        QTest::addRow("aiff") << (SF_FORMAT_AIFF | SF_FORMAT_PCM_16) << 22050 << 1;
        QTest::addRow("8 kHz") << (SF_FORMAT_WAV | SF_FORMAT_PCM_16) << 8000 << 1;
        QTest::addRow("192 kHz, five channels") << (SF_FORMAT_WAV | SF_FORMAT_PCM_24) << 192000 << 5;
    }
    void formatsRatesAndChannels() {
        QFETCH(int, format);
        QFETCH(int, rate);
        QFETCH(int, channels);
        QTemporaryDir dir;
        const Sound mono = howl(rate);
        Sound many(mono.size() * static_cast<std::size_t>(channels));
        for (std::size_t i = 0; i < mono.size(); ++i)
            for (int c = 0; c < channels; ++c)
                many[i * static_cast<std::size_t>(channels) + static_cast<std::size_t>(c)] =
                    mono[i] / static_cast<float>(1 + c);
        write_with(in(dir, "x"), format, rate, channels, many);
        auto reader = RecordingReader::open(in(dir, "x"));
        QVERIFY(reader.has_value());
        QCOMPARE(reader->rate(), rate);
        QCOMPARE(reader->channels(), channels);
        double last = 0.0;
        const auto found = find_howls(std::move(*reader), {{}, [&](double f) { last = f; }});
        QVERIFY(found.has_value());
        QCOMPARE(found->howls.size(), std::size_t{1});  // all channels hold the same
        QVERIFY(std::abs(found->howls[0].hz - 440.0) < 0.1);
        QVERIFY(std::abs(found->howls[0].growth_db_per_s - 20.0) < 0.5);
        QVERIFY(std::abs(found->howls[0].level_dbfs + 10.0) < 0.3);
        QVERIFY(std::abs(found->duration_s - 6.0) < 0.001);
        QCOMPARE(last, 1.0);
    }

    void refusedInASentence() {
        QTemporaryDir dir;
        QVERIFY(QString::fromStdString(RecordingReader::open(in(dir, "absent.wav")).error())
                    .contains("absent.wav: cannot be read"));
        QFile text(dir.filePath("text.wav"));
        QVERIFY(text.open(QIODevice::WriteOnly) && text.write("this is no sound") > 0);
        text.close();
        QVERIFY(!RecordingReader::open(in(dir, "text.wav")).has_value());
        QVERIFY(RecordingReader::open(dir.path().toStdString()).error().find("folder") != std::string::npos);
        QCOMPARE(::mkfifo(in(dir, "pipe.wav").c_str(), 0600), 0);  // nobody ever writes to it
        QVERIFY(RecordingReader::open(in(dir, "pipe.wav")).error().find("regular file") != std::string::npos);
        write_with(in(dir, "slow.wav"), SF_FORMAT_WAV | SF_FORMAT_PCM_16, 4000, 1, Sound(100, 0.1f));
        QVERIFY(RecordingReader::open(in(dir, "slow.wav"))
                    .error()
                    .find("found 4000 samples a second, expected 8000 to 192000") != std::string::npos);
        Sound broken(1000, 0.1f);
        broken[500] = std::numeric_limits<float>::quiet_NaN();
        write_with(in(dir, "nan.wav"), SF_FORMAT_WAV | SF_FORMAT_FLOAT, 48000, 1, broken);
        auto reader = RecordingReader::open(in(dir, "nan.wav"));
        QVERIFY(reader.has_value());
        QVERIFY(find_howls(std::move(*reader)).error().find("no numbers") != std::string::npos);
        QVERIFY(!read_mono(in(dir, "nan.wav"), 10.0).has_value());
        QVERIFY(write_mono(in(dir, "long.wav"), 8000, Sound(80001, 0.0f)).has_value());
        QVERIFY(read_mono(in(dir, "long.wav"), 10.0).error().find("expected 10 s at most") != std::string::npos);
    }

    /// A file of floats may hold any size; what is said of it stays a number.
    void soundsBeyondAllMeasure() {
        QTemporaryDir dir;
        for (const float size : {1e-30f, 1e15f, 1e30f, 3e38f}) {
            Sound sound = howl(48000);
            for (float& x : sound) x *= size;
            write_with(in(dir, "huge.wav"), SF_FORMAT_WAV | SF_FORMAT_FLOAT, 48000, 1, sound);
            const auto found = find_howls(std::move(*RecordingReader::open(in(dir, "huge.wav"))));
            QVERIFY(found.has_value());
            for (const Howl& howl : found->howls) {
                QVERIFY2(std::isfinite(howl.hz) && howl.hz > 0.0, qPrintable(QString::number(size)));
                QVERIFY(std::isfinite(howl.level_dbfs) && std::isfinite(howl.growth_db_per_s));
                QVERIFY(std::isfinite(howl.from_s) && std::isfinite(howl.to_s));
            }
        }
    }

    void writingGoesWrong() {
        QTemporaryDir dir;
        QVERIFY(!RecordingWriter::create(in(dir, "no/such/folder.wav"), 48000, 1).has_value());
        QVERIFY(!RecordingWriter::create(dir.path().toStdString(), 48000, 1).has_value());
        QVERIFY(write_mono(in(dir, "keep.wav"), 48000, Sound(100, 0.25f)).has_value());
        {
            auto writer = RecordingWriter::create(in(dir, "keep.wav"), 48000, 1);
            QVERIFY(writer.has_value());
            QVERIFY(writer->write(Sound(5000, 0.5f)).has_value());
        }  // never closed: the old file must be whole
        const auto kept = read_mono(in(dir, "keep.wav"), 1.0);
        QVERIFY(kept.has_value() && kept->samples.size() == 100);
        QCOMPARE(QDir(dir.path()).entryList(QDir::Files).size(), 1);
    }

    void cancelled() {
        QTemporaryDir dir;
        QVERIFY(write_mono(in(dir, "a.wav"), 48000, howl(48000)).has_value());
        std::stop_source stop;
        stop.request_stop();
        const auto found = find_howls(std::move(*RecordingReader::open(in(dir, "a.wav"))), {stop.get_token(), {}});
        QVERIFY(!found && found.error() == "cancelled");
    }
};

HOWLMAP_TEST(RecordingTest)
#include "recording_test.moc"
