// SPDX-License-Identifier: GPL-3.0-or-later
#include <rapidcheck.h>

#include <algorithm>
#include <limits>
#include <set>
#include <sstream>

#include "core/file/read.h"
#include "core/file/write.h"
#include "core/units/number_text.h"
#include "tests/core/file/samples.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// How many lines two texts do not share.
int lines_apart(const std::string& a, const std::string& b) {
    const auto lines = [](const std::string& text) {
        std::vector<std::string> out;
        std::istringstream in(text);
        for (std::string line; std::getline(in, line);) out.push_back(line);
        return out;
    };
    const auto first = lines(a), second = lines(b);
    if (first.size() != second.size()) return std::numeric_limits<int>::max();
    int apart = 0;
    for (std::size_t i = 0; i < first.size(); ++i) apart += first[i] != second[i];
    return apart;
}
}  // namespace

class TestRoundTrip : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void randomShowsComeBackAsTheyWere() {
        for (std::uint64_t seed = 0; seed < 10'000; ++seed) {
            const Show show = random_show(seed);
            const std::string text = write_show(show);
            const auto got = read_show(text);
            QVERIFY2(got, got ? "" : (std::to_string(seed) + ": " + got.error().message()).c_str());
            if (write_show(got->show) != text) QFAIL(qPrintable(QString("seed %1: other bytes").arg(seed)));
            if (seed % 10 == 0 && got->show != show) QFAIL(qPrintable(QString("seed %1: another show").arg(seed)));
        }
    }

    void theSampleComesBackByteForByte() { QCOMPARE(write_show(read_show(sample_text())->show), sample_text()); }

    void layoutDoesNotMatter() {
        const std::string packed = sample().dump(), wide = sample().dump(7, '\t');
        QCOMPARE(write_show(read_show(packed)->show), write_show(read_show(wide)->show));
    }

    void movingOneThingChangesTwoLinesAtMost() {
        QVERIFY(rc::check([] {
            const Show before = *random_shows();
            const std::string text = write_show(before);
            Show then = before;
            then.loudspeakers.front().position = {1.25, -2.5, 3.75};
            then.loudspeakers.front().aim.yaw_deg = 77.7;
            RC_ASSERT(lines_apart(text, write_show(then)) <= 2);
            then = before;
            then.performers.front().position = {0.125, 0.5};
            RC_ASSERT(lines_apart(text, write_show(then)) <= 1);
            then = before;
            if (then.mixes.front().sends.empty()) return;
            then.mixes.front().sends.front().level_db = 77.7;
            RC_ASSERT(lines_apart(text, write_show(then)) <= 1);
            then.stage.outline.front().x += 0.001;
            RC_ASSERT(lines_apart(text, write_show(then)) <= 2);
        }));
    }

    void numbersAreShortAndExact() {
        const std::vector<std::pair<double, std::string>> known{{88.0, "88"},
                                                                {0.05, "0.05"},
                                                                {-0.0, "0"},
                                                                {1e-5, "1e-05"},
                                                                {100000.0, "1e+05"},
                                                                {101.325, "101.325"},
                                                                {1.0 / 3.0, "0.3333333333333333"},
                                                                {5e-324, "5e-324"}};
        for (const auto& [value, text] : known) QCOMPARE(number_text(value), text);
        QVERIFY(rc::check([](double value) {
            RC_PRE(std::isfinite(value));
            RC_ASSERT(std::stod(number_text(value)) == value || std::abs(value) < 1e-300);
        }));
    }

    void whatIsNotFiniteIsNeverWritten() {
        for (const double value : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
            Show show;
            show.loudspeakers.resize(2);
            show.loudspeakers[1].position.y = value;
            try {
                (void)write_show(show);
                QFAIL("it was written");
            } catch (const std::domain_error& error) {
                QVERIFY2(std::string(error.what()).starts_with("/loudspeakers/1/position/1: "), error.what());
            }
        }
    }

    void textThatIsNoUtf8IsNeverWritten() {
        Show show;
        show.title =
            "Gr\xF6\xDF"
            "e";
        QVERIFY_EXCEPTION_THROWN((void)write_show(show), std::invalid_argument);
    }

    void numbersDoNotDependOnTheLocale() {
        const std::string text = write_show(random_show(7));
        for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8"}) {
            if (!std::setlocale(LC_ALL, name)) continue;
            const std::string other = write_show(random_show(7));
            const bool reads = read_show(text).has_value();
            std::setlocale(LC_ALL, "C");
            QCOMPARE(other, text);
            QVERIFY(reads);
        }
    }

    void truncatedAnywhereIsRefused() {
        const std::string text = sample_text();
        const std::size_t end = text.rfind('}');
        for (std::size_t length = 0; length <= end; ++length) {
            const auto got = read_show(text.substr(0, length));
            if (got) QFAIL(qPrintable(QString("accepted when cut at byte %1").arg(length)));
            if (!got.error().place.starts_with("line ")) QFAIL(got.error().message().c_str());
        }
        QVERIFY(read_show(text.substr(0, end + 1)));
    }

    /// Each byte flipped: refused with a place, or read as a show that comes back as it is.
    void flippedBytesAreRefusedOrNormalised() {
        const std::string text = sample_text();
        const bool all = qEnvironmentVariableIsSet("HOWLMAP_LONG_TESTS");
        const unsigned char patterns[] = {0x01, 0x20, 0x80, 0xFF};
        int refused = 0;
        for (std::size_t at = 0; at < text.size(); ++at)
            for (std::size_t i = 0; i < (all ? 4u : 1u); ++i) {
                const unsigned char bits = patterns[(at + i) % 4];
                std::string flipped = text;
                flipped[at] = static_cast<char>(static_cast<unsigned char>(flipped[at]) ^ bits);
                const auto got = read_show(flipped);
                if (!got) {
                    ++refused;
                    if (got.error().place.empty()) QFAIL(got.error().message().c_str());
                    continue;
                }
                const auto again = read_show(write_show(got->show));
                if (!again || again->show != got->show)
                    QFAIL(qPrintable(QString("byte %1 makes a show that changes").arg(at)));
            }
        QVERIFY(refused > static_cast<int>(text.size() / 2));
    }
};

HOWLMAP_TEST(TestRoundTrip)
#include "test_round_trip.moc"
