// SPDX-License-Identifier: GPL-3.0-or-later
// Colours, contours, names and symbols, each against what must hold for it.
#include <QtTest>
#include <array>
#include <cmath>

#include "app/export/contours.h"
#include "app/export/label_layout.h"
#include "app/export/length_text.h"
#include "app/export/map_picture.h"
#include "app/export/object_look.h"
#include "app/export/page_labels.h"
#include "app/export/risk_scale.h"
#include "app/export/symbol.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// How a colour looks to people who lack one kind of cone. Source: Vienot, Brettel and Mollon 1999 for protanopia and
/// deuteranopia, in linear RGB; the tritan matrix after Brettel et al. 1997, one half-plane: from memory.
using Matrix = std::array<double, 9>;
constexpr std::array<Matrix, 3> kDeficiencies = {Matrix{0.11238, 0.88762, 0, 0.11238, 0.88762, 0, 0.00401, -0.00401, 1},
                                                 Matrix{0.29275, 0.70725, 0, 0.29275, 0.70725, 0, -0.02234, 0.02234, 1},
                                                 Matrix{1.0, 0.1462, -0.1462, 0, 0.8509, 0.1491, 0, 0.8509, 0.1491}};

double linear(double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); }
double gamma(double v) {
    const double x = std::clamp(v, 0.0, 1.0);
    return x <= 0.0031308 ? 12.92 * x : 1.055 * std::pow(x, 1.0 / 2.4) - 0.055;
}

QColor seen_by(const Matrix& m, const QColor& colour) {
    const double r = linear(colour.redF()), g = linear(colour.greenF()), b = linear(colour.blueF());
    return QColor::fromRgbF(static_cast<float>(gamma(m[0] * r + m[1] * g + m[2] * b)),
                            static_cast<float>(gamma(m[3] * r + m[4] * g + m[5] * b)),
                            static_cast<float>(gamma(m[6] * r + m[7] * g + m[8] * b)));
}

double difference_of(const QColor& p, const QColor& q) {
    const Lab a = to_lab(p), b = to_lab(q);
    return std::sqrt(std::pow(a.l - b.l, 2) + std::pow(a.a - b.a, 2) + std::pow(a.b - b.b, 2));
}

MapGrid slope() {
    MapGrid grid;
    grid.step = 0.5;
    grid.columns = 9;
    grid.rows = 5;
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column) {
            grid.inside.push_back(1);
            grid.value.push_back(static_cast<float>(column));  // 2 dB a metre
            grid.worst_hz.push_back(500.0F);
        }
    return grid;
}
}  // namespace

class TestPlanParts : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void lab_of_known_colours();
    void lightness_runs_one_way();
    void bands_differ_for_every_eye();
    void a_safe_stage_is_clear();
    void below_zero_is_hatched();
    void contours_lie_where_the_level_is();
    void contours_close_around_a_peak();
    void a_contour_stops_at_the_edge_of_the_area();
    void names_do_not_cover_objects_or_each_other();
    void names_on_a_page_find_room_at_the_end_of_a_line();
    void names_keep_their_side();
    void every_symbol_is_there();
    void a_symbol_keeps_its_least_size();
    void a_cabinet_has_its_own_width();
    void stage_left_is_on_the_right();
    void lengths_in_metres_and_feet();
};

/// Source: CIE 15 and IEC 61966-2-1: white is L* 100, the sRGB primary red L* 53.24, a* 80.09, b* 67.20.
void TestPlanParts::lab_of_known_colours() {
    const Lab white = to_lab(Qt::white), red = to_lab(Qt::red);
    QVERIFY(std::abs(white.l - 100.0) < 0.01 && std::abs(white.a) < 0.02 && std::abs(white.b) < 0.02);
    QVERIFY(std::abs(red.l - 53.24) < 0.05 && std::abs(red.a - 80.09) < 0.1 && std::abs(red.b - 67.2) < 0.1);
    const QColor back = from_lab(to_lab(QColor(12, 130, 200)));
    QVERIFY(std::abs(back.red() - 12) <= 1 && std::abs(back.green() - 130) <= 1 && std::abs(back.blue() - 200) <= 1);
}

void TestPlanParts::lightness_runs_one_way() {
    for (const bool dark : {false, true}) {
        const RiskScale scale(6.0, dark);
        double last = to_lab(scale.solid(0.0)).l;
        for (int i = 1; i <= 64; ++i) {
            const double l = to_lab(scale.solid(i / 64.0)).l;
            QVERIFY2(dark ? l > last : l < last, qPrintable(QString::number(i)));
            last = l;
        }
    }
}

