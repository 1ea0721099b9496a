// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>

#include <QFile>
#include <QProcessEnvironment>
#include <QTemporaryDir>
#include <vector>

namespace howlmap::test {

/// Whether a test may use QProcess while threads are at work. Not under the thread sanitizer: for a moment QProcess
/// shares its memory with the program that it starts, which the sanitizer takes for the end of all other threads.
#ifdef __SANITIZE_THREAD__
inline constexpr bool kMayUseQProcess = false;
#else
inline constexpr bool kMayUseQProcess = true;
#endif

struct Ended {
    int status = -1;  ///< -1: it did not start, or crashed
    QByteArray out, err;
};

/// Words as C wants them; valid as long as the words are.
inline std::vector<char*> pointers_to(QByteArrayList& words) {
    std::vector<char*> pointers;
    for (QByteArray& word : words) pointers.push_back(word.data());
    pointers.push_back(nullptr);
    return pointers;
}

/// Runs a program to its end, without QProcess. Given: where its output goes if not into the result.
inline Ended run_to_end(const QString& program, const QStringList& arguments,
                        const QProcessEnvironment& world = QProcessEnvironment::systemEnvironment(),
                        const QString& output_to = {}) {
    const QTemporaryDir folder;
    const QString out = output_to.isEmpty() ? folder.filePath(QStringLiteral("out")) : output_to;
    const QString err = folder.filePath(QStringLiteral("err"));
    QByteArrayList words{program.toLocal8Bit()}, variables;
    for (const QString& argument : arguments) words.append(argument.toLocal8Bit());
    for (const QString& variable : world.toStringList()) variables.append(variable.toLocal8Bit());
    posix_spawn_file_actions_t files;
    posix_spawn_file_actions_init(&files);
    posix_spawn_file_actions_addopen(&files, 0, "/dev/null", O_RDONLY, 0);
    posix_spawn_file_actions_addopen(&files, 1, out.toLocal8Bit(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    posix_spawn_file_actions_addopen(&files, 2, err.toLocal8Bit(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    Ended ended;
    pid_t process = 0;
    int status = 0;
    const bool started = posix_spawnp(&process, words[0], &files, nullptr, pointers_to(words).data(),
                                      pointers_to(variables).data()) == 0;
    if (started && waitpid(process, &status, 0) == process && WIFEXITED(status)) ended.status = WEXITSTATUS(status);
    posix_spawn_file_actions_destroy(&files);
    const auto content = [](const QString& name) {
        QFile file(name);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    };
    if (output_to.isEmpty()) ended.out = content(out);
    ended.err = content(err);
    return ended;
}

}  // namespace howlmap::test
