// SPDX-License-Identifier: GPL-3.0-or-later
// The program itself on screens of one, one and a half and two pixels to the point: it comes up, whole, and everything
// grows with the screen. Skipped where Xvfb or xdotool is not installed.
#include <QFile>
#include <QTemporaryDir>

#include "app/settings/theme.h"
#include "tests/app/canvas/virtual_screen.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// Height in pixels of the row of Parts that is marked, which is drawn in the accent.
int height_of_marked_row(const QImage& screen, double scale) {
    const QRgb accent = light_palette().color(QPalette::Highlight).rgb() | 0xff000000;
    int height = 0;
    for (int y = 0; y < screen.height() / 2; ++y) {
        int lit = 0;
        for (int x = 0; x < 150 * scale; ++x) lit += screen.pixel(x, y) == accent ? 1 : 0;
        height += lit > 20 * scale ? 1 : 0;
    }
    return height;
}

}  // namespace

class TestFineScreens : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void everything_grows_with_the_screen_data() {
        QTest::addColumn<double>("scale");
        for (const double scale : {1.0, 1.5, 2.0}) QTest::newRow(qPrintable(QString::number(scale))) << scale;
    }
    void everything_grows_with_the_screen() {
        if (!VirtualScreen::possible()) QSKIP("no Xvfb or xdotool that may be started here");
        if (!QFile::exists(qEnvironmentVariable("HOWLMAP_PROGRAM"))) QSKIP("the program is not built");
        QFETCH(const double, scale);
        QTemporaryDir folder;
        const QString file = folder.filePath(QStringLiteral("band.howlmap"));
        QVERIFY(QFile::copy(QStringLiteral(":/examples/folk-band-six.howlmap"), file));
        VirtualScreen screen(QSize(1280, 800) * scale, scale);
        QVERIFY(screen.is_there());
        if (!screen.start_program(file)) QFAIL(qPrintable(screen.story()));  // the story ends the program
        const QImage picture = screen.picture();
        screen.keep_picture(QStringLiteral("scale-%1").arg(scale));
        QCOMPARE(picture.size(), QSize(1280, 800) * scale);
        const int height = height_of_marked_row(picture, scale);
        QVERIFY2(std::abs(height - 30 * scale) <= 2 * scale, qPrintable(QString::number(height)));
        // The status bar reaches the lower edge of the screen: the window has the size that was asked for.
        const QRgb ground = light_palette().color(QPalette::Window).rgb() | 0xff000000;
        QCOMPARE(picture.pixel(4, picture.height() - 3), ground);
    }
};

HOWLMAP_TEST(TestFineScreens)

}  // namespace howlmap::app

#include "test_fine_screens.moc"
