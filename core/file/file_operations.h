// SPDX-License-Identifier: GPL-3.0-or-later
// The system calls that saving makes, so that a test can let any of them fail.
#pragma once
#include <sys/types.h>

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace howlmap {

/// Each returns what the call of POSIX returns and leaves errno as it does.
class FileOperations {
  public:
    virtual ~FileOperations() = default;
    virtual int open(const char* path, int flags, mode_t mode);
    virtual ssize_t write(int file, const void* bytes, std::size_t count);
    virtual int sync(int file);
    virtual int set_mode(int file, mode_t mode);
    /// Gives a file that was opened without a name its first one.
    virtual int give_name(int file, const char* path);
    virtual int rename(const char* from, const char* to);
    virtual int remove(const char* path);
    virtual int close(int file);
};

/// save_atomically by the given calls.
tl::expected<void, std::string> save_atomically(const std::filesystem::path& path, std::string_view bytes,
                                                FileOperations& files);

/// Removes what saves that were killed left beside a file (never what a living process is writing).
void sweep_strays(const std::filesystem::path& path);

}  // namespace howlmap
