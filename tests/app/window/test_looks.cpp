// SPDX-License-Identifier: GPL-3.0-or-later
// Light and dark, coarse and fine screens, other ways to write: everything stays readable, sharp and where it belongs.
#include <QCheckBox>
#include <QImage>
#include <QTableWidget>
#include <cmath>

#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/export/ink.h"
#include "app/panels/response/response_csv.h"
#include "app/settings/icons.h"
#include "app/settings/theme.h"
#include "tests/app/window/windows.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// Relative luminance and contrast ratio. Source: W3C, Web Content Accessibility Guidelines 2.1, "relative luminance",
/// "contrast ratio"; criteria 1.4.3 (text 4.5:1) and 1.4.11 (lines and marks 3:1).
double luminance(const QColor& colour) {
    const auto linear = [](double v) { return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double x = luminance(a), y = luminance(b);
    return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

struct Pair {
    const char* what;
    QColor front, ground;
    double least;
};

QList<Pair> pairs_of(const QPalette& palette) {
    const auto c = [&](QPalette::ColorRole role) { return palette.color(role); };
    const Ink ink = Ink::from(palette);
    return {{"text of windows", c(QPalette::WindowText), c(QPalette::Window), 4.5},
            {"text in fields", c(QPalette::Text), c(QPalette::Base), 4.5},
            {"text in every other row", c(QPalette::Text), c(QPalette::AlternateBase), 4.5},
            {"text of buttons", c(QPalette::ButtonText), c(QPalette::Button), 4.5},
            {"selected text", c(QPalette::HighlightedText), c(QPalette::Highlight), 4.5},
            {"tool tips", c(QPalette::ToolTipText), c(QPalette::ToolTipBase), 4.5},
            {"hints in empty fields", c(QPalette::PlaceholderText), c(QPalette::Base), 4.5},
            {"links", c(QPalette::Link), c(QPalette::Base), 4.5},
            {"focus", c(QPalette::Highlight), c(QPalette::Window), 3.0},
            {"names on the stage", ink.ink, ink.stage, 4.5},
            {"words around the stage", ink.soft, ink.paper, 4.5},
            {"names of risers", ink.soft, ink.stage, 4.5},
            {"figures of rulers", ink.soft, c(QPalette::Window), 4.5},
            {"selection ring", ink.accent, ink.stage, 3.0}};
}

/// How much neighbouring pixels of a picture differ, at most: an enlarged picture has no sharp edges.
int sharpest_edge(const QImage& picture) {
    int most = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 1; x < picture.width(); ++x)
            most = std::max(most, std::abs(qAlpha(picture.pixel(x, y)) - qAlpha(picture.pixel(x - 1, y))));
    return most;
}

}  // namespace

