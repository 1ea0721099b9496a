// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QProcess>
#include <functional>
#include <mutex>
#include <thread>

namespace howlmap::test {

/// Whether a test may start a program and go on beside it. Not under the thread sanitizer: it loses track of a thread
/// that has started one, and does not watch that program anyway.
#ifdef __SANITIZE_THREAD__
inline constexpr bool kMayStartPrograms = false;
#else
inline constexpr bool kMayStartPrograms = true;
#endif

struct Ended {
    int status = -1;  ///< -1: it did not start, crashed, or took too long
    QByteArray out, err;
};

/// Runs a program to its end, in a thread of its own: see kMayStartPrograms.
inline Ended run_to_end(const QString& program, const QStringList& arguments, int seconds = 120,
                        const std::function<void(QProcess&)>& prepare = {}) {
    Ended ended;
    // For the sanitizer, which sees neither the end of a thread in Debian's library nor what the thread does after
    // start().
    std::mutex handed_back;
    std::thread([&] {
        QProcess process;
        if (prepare) prepare(process);
        process.setProgram(program);
        process.setArguments(arguments);
        { const std::lock_guard lock(handed_back); }
        process.start();
        if (process.waitForFinished(1000 * seconds) && process.exitStatus() == QProcess::NormalExit)
            ended.status = process.exitCode();
        ended.out = process.readAllStandardOutput();
        ended.err = process.readAllStandardError();
    }).join();
    const std::lock_guard lock(handed_back);
    return ended;
}

}  // namespace howlmap::test
