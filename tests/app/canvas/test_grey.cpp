// SPDX-License-Identifier: GPL-3.0-or-later
// Never by colour alone: on a grey copy of the plan three loops, one that rings, one below the target and one that
// holds, still differ.
#include <cmath>

#include "app/canvas/overlay/plan_layers.h"
#include "app/settings/theme.h"
#include "core/analysis/analysis.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// Three wedges with a microphone upstage of each, every pair in a mix of its own, at these margins.
Show three_loops(const std::vector<double>& margins_db) {
    Show show = small_stage();
    show.performers.clear();
    show.stage.risers.clear();
    show.loudspeakers.clear(), show.inputs.clear(), show.mixes.clear();
    for (int i = 0; i < 3; ++i) {
        const std::string n = std::to_string(i);
        const double x = -2.6 + 2.6 * i;
        show.loudspeakers.push_back(wedge("w" + n, {x, 1.0}));
        show.inputs.push_back(microphone("m" + n, i + 1, {x, 4.0}));
        Mix mix;
        mix.id = "x" + n;
        mix.number = i + 1;
        mix.loudspeakers = {"w" + n};
        mix.sends = {{"m" + n, 96.0, {}}};
        show.mixes.push_back(mix);
    }
    const auto result = analyse(show, {.tolerance = false, .earlier = {}});
    for (const PairFigure& pair : result->pairs) {
        const auto i = std::size_t(pair.input.back() - '0');
        if (pair.loudspeaker.back() == pair.input.back())
            show.mixes[i].sends[0].level_db += -margins_db[i] - pair.loop_gain_db;
    }
    return show;
}

struct Stroke {
    double most = 0.0;  ///< how far from the page, 0..255
    double ink = 0.0;   ///< the same summed across, in pixels of the strongest possible
};

/// Across the line between wedge and microphone, in grey.
Stroke stroke_at(const QImage& grey, QPoint middle) {
    const int page = qGray(grey.pixel(middle + QPoint(14, 0)));
    Stroke stroke;
    for (int dx = -8; dx <= 8; ++dx) {
        const double from_page = std::abs(qGray(grey.pixel(middle + QPoint(dx, 0))) - page);
        stroke.most = std::max(stroke.most, from_page);
        stroke.ink += from_page / 255.0;
    }
    return stroke;
}

}  // namespace

class TestGrey : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void loops_differ_without_colour_data() {
        QTest::addColumn<bool>("dark");
        QTest::newRow("light") << false;
        QTest::newRow("dark") << true;
    }
    void loops_differ_without_colour() {
        QFETCH(const bool, dark);
        QApplication::setPalette(dark ? dark_palette() : light_palette());
        {
            Stage_fixture f(three_loops({-1.0, 3.0, 10.5}));
            QTRY_VERIFY_WITH_TIMEOUT(f.view.layers().loops().size() >= 3, 30000);
            const QImage grey = f.port()->grab().toImage().convertToFormat(QImage::Format_Grayscale8);
            std::vector<Stroke> strokes;
            for (const double x : {-2.6, 0.0, 2.6}) strokes.push_back(stroke_at(grey, f.at(x, 2.2)));
            const auto said = [&] {
                QString text;
                for (const Stroke& s : strokes) text += QStringLiteral("%1 %2; ").arg(s.most).arg(s.ink);
                return text;
            };
            // Heavier and darker (on slate: brighter) as they near ringing.
            for (std::size_t i = 0; i + 1 < strokes.size(); ++i)
                QVERIFY2(strokes[i].ink > 1.3 * strokes[i + 1].ink && strokes[i].most >= strokes[i + 1].most,
                         qPrintable(said()));
            QVERIFY2(strokes.back().most > 12.0, qPrintable(said()));  // and the calmest is still seen
        }
        QApplication::setPalette(light_palette());
    }
};

HOWLMAP_TEST(TestGrey)

}  // namespace howlmap::app

#include "test_grey.moc"