void TestPlanParts::bands_differ_for_every_eye() {
    for (const bool dark : {false, true}) {
        const RiskScale scale(6.0, dark);
        for (int i = 0; i < 8; ++i) {
            const QColor a = scale.solid(i / 8.0), b = scale.solid((i + 1) / 8.0);
            QVERIFY(difference_of(a, b) >= 10.0);
            for (const Matrix& eye : kDeficiencies)
                QVERIFY2(difference_of(seen_by(eye, a), seen_by(eye, b)) >= 10.0,
                         qPrintable(QStringLiteral("band %1 dark %2: %3")
                                        .arg(i)
                                        .arg(dark)
                                        .arg(difference_of(seen_by(eye, a), seen_by(eye, b)))));
        }
    }
}

void TestPlanParts::a_safe_stage_is_clear() {
    const RiskScale scale(6.0, false);
    QCOMPARE(qAlpha(scale.colour(12.0)), 0);
    QCOMPARE(qAlpha(scale.colour(40.0)), 0);
    QCOMPARE(qAlpha(scale.colour(6.0)), 255);
    QCOMPARE(qAlpha(scale.colour(-3.0)), 255);
    QVERIFY(qAlpha(scale.colour(9.0)) > 100 && qAlpha(scale.colour(9.0)) < 155);
    QCOMPARE(scale.risk(0.0), 1.0);
}

void TestPlanParts::below_zero_is_hatched() {
    MapGrid grid = slope();
    std::fill(grid.value.begin(), grid.value.end(), -2.0F);
    const MapPicture picture = picture_of(std::make_shared<const MapGrid>(grid), {6.0, 95.0, Ink::for_print(), {}});
    QSet<QRgb> greys;
    for (int x = 0; x < picture.image.width(); ++x) greys.insert(picture.image.pixel(x, picture.image.height() / 2));
    QVERIFY(greys.size() >= 2);  // two greys apart: reads without colour
    int lightest = 0, darkest = 255;
    for (const QRgb grey : greys) {
        lightest = std::max(lightest, qGray(grey));
        darkest = std::min(darkest, qGray(grey));
    }
    QVERIFY(lightest - darkest > 150);
}

void TestPlanParts::contours_lie_where_the_level_is() {
    const auto lines = contour_lines(slope(), 3.0);
    QCOMPARE(lines.size(), std::size_t{1});
    for (const QPointF& point : lines.front()) QVERIFY(std::abs(point.x() - 1.5) < 1e-6);
    QVERIFY(contour_lines(slope(), 30.0).empty());
}

void TestPlanParts::contours_close_around_a_peak() {
    MapGrid grid = slope();
    std::fill(grid.value.begin(), grid.value.end(), 0.0F);
    grid.value[grid.index(4, 2)] = 10.0F;
    const auto lines = contour_lines(grid, 5.0);
    QCOMPARE(lines.size(), std::size_t{1});
    QCOMPARE(lines.front().first(), lines.front().last());
    QCOMPARE(lines.front().boundingRect().center(), QPointF(2.0, -1.0));
}

void TestPlanParts::a_contour_stops_at_the_edge_of_the_area() {
    MapGrid grid = slope();
    for (int column = 0; column < grid.columns; ++column) {
        grid.inside[grid.index(column, 0)] = 0;
        grid.value[grid.index(column, 0)] = std::numeric_limits<float>::quiet_NaN();
    }
    const auto lines = contour_lines(grid, 3.0);
    QCOMPARE(lines.size(), std::size_t{1});
    QVERIFY(lines.front().boundingRect().bottom() <= -0.5 + 1e-9);
}

void TestPlanParts::names_do_not_cover_objects_or_each_other() {
    std::vector<LabelWish> wishes;
    for (int i = 0; i < 5; ++i)
        for (int k = 0; k < 4; ++k) wishes.push_back({QRectF(i * 90.0, k * 50.0, 20, 20), {}, QSizeF(50, 14), -1});
    const auto places = placed_labels(wishes);
    for (std::size_t i = 0; i < places.size(); ++i) {
        QVERIFY(places[i].side >= 0);
        for (std::size_t k = 0; k < places.size(); ++k) {
            QVERIFY(!places[i].rect.intersects(wishes[k].object));
            if (i != k) QVERIFY(!places[i].rect.intersects(places[k].rect));
        }
    }
}

void TestPlanParts::names_on_a_page_find_room_at_the_end_of_a_line() {
    // Nine symbols touching each other in the middle of a page: no room beside, much around.
    std::vector<LabelWish> wishes;
    for (int i = 0; i < 9; ++i)
        wishes.push_back({QRectF(200 + 20 * (i % 3), 200 + 20 * (i / 3), 20, 20), {}, QSizeF(80, 14), -1});
    const PageRoom room{QRectF(0, 0, 460, 460), {QLineF(0, 190, 460, 190)}};
    const PageLabels found = page_labels(wishes, room);
    QVERIFY(found.clear);
    int tied = 0;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        QVERIFY(room.page.contains(found.labels[i].rect));
        if (!found.labels[i].leader.isNull()) ++tied;
        for (std::size_t k = 0; k < wishes.size(); ++k) {
            QVERIFY(!found.labels[i].rect.intersects(wishes[k].object));
            if (i != k) QVERIFY(!found.labels[i].rect.intersects(found.labels[k].rect));
        }
    }
    QVERIFY(tied > 0);
    // With no room at all that is said.
    QVERIFY(!page_labels(wishes, {QRectF(200, 200, 60, 60), {}}).clear);
}

