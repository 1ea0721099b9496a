// SPDX-License-Identifier: GPL-3.0-or-later
#include <nlohmann/json.hpp>

#include "core/report/audio_text.h"
#include "tests/support/registry.h"

using namespace howlmap;

class AudioReportTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void ring() {
        const RingFindings findings{3725.0, {{1262.0, 3723.4, 3724.9, 41.5, -8.25}, {98.2, 1.0, 2.0, 0.0, -20.0}}};
        const SuspectLists suspects{{{"m", "w", 1250.0, 2.25}}, {}};
        const auto json = nlohmann::json::parse(ring_json(findings, suspects));
        QCOMPARE(json["format"].get<std::string>(), std::string("howlmap-ring"));
        QCOMPARE(json["version"].get<int>(), 1);
        QCOMPARE(json["duration_s"].get<double>(), 3725.0);
        const auto& first = json["rings"][0];
        QCOMPARE(first["band_hz"].get<double>(), 1250.0);
        QCOMPARE(first["note"].get<std::string>(), std::string("D#6"));
        QVERIFY(std::abs(first["cents"].get<double>() - 24.16) < 0.05);  // D#6 is 1244.51 Hz (ISO 16)
        QCOMPARE(first["loops"][0]["loudspeaker"].get<std::string>(), std::string("w"));
        QVERIFY(json["rings"][1]["loops"].empty());
        Show show;
        const std::string text = report::ring_text(findings, suspects, &show);
        for (const char* part : {"2 howls in 1:02:05.0", "1:02:03.4", "1.262 kHz", "D#6 +24 c", "1.25 kHz",
                                 "+41.5 dB/s", "-8.2 dBFS", "could be w > m", "held", "no loop of the show"})
            QVERIFY2(text.find(part) != std::string::npos, (text + part).c_str());
    }

    void likeliestLoopsAloneAreToldInWords() {
        const RingFindings findings{10.0, {{1262.0, 1.0, 4.0, 41.5, -8.25}}};
        std::vector<LoopSuspect> six;
        for (const char* name : {"a", "b", "c", "d", "e", "f"}) six.push_back({name, "w", 1250.0, 2.25});
        Show show;
        const std::string text = report::ring_text(findings, {six}, &show);
        QVERIFY2(text.find("w > d") != std::string::npos && text.find("w > e") == std::string::npos, text.c_str());
        QVERIFY2(text.find("and 2 more; --json lists them") != std::string::npos, text.c_str());
        QCOMPARE(nlohmann::json::parse(ring_json(findings, {six}))["rings"][0]["loops"].size(), std::size_t{6});
    }

    void noHowl() {
        const RingFindings findings{12.0, {}};
        QVERIFY(nlohmann::json::parse(ring_json(findings))["rings"].empty());
        QCOMPARE(report::ring_text(findings), std::string("No howl was found in 00:12.0.\n"));
    }

    void tap() {
        const TapFindings findings{3, {{275.0, 15.0, 0.0, 0.0}, {540.0, 30.0, -3.5, -6.0}}};
        const auto json = nlohmann::json::parse(tap_json(findings));
        QCOMPARE(json["modes"][1]["level_db"].get<double>(), -3.5);
        QCOMPARE(json["modes"][1].size(), std::size_t{3});
        const std::string text = report::tap_text(findings);
        for (const char* part : {"3 taps", "275.0 Hz", "15.0", "-3.5 dB", "0.12 s"})
            QVERIFY2(text.find(part) != std::string::npos, text.c_str());
    }

    void hear() {
        HearResult result{2.5, 3.0, 440.0, 12.0, 15.0, "m", 440.0};
        auto json = nlohmann::json::parse(hear_json(result));
        QCOMPARE(json["raised_db"].get<double>(), 3.0);
        QVERIFY(report::hear_text(result, Show{}).find("440.0 Hz (A4 +0 c) howls: it grows by 12.0 dB/s") !=
                std::string::npos);
        result = {6.0, 2.0, 70.0, -90.0, 15.0, "m", 440.0};
        const std::string quiet = report::hear_text(result, Show{});
        for (const char* part : {"No howl", "dies away by 90.0 dB/s", "440.0 Hz (A4 +0 c), with 4.0 dB more"})
            QVERIFY2(quiet.find(part) != std::string::npos, quiet.c_str());
        result = {std::nullopt, 0.0, std::nullopt, std::nullopt, 15.0, "m", std::nullopt};
        json = nlohmann::json::parse(hear_json(result));
        QVERIFY(json["margin_db"].is_null() && json["dominant_hz"].is_null());
        QVERIFY(report::hear_text(result, Show{}).find("Nothing comes back") != std::string::npos);
    }
};

HOWLMAP_TEST(AudioReportTest)
#include "test_audio.moc"