class TestLooks : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void contrastIsCountedAsInTheStandard() {
        QVERIFY(std::abs(contrast(Qt::black, Qt::white) - 21.0) < 1e-9);
        // Common check values, from memory: #767676 is the lightest grey that passes on white, #777777 does not.
        QVERIFY(contrast(QColor(0x767676), Qt::white) >= 4.5 && contrast(QColor(0x777777), Qt::white) < 4.5);
    }
    void everythingIsReadableLightAndDark() {
        for (const QPalette& palette : {light_palette(), dark_palette()})
            for (const Pair& pair : pairs_of(palette))
                QVERIFY2(contrast(pair.front, pair.ground) >= pair.least,
                         qPrintable(QStringLiteral("%1, %2: %3")
                                        .arg(QLatin1StringView(is_dark(palette) ? "dark" : "light"),
                                             QLatin1StringView(pair.what))
                                        .arg(contrast(pair.front, pair.ground))));
    }
    void boxesToTickAreSeenLightAndDark() {
        for (const Look look : {Look::light, Look::dark}) {
            apply_look(look);
            QCheckBox box;
            box.show();
            QVERIFY(QTest::qWaitForWindowExposed(&box));
            const QImage picture = box.grab().toImage();
            const QColor ground = QApplication::palette().color(QPalette::Window);
            double most = 0.0;
            for (int x = 0; x < picture.width(); ++x)
                most = std::max(most, contrast(picture.pixelColor(x, picture.height() / 2), ground));
            QVERIFY2(most >= 3.0, qPrintable(QString::number(most)));
        }
        apply_look(Look::light);
    }
    void linesOfTablesAreSeenLightAndDark() {
        for (const Look look : {Look::light, Look::dark}) {
            apply_look(look);
            QTableWidget table(2, 2);
            table.show();
            QVERIFY(QTest::qWaitForWindowExposed(&table));
            const QImage picture = table.viewport()->grab().toImage();
            const int y = table.rowHeight(0) + table.rowHeight(1) / 2;  // the first row has the current cell
            const QColor ground = picture.pixelColor(20, y), line = picture.pixelColor(table.columnWidth(0) - 1, y);
            QVERIFY2(contrast(line, ground) >= 1.5, qPrintable(line.name() + u' ' + ground.name()));
        }
        apply_look(Look::light);
    }
    void theDarkPlanIsDark() {
        apply_look(Look::dark);
        {
            const auto window = filled_window();
            QVERIFY(window->plan().plan_scene().style().ink.dark);
            const QImage picture = window->plan().grab().toImage();
            int dark = 0;
            for (int x = 0; x < picture.width(); x += 7)
                for (int y = 0; y < picture.height(); y += 7) dark += qGray(picture.pixel(x, y)) < 100 ? 1 : 0;
            QVERIFY(dark > picture.width() / 7 * (picture.height() / 7) * 8 / 10);
            window->document().set_clean();
        }
        apply_look(Look::light);
    }
    void iconsAreDrawnForTheScreenNotEnlarged() {
        const QIcon open = icon(QStringLiteral("open"));
        for (const double scale : {1.0, 1.5, 2.0, 3.0}) {
            const QPixmap pixmap = open.pixmap(QSize(18, 18), scale);
            QCOMPARE(pixmap.size(), QSize(18, 18) * scale);
            QCOMPARE(pixmap.devicePixelRatio(), scale);
        }
        const QImage fine = open.pixmap(QSize(18, 18), 4.0).toImage();
        const QImage enlarged =
            open.pixmap(QSize(18, 18), 1.0).toImage().scaled(72, 72, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        QVERIFY(sharpest_edge(fine) > sharpest_edge(enlarged));
    }
    void fromRightToLeftThePlanStaysWhatItIs() {
        QApplication::setLayoutDirection(Qt::RightToLeft);
        {
            const auto window = filled_window();
            PlanView& plan = window->plan();
            QVERIFY(plan.layoutDirection() == Qt::LeftToRight && window->layoutDirection() == Qt::RightToLeft);
            QVERIFY(plan.viewport_point({1.0, 0.0}).x() > plan.viewport_point({-1.0, 0.0}).x());
            for (int i = 0; i < 4; ++i) plan.zoom_in();
            // Panning and zooming at the pointer know which way is right.
            const QPoint from(200, 150), was = plan.viewport_point({0.0, 2.0});
            QTest::mousePress(plan.viewport(), Qt::MiddleButton, {}, from);
            QMouseEvent move(QEvent::MouseMove, from + QPoint(40, 10),
                             plan.viewport()->mapToGlobal(from + QPoint(40, 10)), Qt::NoButton, Qt::MiddleButton, {});
            QCoreApplication::sendEvent(plan.viewport(), &move);
            QTest::mouseRelease(plan.viewport(), Qt::MiddleButton, {}, from + QPoint(40, 10));
            QCOMPARE(plan.viewport_point({0.0, 2.0}) - was, QPoint(40, 10));
            const QPoint pixel(320, 200);
            const Vec2 under = plan.plan_point(pixel);
            QWheelEvent turn(pixel, plan.viewport()->mapToGlobal(pixel), {}, {0, 120}, Qt::NoButton, {},
                             Qt::NoScrollPhase, false);
            QCoreApplication::sendEvent(plan.viewport(), &turn);
            QVERIFY((plan.viewport_point(under) - pixel).manhattanLength() <= 2);
            window->document().set_clean();
        }
        QApplication::setLayoutDirection(Qt::LeftToRight);
    }
    void tablesForOtherProgramsHaveDecimalPoints() {
        QLocale::setDefault(QLocale(QLocale::German));
        LoopResponse response;
        response.hz = {31.5, 1000.0};
        response.gain_db = {-3.25, 0.5};
        response.worst_phase_db = {-1.125, 1.5};
        const QString table = QString::fromStdString(response_csv(response, nullptr));
        QLocale::setDefault(QLocale::c());
        const QStringList lines = table.split(u'\n', Qt::SkipEmptyParts);
        QCOMPARE(lines.size(), 3);
        for (const QString& line : lines)
            QCOMPARE(line.count(u','), 4);  // as many as columns call for, none in numbers
        const QStringList first = lines[1].split(u',');
        QCOMPARE(first[0].toDouble(), 31.5);
        QCOMPARE(first[1].toDouble(), -3.25);
    }
};

HOWLMAP_TEST(TestLooks)

}  // namespace howlmap::app

#include "test_looks.moc"
