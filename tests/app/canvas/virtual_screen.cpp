// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/canvas/virtual_screen.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QStandardPaths>
#include <QtEndian>
#include <QtTest>
#include <algorithm>

#include "tests/support/run_to_end.h"

namespace howlmap::app {
namespace {
constexpr int kLookMs = 50;   ///< between two looks at the screen
constexpr int kRestMs = 300;  ///< without a change is rest; shorter than a cursor blinks

int different_pixels(const QImage& a, const QImage& b, const QRect& part) {
    int count = 0;
    const QRect both = part & a.rect() & b.rect();
    for (int y = both.top(); y <= both.bottom(); ++y)
        for (int x = both.left(); x <= both.right(); ++x) count += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
    return count;
}

/// A screen on which nothing was painted yet is black.
bool shows_something(const QImage& screen) {
    int lit = 0;
    for (int y = 0; y < screen.height(); y += 8)
        for (int x = 0; x < screen.width(); x += 8) lit += qGray(screen.pixel(x, y)) > 60 ? 1 : 0;
    return lit > screen.width() * screen.height() / 64 / 2;
}
}  // namespace

VirtualScreen::VirtualScreen(QSize pixels, double scale) : scale_(scale) {
    screen_.start(QStringLiteral("Xvfb"), {QStringLiteral("-displayfd"), QStringLiteral("1"), QStringLiteral("-fbdir"),
                                           home_.path(), QStringLiteral("-screen"), QStringLiteral("0"),
                                           QStringLiteral("%1x%2x24").arg(pixels.width()).arg(pixels.height())});
    QByteArray number;
    const bool told = until(
        [&] {
            screen_.waitForReadyRead(kLookMs);
            return (number += screen_.readAllStandardOutput()).endsWith('\n');
        },
        60);
    if (told) display_ = u':' + QString::fromLatin1(number.trimmed());
}

QProcessEnvironment VirtualScreen::world() const {
    QProcessEnvironment world = QProcessEnvironment::systemEnvironment();
    world.insert(QStringLiteral("DISPLAY"), display_);
    world.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("xcb"));
    world.insert(QStringLiteral("QT_SCALE_FACTOR"), QString::number(scale_));
    world.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
    for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
        world.insert(QLatin1StringView(name), home_.filePath(QLatin1StringView(name)));
    return world;
}

VirtualScreen::~VirtualScreen() {
    end_program();
    screen_.terminate();
    screen_.waitForFinished();
}

bool VirtualScreen::possible() {
    return test::kMayUseQProcess && !QStandardPaths::findExecutable(QStringLiteral("Xvfb")).isEmpty() &&
           !QStandardPaths::findExecutable(QStringLiteral("xdotool")).isEmpty();
}

bool VirtualScreen::until(const std::function<bool()>& sign, int seconds) {
    QElapsedTimer clock;
    clock.start();
    while (!sign()) {
        if (clock.hasExpired(1000LL * seconds)) return false;
        QTest::qWait(kLookMs);
    }
    return true;
}

bool VirtualScreen::start_program(const QString& file) {
    end_program();
    for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
        QDir(home_.filePath(QLatin1StringView(name))).removeRecursively();
    program_.setProcessEnvironment(world());
    program_.start(qEnvironmentVariable("HOWLMAP_PROGRAM"), {file});
    const auto visible = [&] {
        window_ = ask(QStringLiteral("search --onlyvisible --name Howlmap")).section(u'\n', 0, 0);
        return !window_.isEmpty();
    };
    if (!until(visible, 60)) return false;
    hand(QStringLiteral("windowmove %1 0 0").arg(window_));
    return until([&] { return window_has_focus(); }, 30) && until([&] { return shows_something(picture()); }, 60) &&
           comes_to_rest();
}

/// No window manager gives the focus here: it is asked for until it is there.
bool VirtualScreen::window_has_focus() {
    if (ask(QStringLiteral("getwindowfocus -f")) == window_) return true;
    hand(QStringLiteral("windowfocus %1").arg(window_));
    return false;
}

void VirtualScreen::end_program() {
    if (program_.state() == QProcess::NotRunning) return;
    program_.kill();
    program_.waitForFinished();
    story_.append(QStringLiteral("the program said: ") + QString::fromUtf8(program_.readAllStandardError()) +
                  QString::fromUtf8(program_.readAllStandardOutput()));
}

void VirtualScreen::hand(const QString& words) { ask(words); }

QString VirtualScreen::ask(const QString& words) {
    QProcess tool;
    tool.setProcessEnvironment(world());
    tool.start(QStringLiteral("xdotool"), words.split(u' '));
    const bool ended = tool.waitForFinished(60000);
    const QString answer = QString::fromUtf8(tool.readAllStandardOutput()).trimmed();
    story_.append(QStringLiteral("xdotool %1 -> %2 %3 %4")
                      .arg(words, answer, QString::fromUtf8(tool.readAllStandardError()).trimmed(),
                           ended ? QString::number(tool.exitCode()) : QStringLiteral("did not end")));
    return answer;
}

/// Xvfb keeps its screen in a file in the format of xwd: a header of big-endian words, a table of colours, the pixels.
QImage VirtualScreen::picture() const {
    QFile file(home_.filePath(QStringLiteral("Xvfb_screen0")));
    if (!file.open(QIODevice::ReadOnly)) return {};
    const QByteArray bytes = file.readAll();
    const auto word = [&](int index) {
        return static_cast<qsizetype>(qFromBigEndian<quint32>(&bytes.data()[4 * index]));
    };
    constexpr int kHeaderSize = 0, kWidth = 4, kHeight = 5, kBytesPerLine = 12, kColours = 19, kBytesPerColour = 12;
    if (bytes.size() < 100) return {};
    const qsizetype start = word(kHeaderSize) + word(kColours) * kBytesPerColour;
    if (bytes.size() < start + word(kBytesPerLine) * word(kHeight)) return {};
    return QImage(reinterpret_cast<const uchar*>(bytes.constData()) + start, static_cast<int>(word(kWidth)),
                  static_cast<int>(word(kHeight)), word(kBytesPerLine), QImage::Format_RGB32)
        .copy();
}

void VirtualScreen::keep_picture(const QString& name) const {
    const QString folder = qEnvironmentVariable("HOWLMAP_PICTURES");
    if (!folder.isEmpty()) picture().save(QDir(folder).filePath(name + QStringLiteral(".png")));
}

bool VirtualScreen::comes_to_rest(int seconds) const {
    QImage last = picture();
    QElapsedTimer rest;
    rest.start();
    return until(
        [&] {
            QImage now = picture();
            if (now != last) rest.restart();
            last = std::move(now);
            return rest.hasExpired(kRestMs);
        },
        seconds);
}

bool VirtualScreen::differs(const QImage& before, const QRect& part, int pixels, int seconds) const {
    return until([&] { return different_pixels(before, picture(), part) >= pixels; }, seconds);
}

QString VirtualScreen::story() {
    end_program();
    return story_.join(u'\n');
}

}  // namespace howlmap::app