void TestPlanParts::names_keep_their_side() {
    const std::vector<LabelWish> free = {{QRectF(0, 0, 20, 20), {}, QSizeF(50, 14), 2}};
    QCOMPARE(placed_labels(free).front().side, 2);
    const std::vector<LabelWish> fresh = {{QRectF(0, 0, 20, 20), {}, QSizeF(50, 14), -1}};
    QCOMPARE(placed_labels(fresh).front().side, 0);
}

void TestPlanParts::every_symbol_is_there() {
    Show show;
    for (const auto kind :
         {LoudspeakerKind::wedge, LoudspeakerKind::side_fill, LoudspeakerKind::drum_fill, LoudspeakerKind::front_fill,
          LoudspeakerKind::flown_fill, LoudspeakerKind::main, LoudspeakerKind::sub, LoudspeakerKind::combo_amp}) {
        Loudspeaker l;
        l.kind = kind;
        show.loudspeakers.push_back(l);
    }
    show.inputs.resize(2);
    show.inputs[1].transducer = Pickup{};
    show.inputs[1].name = "Old fiddle";
    show.performers.resize(1);
    show.listeners.resize(1);
    for (const ObjectLook& look : looks_of(show)) {
        QVERIFY2(has_symbol(look.symbol), qPrintable(look.symbol));
        const Symbol& symbol = symbol_named(look.symbol, false);
        QVERIFY2(symbol.bounds.width() > 0.05 && symbol.bounds.width() < 2.0, qPrintable(look.symbol));
        bool heavy = false;
        for (const SymbolPart& part : symbol.parts) heavy |= part.heavy;
        QVERIFY2(heavy, qPrintable(look.symbol));
    }
    QVERIFY(!has_symbol(QStringLiteral("teapot")));
    QVERIFY(!symbol_named(QStringLiteral("teapot"), false).parts.empty());
}

void TestPlanParts::a_symbol_keeps_its_least_size() {
    Show show;
    show.loudspeakers.resize(1);
    show.loudspeakers[0].directivity = Coverage{};
    PlanStyle style;
    for (const double px : {0.01, 0.05, 0.2}) {
        style.px = px;
        const QRectF box = bounds_of(looks_of(show).front(), style);
        QVERIFY(std::max(box.width(), box.height()) / px >= 13.0);
    }
}

void TestPlanParts::a_cabinet_has_its_own_width() {
    Show show;
    show.loudspeakers.resize(2);
    Coverage wide;
    wide.width_m = 0.8;
    show.loudspeakers[0].directivity = Coverage{};
    show.loudspeakers[1].directivity = wide;
    const auto looks = looks_of(show);
    QVERIFY(std::abs(looks[1].scale / looks[0].scale - 0.8 / 0.5) < 1e-9);
}

void TestPlanParts::stage_left_is_on_the_right() {
    QCOMPARE(to_page({2.0, 3.0}), QPointF(2.0, -3.0));
    Show show;
    show.loudspeakers.resize(1);
    show.loudspeakers[0].directivity = Coverage{};
    show.loudspeakers[0].aim.yaw_deg = 0.0;  // faces the audience: its tick points down the page
    PlanStyle style;
    style.px = 0.002;
    const double down = bounds_of(looks_of(show)[0], style).bottom();
    show.loudspeakers[0].aim.yaw_deg = 90.0;  // faces stage left: right on the page
    const double right = bounds_of(looks_of(show)[0], style).right();
    QVERIFY(std::abs(down - right) < 1e-6);
}

void TestPlanParts::lengths_in_metres_and_feet() {
    QLocale::setDefault(QLocale::c());
    QCOMPARE(length_text(1.25, Units::metric), QStringLiteral("1.25 m"));
    QCOMPARE(length_text(0.4, Units::metric), QStringLiteral("0.4 m"));
    QCOMPARE(length_text(1.0668, Units::imperial), QStringLiteral("3\u2032 6\u2033"));
    QCOMPARE(length_text(0.1, Units::imperial), QStringLiteral("4\u2033"));
    QCOMPARE(coarse_length_text(1.23, Units::metric), QStringLiteral("1.25 m"));
}

HOWLMAP_TEST(TestPlanParts)

}  // namespace howlmap::app

#include "test_plan_parts.moc"
