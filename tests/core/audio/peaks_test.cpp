// SPDX-License-Identifier: GPL-3.0-or-later
// Levels of partials around a frequency, at the ends of the spectrum too.
#include "core/audio/peaks.h"

#include "tests/support/registry.h"

using namespace howlmap;

namespace {
/// One bin is strong, all others equally weak.
SpectrumFrame frame_with(std::size_t strong) {
    SpectrumFrame frame;
    frame.bin_hz = 10.0;
    frame.power.assign(256, 1e-6F);
    frame.power[strong] = 1.0F;
    return frame;
}
constexpr std::size_t kHalf = 3;  // place of the ratio 1/2
}  // namespace

class PeaksTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void a_partial_is_found_beside_its_bin() {
        QCOMPARE(kPartialRatios[kHalf], 0.5);
        for (const std::size_t bin : {9, 10, 11}) {
            const PartialLevels levels = partial_levels(frame_with(bin), 200.0);  // half of it is bin 10
            QVERIFY(levels.peaks >> kHalf & 1U);
            QVERIFY(std::abs(levels.level_db[kHalf]) < 1e-3F);
        }
    }
    void there_is_no_looking_beyond_the_ends() {
        // The bin may move down by one, and four below that are looked at: bin 4 itself has no such neighbours.
        for (double hz = 60.0; hz < 89.9; hz += 0.5) QVERIFY(!(partial_levels(frame_with(3), hz).seen >> kHalf & 1U));
        // Up to the top every place that is read exists, which the sanitizers watch.
        for (double hz = 100.0; hz < 2550.0; hz += 0.5) {
            const PartialLevels levels = partial_levels(frame_with(250), hz);
            for (std::size_t i = 0; i < kPartialRatios.size(); ++i)
                if (levels.seen >> i & 1U) QVERIFY(kPartialRatios[i] * hz / 10.0 <= 250.0);
        }
    }
};

HOWLMAP_TEST(PeaksTest)
#include "peaks_test.moc"
