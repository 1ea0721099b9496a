// SPDX-License-Identifier: GPL-3.0-or-later
// What is heard of the examples is what is computed of them: where it rings, how fast that builds up just past the
// margin, and that it dies away before it. Two roads, one in time, one in frequency.
#include <QDir>
#include <QFile>
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/audio/loop_sound.h"
#include "core/file/read.h"
#include "core/loop/stability.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {

Show example(const QString& name) {
    QFile file(QStringLiteral(":/examples/") + name);
    if (!file.open(QIODevice::ReadOnly)) return {};
    auto read = read_show(file.readAll().toStdString());
    return read ? std::move(read->show) : Show{};
}

Show raised(Show show, double db) {
    for (Mix& mix : show.mixes)
        for (Send& send : mix.sends) send.level_db += db;
    return show;
}

}  // namespace

class TestHearExamples : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void rings_where_and_as_fast_as_computed_data() {
        QTest::addColumn<QString>("name");
        for (const QString& name : QDir(QStringLiteral(":/examples")).entryList({QStringLiteral("*.howlmap")}))
            QTest::newRow(qPrintable(name)) << name;
    }
    void rings_where_and_as_fast_as_computed() {
        QFETCH(QString, name);
        const Show show = example(name);
        const auto margin = stability_of(show, false).margin_db;
        QVERIFY(margin.has_value());
        // Just past the margin one ring alone grows, and first-order growth is exact enough.
        const double beyond = 0.3;
        const Stability predicted = stability_of(raised(show, *margin + beyond), true);
        const Ring& ring = *std::ranges::max_element(predicted.rings, {}, &Ring::build_up_db_per_s);
        HearOptions options;
        options.seconds = 1.0, options.raise_db = *margin + beyond;
        auto sound = LoopSound::prepare(show, options);
        QVERIFY(sound.has_value());
        const auto grown = sound->measure();
        sound->set_raise_db(*margin - 2.0);
        const auto faded = sound->measure();
        QVERIFY(grown.has_value() && faded.has_value());
        std::printf(
            "  %-26s margin %6.2f dB | ring %8.2f Hz heard %8.2f Hz %+.3f %% | growth %+7.2f heard %+7.2f dB/s | "
            "2 dB below %+7.2f dB/s\n",
            name.toLatin1().data(), *margin, ring.hz, grown->dominant_hz, 100.0 * (grown->dominant_hz / ring.hz - 1.0),
            ring.build_up_db_per_s, grown->growth_db_per_s, faded->growth_db_per_s);
        QVERIFY(std::abs(grown->dominant_hz / ring.hz - 1.0) < 0.001);
        QVERIFY(std::abs(grown->growth_db_per_s / ring.build_up_db_per_s - 1.0) < 0.05);
        QVERIFY(faded->growth_db_per_s < 0.0);
        // The further below the margin, the faster it dies, up to where the filters' own ringing is left.
        double slower = 0.0;
        for (const double below : {2.0, 4.0, 6.0, 8.0, 12.0}) {
            sound->set_raise_db(*margin - below);
            const auto still = sound->measure();
            QVERIFY(still.has_value());
            QVERIFY2(still->growth_db_per_s < 0.8 * slower,
                     qPrintable(QStringLiteral("%1 dB below: %2 dB/s").arg(below).arg(still->growth_db_per_s)));
            slower = still->growth_db_per_s;
        }
    }
};

HOWLMAP_TEST(TestHearExamples)
#include "test_examples.moc"
