// SPDX-License-Identifier: GPL-3.0-or-later
// ring, tap and hear as they are typed: what goes in as a file comes out as a figure, in words and as JSON.
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <cmath>
#include <sstream>
#include <tuple>

#include "app/command_line/run.h"
#include "core/audio/recording.h"
#include "core/file/read.h"
#include "core/loop/stability.h"
#include "core/show/find.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

constexpr int kSoundRate = 16000;

struct Said {
    int status;
    QString out, err;
    QJsonObject json() const { return QJsonDocument::fromJson(out.toUtf8()).object(); }
};

Said say(const QStringList& arguments) {
    std::ostringstream out, err;
    Console console{out, err};
    const int status = run(request_of(arguments), console);
    return {status, QString::fromStdString(out.str()), QString::fromStdString(err.str())};
}

/// Rises by 40 dB a second from -80 dBFS and is held at -10 dBFS.
std::vector<float> rising(double hz, double seconds) {
    std::vector<float> sound(static_cast<std::size_t>(seconds * kSoundRate));
    for (std::size_t i = 0; i < sound.size(); ++i) {
        const double t = static_cast<double>(i) / kSoundRate;
        sound[i] = static_cast<float>(std::pow(10.0, std::min(-10.0, -80.0 + 40.0 * t) / 20.0) *
                                      std::sin(2.0 * M_PI * hz * t));
    }
    return sound;
}

std::vector<float> tapped() {
    std::vector<float> sound(static_cast<std::size_t>(2.5 * kSoundRate));
    for (const double at : {0.3, 0.9, 1.5})
        for (const auto& [hz, q, size] : {std::tuple{275.0, 15.0, 0.3}, std::tuple{470.0, 28.0, 0.2}})
            for (auto i = static_cast<std::size_t>(at * kSoundRate); i < sound.size(); ++i) {
                const double t = static_cast<double>(i) / kSoundRate - at;
                sound[i] += static_cast<float>(size * std::exp(-M_PI * hz / q * t) * std::sin(2.0 * M_PI * hz * t));
            }
    for (std::size_t i = 0; i < sound.size(); ++i)
        sound[i] += 1e-5f * static_cast<float>(std::sin(0.7 * double(i * i)));
    return sound;
}

}  // namespace

class TestSoundVerbs : public QObject {
    Q_OBJECT
    QTemporaryDir folder_;

    QString path(const QString& name) const { return folder_.filePath(name); }
    QString written(const char* name, const std::vector<float>& samples) const {
        const QString file = path(QLatin1StringView(name));
        if (!write_mono(file.toStdString(), kSoundRate, samples)) qFatal("cannot write");
        return file;
    }
    QString example(const char* name) const {
        const QString file = path(QLatin1StringView(name) + QStringLiteral(".howlmap"));
        if (!QFile::exists(file))
            QFile::copy(QStringLiteral(":/examples/%1.howlmap").arg(QLatin1StringView(name)), file);
        return file;
    }

