// SPDX-License-Identifier: GPL-3.0-or-later
// A screen of its own (Xvfb) with the program on it, a real pointer and real keys (xdotool), and eyes: every step waits
// for a sign on the screen, never for a fixed time, so that a slow machine is only slow.
#pragma once
#include <QImage>
#include <QProcess>
#include <QSize>
#include <QStringList>
#include <QTemporaryDir>
#include <functional>

namespace howlmap::app {

class VirtualScreen {
  public:
    /// A screen of so many pixels, and how many of them the program is to give a point.
    explicit VirtualScreen(QSize pixels = {1280, 800}, double scale = 1.0);
    ~VirtualScreen();
    static bool possible();  ///< whether the tools for it are installed and may be started
    bool is_there() const { return !display_.isEmpty(); }

    /// Starts the program with a file and settings of a first start; true when its window is there, has the focus and
    /// has come to rest.
    bool start_program(const QString& file);
    void end_program();

    void hand(const QString& words);               ///< what xdotool is to do, in the words of its manual
    QImage picture() const;                        ///< of the whole screen
    void keep_picture(const QString& name) const;  ///< in the folder HOWLMAP_PICTURES, if it is named
    bool comes_to_rest(int seconds = 60) const;
    /// Whether, in time, so many pixels of a part of the screen differ from a picture taken before.
    bool differs(const QImage& before, const QRect& part, int pixels, int seconds = 30) const;

    /// Everything that was told to the tools and what they and the program said, for a test that fails.
    QString story();
    static bool until(const std::function<bool()>& sign, int seconds);

  private:
    QString ask(const QString& words);
    QProcessEnvironment world() const;
    bool window_has_focus();

    QTemporaryDir home_;
    QProcess screen_, program_;
    QString display_, window_;
    double scale_;
    QStringList story_;
};

}  // namespace howlmap::app
