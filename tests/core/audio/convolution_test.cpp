// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/audio/causal_response.h"
#include "core/audio/convolution_matrix.h"
#include "tests/support/registry.h"
#include "tests/support/sounds.h"

using namespace howlmap;
using namespace howlmap::test;

class ConvolutionTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    // Against the plain sum, with responses that reach into every level of partitions.
    void likeThePlainSum_data() {
        QTest::addColumn<int>("block");
        QTest::addColumn<int>("length");
        for (const int block : {8, 16, 64, 128})
            for (const int length : {block + 1, 5 * block, 700, 9000, 21000})
                QTest::addRow("%d, %d", block, length) << block << length;
    }
    void likeThePlainSum() {
        QFETCH(int, block);
        QFETCH(int, length);
        Dice dice(static_cast<std::uint64_t>(block * 100000 + length));
        const auto n = static_cast<std::size_t>(block);
        std::vector<std::vector<std::vector<float>>> taps(2, std::vector<std::vector<float>>(2));
        for (auto& row : taps)
            for (auto& response : row) {
                response.assign(static_cast<std::size_t>(std::max(length, block + 1)), 0.0f);
                for (std::size_t i = n; i < response.size(); i += i < 300 ? 1 : 37)
                    response[i] = static_cast<float>(dice.uniform(-1, 1));
            }
        taps[1][0].clear();
        ConvolutionMatrix matrix(n, taps);
        const std::size_t total = (30000 / n) * n;
        std::vector<std::vector<float>> in(2, std::vector<float>(total, 0.0f)), out(2);
        for (auto& column : in)
            for (std::size_t i = 0; i < total; i += 211) column[i] = static_cast<float>(dice.uniform(-1, 1));
        for (std::size_t at = 0; at < total; at += n) {
            for (std::size_t r = 0; r < 2; ++r)
                out[r].insert(out[r].end(), matrix.next(r).begin(), matrix.next(r).end());
            std::vector<std::vector<float>> piece;
            for (const auto& column : in)
                piece.emplace_back(column.begin() + static_cast<std::ptrdiff_t>(at),
                                   column.begin() + static_cast<std::ptrdiff_t>(at + n));
            matrix.push(piece);
        }
        std::vector<std::vector<double>> plain(2, std::vector<double>(total, 0.0));
        for (std::size_t r = 0; r < 2; ++r)
            for (std::size_t c = 0; c < 2; ++c)
                for (std::size_t i = 0; i < total; i += 211)
                    for (std::size_t k = 0; k < taps[r][c].size() && i + k < total; ++k)
                        plain[r][i + k] += static_cast<double>(in[c][i]) * taps[r][c][k];
        double worst = 0.0;
        for (std::size_t r = 0; r < 2; ++r)
            for (std::size_t i = 0; i < total; ++i) worst = std::max(worst, std::abs(out[r][i] - plain[r][i]));
        QVERIFY2(worst < 2e-5, qPrintable(QString::number(worst)));
    }

    void delayComesOutAsDelay() {
        std::vector<std::complex<double>> values(1025);
        for (std::size_t k = 0; k < values.size(); ++k)
            values[k] = std::polar(1.0, -2.0 * M_PI * static_cast<double>(k) / 2048.0 * 100.0);
        const auto response = impulse_response(values, 48000);
        const auto top = std::max_element(response.begin(), response.end()) - response.begin();
        QCOMPARE(top, std::ptrdiff_t{100});
    }

    void correctionMeetsWhatIsWanted() {
        const double rate = 48000;
        std::vector<double> taps(6000, 0.0);
        taps[60] = 0.5;
        const Correction correction({310.0, 1200.0, 1230.0}, 32, rate);
        const std::vector<Wanted> wanted{
            {310.0, {0.3, -0.2}, {1e-4, 2e-4}}, {1200.0, {0.1, 0.45}, {-5e-4, 0}}, {1230.0, {0.0, 0.4}, {0, 0}}};
        correction.apply(taps, wanted);
        for (const Wanted& w : wanted) {
            std::complex<double> value = 0, slope = 0;
            for (std::size_t n = 0; n < taps.size(); ++n) {
                const double t = static_cast<double>(n) / rate;
                const auto turn = std::polar(1.0, -2.0 * M_PI * w.hz * t);
                value += taps[n] * turn;
                slope += std::complex<double>(0, -t) * taps[n] * turn;
            }
            QVERIFY(std::abs(value - w.value) < 1e-4);
            QVERIFY(std::abs(slope - w.slope) < 1e-6);
        }
        for (std::size_t n = 0; n < 32; ++n) QCOMPARE(taps[n], 0.0);
    }
};

HOWLMAP_TEST(ConvolutionTest)
#include "convolution_test.moc"