  private Q_SLOTS:
    void ringNamesTheHowlAndItsLoops() {
        const QString show = example("fiddle-and-wedge");
        const auto rings = stability_of(load_show(show.toStdString())->show, true).rings;
        const double hz = rings.front().hz;
        const QString sound = written("howl.wav", rising(hz, 3.0));
        const Said said =
            say({QStringLiteral("ring"), sound, QStringLiteral("--show"), show, QStringLiteral("--json")});
        QCOMPARE(said.status, 0);
        const QJsonArray found = said.json()[QStringLiteral("rings")].toArray();
        QCOMPARE(found.size(), 1);
        const QJsonObject ring = found[0].toObject();
        QVERIFY(std::abs(ring[QStringLiteral("hz")].toDouble() / hz - 1.0) < 0.001);
        QVERIFY(std::abs(ring[QStringLiteral("growth_db_per_s")].toDouble() - 40.0) < 4.0);
        QCOMPARE(ring[QStringLiteral("loops")].toArray()[0].toObject()[QStringLiteral("input")].toString(),
                 QString::fromStdString(rings.front().strongest_input));
        const Said words = say({QStringLiteral("ring"), sound, QStringLiteral("--show"), show});
        QVERIFY2(words.out.contains(QStringLiteral("One howl")) && words.out.contains(QStringLiteral("could be")),
                 qPrintable(words.out));
        QCOMPARE(say({QStringLiteral("ring"), show}).status, 2);  // no recording
    }
    void tapFindsModesAndPutsThemOnThePickup() {
        const QString sound = written("taps.wav", tapped()), show = example("folk-band-six"),
                      out = path(QStringLiteral("after.howlmap"));
        const QJsonArray modes =
            say({QStringLiteral("tap"), sound, QStringLiteral("--json")}).json()[QStringLiteral("modes")].toArray();
        QCOMPARE(modes.size(), 2);
        for (const auto& [hz, q] : {std::pair{275.0, 15.0}, std::pair{470.0, 28.0}}) {
            const auto same = [hz = hz](const auto& m) {
                return std::abs(m.toObject()[QStringLiteral("hz")].toDouble() / hz - 1.0) < 0.005;
            };
            const auto mode = std::find_if(modes.begin(), modes.end(), same);
            QVERIFY(mode != modes.end());
            QVERIFY(std::abs((*mode).toObject()[QStringLiteral("q")].toDouble() / q - 1.0) < 0.1);
        }
        const auto before = load_show(show.toStdString());
        const auto pickup =
            std::find_if(before->show.inputs.begin(), before->show.inputs.end(),
                         [](const Input& input) { return std::holds_alternative<Pickup>(input.transducer); });
        QVERIFY(pickup != before->show.inputs.end());
        QCOMPARE(say({QStringLiteral("tap"), sound, QStringLiteral("--into"), show, QStringLiteral("--input"),
                      QString::fromStdString(pickup->id), QStringLiteral("-o"), out})
                     .status,
                 0);
        const auto after = load_show(out.toStdString());
        const Input& changed = *find_by_id(after->show.inputs, pickup->id);
        QCOMPARE(std::get<Pickup>(changed.transducer).modes.size(), std::size_t{2});
    }
    /// Far beyond the margin as well as before it: what is said is what happens.
    void hearSaysWhatHappens_data() {
        QTest::addColumn<double>("raise");
        QTest::addColumn<bool>("howls");
        QTest::newRow("far too loud") << 12.0 << true;
        QTest::newRow("as drawn") << 0.0 << true;
        QTest::newRow("turned down") << -6.0 << false;
        QTest::newRow("far down") << -30.0 << false;
    }
    void hearSaysWhatHappens() {
        QFETCH(double, raise);
        QFETCH(bool, howls);
        const QString out = path(QStringLiteral("heard.wav")), show = example("classroom");  // margin -2.9 dB
        const QStringList arguments{QStringLiteral("hear"), show, QStringLiteral("--raise"), QString::number(raise),
                                    QStringLiteral("-o"),   out};
        const Said words = say(arguments);
        QCOMPARE(words.status, 0);
        QVERIFY2(words.out.contains(howls ? QStringLiteral("howls: it grows") : QStringLiteral("No howl")),
                 qPrintable(words.out));
        const QJsonObject json = say(arguments + QStringList{QStringLiteral("--json")}).json();
        QCOMPARE(json[QStringLiteral("growth_db_per_s")].toDouble() > 0.0, howls);
        QVERIFY(json[QStringLiteral("margin_db")].toDouble() < 0.0);
        QVERIFY(RecordingReader::open(out.toStdString()).has_value());
    }
    void hearRefuses() {
        const QString show = example("classroom");
        QCOMPARE(say({QStringLiteral("hear"), show}).status, 2);
        QCOMPARE(
            say({QStringLiteral("hear"), show, QStringLiteral("-o"), QStringLiteral("/nowhere/at/all.wav")}).status, 3);
        QCOMPARE(say({QStringLiteral("hear"), show, QStringLiteral("-o"), path(QStringLiteral("x.wav")),
                      QStringLiteral("--raise"), QStringLiteral("90")})
                     .status,
                 2);
    }
};

HOWLMAP_TEST(TestSoundVerbs)

}  // namespace howlmap::app

#include "test_sound_verbs.moc"
