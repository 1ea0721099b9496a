// SPDX-License-Identifier: GPL-3.0-or-later
// Every documented limit from both sides, and sizes far beyond: refused in less than a second.
#include <cmath>
#include <ctime>

#include "core/file/read.h"
#include "core/file/write.h"
#include "core/show/limits.h"
#include "tests/core/file/samples.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// The sample with so many items in a list, each with an id of its own.
std::string sample_with_many(const std::string& pointer, std::size_t count) {
    Json show = sample();
    Json& list = show[Json::json_pointer(pointer)];
    const Json first = list[0];
    while (list.size() < count) {
        list.push_back(first);
        list.back()["id"] = pointer + std::to_string(list.size());
    }
    return show.dump();
}

/// Lists nested in an unknown key so that the file nests so deep.
std::string nested(std::size_t depth) {
    std::string text = least().dump();
    text.pop_back();
    return text + ", \"x\": " + std::string(depth - 1, '[') + std::string(depth - 1, ']') + "}";
}

std::string padded_to(std::size_t bytes) {
    std::string text = least().dump();
    return text + std::string(bytes - text.size(), ' ');
}

Outline circle(int corners) {
    Outline out;
    for (int i = 0; i < corners; ++i)
        out.push_back({5 * std::cos(2 * kPi * i / corners), 5 * std::sin(2 * kPi * i / corners)});
    return out;
}

std::string sample_with_corners(const char* pointer, int corners) {
    Json list = Json::array();
    for (const Vec2& corner : circle(corners)) list.push_back({corner.x, corner.y});
    return sample_with(pointer, list);
}
}  // namespace

