// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/file_operations.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cstdio>

namespace howlmap {

int FileOperations::open(const char* path, int flags, mode_t mode) { return ::open(path, flags, mode); }
ssize_t FileOperations::write(int file, const void* bytes, std::size_t count) { return ::write(file, bytes, count); }
int FileOperations::sync(int file) { return ::fsync(file); }
int FileOperations::set_mode(int file, mode_t mode) { return ::fchmod(file, mode); }
int FileOperations::rename(const char* from, const char* to) { return ::rename(from, to); }
int FileOperations::remove(const char* path) { return ::unlink(path); }
int FileOperations::close(int file) { return ::close(file); }

int FileOperations::give_name(int file, const char* path) {
    const std::string from = "/proc/self/fd/" + std::to_string(file);  // open(2), O_TMPFILE
    return ::linkat(AT_FDCWD, from.c_str(), AT_FDCWD, path, AT_SYMLINK_FOLLOW);
}

}  // namespace howlmap
