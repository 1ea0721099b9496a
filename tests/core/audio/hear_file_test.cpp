// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFile>
#include <QTemporaryDir>
#include <cmath>

#include "core/audio/hear.h"
#include "core/audio/recording.h"
#include "core/audio/resample.h"
#include "core/audio/spectral_top.h"
#include "core/loop/stability.h"
#include "core/units/level.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {

Show small_show() {
    Show show;
    show.stage.surfaces.floor.absorption = 0.2;
    Loudspeaker l;
    l.id = "w", l.position = {0, 0, 0.3}, l.directivity = Coverage{}, l.response.low_hz = 80.0;
    Input i;
    i.id = "m", i.position = {0.1, 1.2, 1.4}, i.spectrum = SpectrumName::strings;
    Mix m;
    Send s;
    m.id = "x", m.loudspeakers = {"w"}, s.input = "m", s.level_db = 96, m.sends = {s};
    show.loudspeakers = {l}, show.inputs = {i}, show.mixes = {m};
    return show;
}

std::vector<float> tone(double hz, double rate, double seconds) {
    std::vector<float> out(static_cast<std::size_t>(rate * seconds));
    for (std::size_t i = 0; i < out.size(); ++i)
        out[i] = static_cast<float>(0.5 * std::sin(2 * M_PI * hz * static_cast<double>(i) / rate));
    return out;
}

}  // namespace

class HearFileTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void writesWhatItSays() {
        QTemporaryDir dir;
        const std::filesystem::path path = dir.filePath(QStringLiteral("out.wav")).toStdString();
        const Show show = small_show();
        const Stability stability = stability_of(show, true);
        HearOptions options;
        options.raise_db = *stability.margin_db + 1.0;
        options.seconds = 6.0;
        const auto result = hear(show, options, path);
        QVERIFY2(result.has_value(), result ? "" : result.error().message.c_str());
        QVERIFY(std::abs(*result->margin_db - *stability.margin_db) < 1e-6);
        QCOMPARE(result->raised_db, options.raise_db);
        // Held by the amplifier, the howl sits where the analysis has the ring.
        QVERIFY(std::abs(*result->dominant_hz / stability.rings.front().hz - 1.0) < 0.001);
        QVERIFY(*result->growth_db_per_s > 0.0);
        const auto sound = read_mono(path, 60.0);
        QVERIFY(sound.has_value());
        QCOMPARE(sound->rate, 48000);
        QCOMPARE(static_cast<double>(sound->samples.size()) / 48000.0, result->seconds);
        QVERIFY(std::abs(dominant_hz(sound->samples, 0.0, 48000) / stability.rings.front().hz - 1.0) < 0.001);
        for (const float x : sound->samples) QVERIFY(std::abs(x) <= 0.5f);
    }

    void aboveTheMarginItDies() {
        QTemporaryDir dir;
        HearOptions options;
        options.raise_db = *stability_of(small_show(), false).margin_db - 2.0, options.seconds = 4.0;
        const auto result = hear(small_show(), options, dir.filePath(QStringLiteral("out.wav")).toStdString());
        QVERIFY(result.has_value());
        QVERIFY(*result->growth_db_per_s < 0.0);
    }

    void errorsByKind() {
        QTemporaryDir dir;
        const std::filesystem::path good = dir.filePath(QStringLiteral("out.wav")).toStdString();
        HearOptions quick;
        quick.seconds = 1.0;
        auto result = hear(Show{}, quick, good);
        QVERIFY(!result && result.error().kind == HearError::Kind::input);
        result = hear(small_show(), quick, dir.filePath(QStringLiteral("no/folder/out.wav")).toStdString());
        QVERIFY(!result && result.error().kind == HearError::Kind::output);
        HearOptions other = quick;
        other.input = "nobody";
        result = hear(small_show(), other, good);
        QVERIFY(!result && result.error().message.find("nobody") != std::string::npos);
        std::stop_source stop;
        stop.request_stop();
        result = hear(small_show(), quick, good, {stop.get_token(), {}});
        QVERIFY(!result && result.error().kind == HearError::Kind::cancelled);
        QVERIFY(!QFile::exists(dir.filePath(QStringLiteral("out.wav"))));
    }

    void aSourceAtAnotherRate() {
        QTemporaryDir dir;
        const std::filesystem::path path = dir.filePath(QStringLiteral("in.wav")).toStdString();
        QVERIFY(write_mono(path, 44100, tone(1000.0, 44100, 2.0)).has_value());
        const auto source = read_source(path);
        QVERIFY(source.has_value());
        QCOMPARE(source->size(), std::size_t{96000});
        QVERIFY(std::abs(dominant_hz(*source, 0.0, 48000) - 1000.0) < 0.05);
        QVERIFY(!read_source(dir.filePath(QStringLiteral("absent.wav")).toStdString()).has_value());
    }

    void resampling_data() {
        QTest::addColumn<double>("from");
        QTest::addColumn<double>("to");
        QTest::addColumn<double>("hz");
        for (const auto& [from, to] :
             {std::pair{44100.0, 48000.0}, {96000.0, 48000.0}, {8000.0, 48000.0}, {192000.0, 48000.0}})
            for (const double share : {0.01, 0.2, 0.42})
                QTest::addRow("%g to %g, %g", from, to, share) << from << to << share * std::min(from, to);
    }
    void resampling() {
        QFETCH(double, from);
        QFETCH(double, to);
        QFETCH(double, hz);
        const auto out = resampled(tone(hz, from, 0.5), from, to), wanted = tone(hz, to, 0.5);
        double worst = 0.0;
        for (std::size_t i = out.size() / 4; i < out.size() * 3 / 4; ++i)
            worst = std::max(worst, static_cast<double>(std::abs(out[i] - wanted[i])));
        QVERIFY2(worst < 0.5 * 0.012, qPrintable(QString::number(worst)));  // 0.1 dB
    }
    void whatDoesNotFitIsStopped() {
        const auto out = resampled(tone(26000.0, 96000, 0.5), 96000, 48000);
        double most = 0.0;
        for (std::size_t i = out.size() / 4; i < out.size() * 3 / 4; ++i)
            most = std::max(most, static_cast<double>(std::abs(out[i])));
        QVERIFY2(most < 0.5e-3, qPrintable(QString::number(most)));
    }
};

HOWLMAP_TEST(HearFileTest)
#include "hear_file_test.moc"