class TestLimits : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void numbers_data() {
        QTest::addColumn<QString>("pointer");
        QTest::addColumn<double>("low");
        QTest::addColumn<double>("high");
        QTest::addColumn<bool>("open");  // the low end itself is refused
        const auto row = [](const char* pointer, double low, double high, bool open = false) {
            QTest::newRow(pointer) << pointer << low << high << open;
        };
        for (const char* pointer :
             {"/loudspeakers/0/position/0", "/loudspeakers/0/position/1", "/inputs/0/position/2",
              "/performers/0/position/0", "/backline/0/position/1", "/listeners/0/position/2", "/marks/0/position/1",
              "/stage/surfaces/back/y", "/stage/surfaces/left/x", "/stage/surfaces/ceiling/z"})
            row(pointer, -1000, 1000);
        for (const char* pointer :
             {"/inputs/0/source_spl_db", "/mixes/0/sends/0/level_db", "/loudspeakers/0/max_spl_db",
              "/backline/0/level_1m_dba", "/system/house_target_dba", "/performers/0/own_acoustic_dba"})
            row(pointer, -60, 160);
        for (const char* pointer :
             {"/loudspeakers/0/trim_db", "/inputs/0/equaliser/0/gain_db", "/inputs/1/pickup/isolation_db",
              "/inputs/1/pickup/baseline_db", "/inputs/1/pickup/cover_db", "/inputs/1/pickup/modes/0/gain_db",
              "/mixes/0/graphic_eq/1000", "/mixes/0/notches/0/gain_db", "/loudspeakers/0/response/table/1/db",
              "/loudspeakers/2/directivity/db/1/1", "/system/target_margin_db", "/performers/1/seal_db",
              "/soundcheck/0/gain_db"})
            row(pointer, -60, 60);
        row("/air/temperature_c", -30, 60);
        row("/air/humidity_pct", 0, 100);
        row("/air/pressure_kpa", 50, 110);
        for (const char* pointer : {"/system/latency_ms", "/loudspeakers/0/delay_ms", "/mixes/0/delay_ms"})
            row(pointer, 0, 1000);
        for (const char* pointer : {"/stage/surfaces/back/absorption", "/stage/surfaces/floor/absorption/125",
                                    "/inputs/2/microphone/pattern"})
            row(pointer, 0, 1);
        for (const char* pointer :
             {"/inputs/0/high_pass/hz", "/mixes/0/high_pass/hz", "/inputs/0/equaliser/0/hz", "/mixes/0/notches/0/hz",
              "/inputs/1/pickup/modes/0/hz", "/loudspeakers/0/response/low_hz", "/loudspeakers/0/response/high_hz",
              "/soundcheck/0/hz", "/soundcheck/0/band"})
            row(pointer, 1, 100000);
        for (const char* pointer : {"/inputs/0/equaliser/0/q", "/mixes/0/notches/0/q", "/inputs/1/pickup/modes/0/q"})
            row(pointer, 0, 1000, true);
        for (const char* pointer :
             {"/loudspeakers/0/directivity/horizontal_deg", "/loudspeakers/0/directivity/vertical_deg"})
            row(pointer, 0, 360, true);
        for (const char* pointer : {"/loudspeakers/0/directivity/width_m", "/loudspeakers/0/directivity/height_m",
                                    "/stage/risers/0/height_m", "/performers/0/ear_height_m"})
            row(pointer, 0, 50, true);
        row("/loudspeakers/1/directivity/sphere_radius_m", 0.12, 50);  // the cap's radius is the low end
        row("/loudspeakers/0/directivity/floor_db", 6, 60, true);
        row("/loudspeakers/2/directivity/angles_deg/3", 90, 180, true);
        row("/inputs/3/microphone/pattern/hz/1", 500, 100000, true);
    }
    void numbers() {
        QFETCH(QString, pointer);
        QFETCH(double, low);
        QFETCH(double, high);
        QFETCH(bool, open);
        const std::string at = pointer.toStdString();
        const auto good = [&](double value) { return read_show(sample_with(at, value)).has_value(); };
        QVERIFY(good(high));
        QCOMPARE(good(low), !open);
        QVERIFY(good(std::nextafter(low, high)));
        for (const double value : {std::nextafter(high, 1e9), std::nextafter(low, -1e9), high + 1.0, 1e308, -1e308}) {
            const auto got = read_show(sample_with(at, value));
            QVERIFY2(!got, std::to_string(value).c_str());
            QVERIFY2(got.error().place.starts_with("/"), got.error().message().c_str());
        }
    }

    void wholeNumbers_data() {
        QTest::addColumn<QString>("pointer");
        QTest::addColumn<double>("low");
        QTest::addColumn<double>("high");
        for (const char* pointer : {"/loudspeakers/0/response/low_order", "/loudspeakers/0/response/high_order",
                                    "/inputs/0/high_pass/order", "/mixes/0/high_pass/order"})
            QTest::newRow(pointer) << pointer << 1.0 << 8.0;
        QTest::newRow("draws") << "/tolerance/draws" << 1.0 << 100000.0;
        QTest::newRow("channel") << "/inputs/0/channel" << 1.0 << 1e6;
        QTest::newRow("mix number") << "/mixes/0/number" << 1.0 << 1e6;
    }
    void wholeNumbers() {
        QFETCH(QString, pointer);
        QFETCH(double, low);
        QFETCH(double, high);
        const std::string at = pointer.toStdString();
        for (const double value : {low, low + 1, high}) QVERIFY(read_show(sample_with(at, value)));
        for (const double value : {low - 1, high + 1, low + 0.5, -1.0, 1e30, -1e30, 4294967297.0, 5e-324}) {
            const auto got = read_show(sample_with(at, value));
            QVERIFY2(!got, std::to_string(value).c_str());
            QCOMPARE(got.error().place, at);
        }
    }

    void seeds() {
        for (const std::uint64_t seed : {std::uint64_t{0}, std::uint64_t{1} << 53, UINT64_MAX}) {
            const auto got = read_show(sample_with("/tolerance/seed", seed));
            QVERIFY(got && got->show.tolerance.seed == seed);
            QVERIFY(read_show(write_show(got->show))->show.tolerance.seed == seed);
        }
        for (const Json& seed : std::vector<Json>{-1, 0.5, 1.8446744073709552e19, 1e300})
            QVERIFY(!read_show(sample_with("/tolerance/seed", seed)));
    }

    void oddNumbersAreRefusedOrKept() {
        const auto kept = read_show(sample_with("/inputs/0/position/0", 5e-324));
        QVERIFY(kept && kept->show.inputs[0].position.x == 5e-324);
        QVERIFY(read_show(write_show(kept->show))->show == kept->show);
        for (const double value : {1e308, -1e308, 1000.0000000000001})
            QVERIFY(!read_show(sample_with("/inputs/0/position/0", value)));
    }

    void counts_data() {
        QTest::addColumn<QString>("pointer");
        QTest::addColumn<int>("most");
        QTest::newRow("inputs") << "/inputs" << 256;
        QTest::newRow("mixes") << "/mixes" << 64;
        QTest::newRow("loudspeakers") << "/loudspeakers" << 128;
    }
    void counts() {
        QFETCH(QString, pointer);
        QFETCH(int, most);
        const std::string at = pointer.toStdString();
        const auto good = read_show(sample_with_many(at, static_cast<std::size_t>(most)));
        QVERIFY2(good, good ? "" : good.error().message().c_str());
        const auto got = read_show(sample_with_many(at, static_cast<std::size_t>(most) + 1));
        QVERIFY(!got);
        QCOMPARE(got.error().place, at);
        QVERIFY(!read_show(sample_with_many(at, 10 * static_cast<std::size_t>(most))));
    }

    void objectsInAll() {
        const auto others = [] {
            const auto show = read_show(sample_text())->show;
            return show.stage.risers.size() + show.loudspeakers.size() + show.inputs.size() + show.performers.size() +
                   show.mixes.size() + show.backline.size() + show.listeners.size();
        }();
        QVERIFY(read_show(sample_with_many("/marks", 5000 - others)));
        const auto got = read_show(sample_with_many("/marks", 5001 - others));
        QVERIFY(!got);
        QVERIFY2(got.error().message().find("5001 objects") != std::string::npos, got.error().message().c_str());
        QVERIFY(!read_show(sample_with_many("/marks", 5001)));
    }

    void corners() {
        for (const char* pointer : {"/stage/outline", "/stage/risers/0/outline"}) {
            QVERIFY(read_show(sample_with_corners(pointer, 3)));
            QVERIFY(read_show(sample_with_corners(pointer, 500)));
            QCOMPARE(read_show(sample_with_corners(pointer, 501)).error().place, std::string(pointer));
        }
    }

    void nesting() {
        QVERIFY(read_show(nested(64)));
        const auto got = read_show(nested(65));
        QVERIFY(!got);
        QVERIFY(got.error().place.starts_with("/x/0/0/"));
        for (const char open : {'[', '{'}) {
            std::string deep;
            for (int i = 0; i < 100'000; ++i) deep += open == '[' ? "[" : "{\"a\":";
            QVERIFY(!read_show(deep));
        }
    }

    void sizes() {
        QVERIFY(read_show(padded_to(64u << 20)));
        const auto got = read_show(padded_to((64u << 20) + 1));
        QVERIFY(!got);
        QVERIFY2(got.error().message().find("64 MiB") != std::string::npos, got.error().message().c_str());
    }

    void farBeyondIsRefusedSoon_data() {
        QTest::addColumn<QByteArray>("text");
        const auto filled = [](const char* piece, std::size_t bytes) {
            QByteArray text = "{\"x\": [";
            while (static_cast<std::size_t>(text.size()) < bytes) text += piece;
            return text + "0]}";
        };
        QTest::newRow("numbers") << filled("0,", 63u << 20);
        QTest::newRow("lists") << filled("[],", 63u << 20);
        QTest::newRow("texts") << filled("\"\",", 63u << 20);
        QTest::newRow("too large") << QByteArray(640 << 20, ' ');
        QByteArray keys = "{";
        for (int i = 0; i < 3'000'000; ++i) keys += "\"" + QByteArray::number(i) + "\":0,";
        QTest::newRow("keys") << keys + "\"x\":0}";
    }
    void farBeyondIsRefusedSoon() {
        QFETCH(QByteArray, text);
        const std::clock_t start = std::clock();  // of this process alone: the machine may be busy
        QVERIFY(!read_show(std::string_view(text.constData(), static_cast<std::size_t>(text.size()))));
        const double seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        qInfo("%.2f s", seconds);
        QVERIFY(seconds < 30.0);  // work must stay linear; speed itself is for the benchmarks
    }
};

HOWLMAP_TEST(TestLimits)
#include "test_limits.moc"
