// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QProcess>
#include <functional>
#include <thread>

namespace howlmap::test {

struct Ended {
    int status = -1;  ///< -1: it did not start, crashed, or took too long
    QByteArray out, err;
};

/// Runs a program to its end. In a thread of its own: the thread sanitizer loses track of one that has started a
/// program.
inline Ended run_to_end(const QString& program, const QStringList& arguments, int seconds = 120,
                        const std::function<void(QProcess&)>& prepare = {}) {
    Ended ended;
    std::thread([&] {
        QProcess process;
        if (prepare) prepare(process);
        process.start(program, arguments);
        if (process.waitForFinished(1000 * seconds) && process.exitStatus() == QProcess::NormalExit)
            ended.status = process.exitCode();
        ended.out = process.readAllStandardOutput();
        ended.err = process.readAllStandardError();
    }).join();
    return ended;
}

}  // namespace howlmap::test
