// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/whole_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

namespace howlmap {
namespace {
std::string reason(const char* what) { return std::string(what) + ": " + std::generic_category().message(errno); }

/// Closes at the end of the scope.
struct Descriptor {
    int number;
    ~Descriptor() {
        if (number >= 0) ::close(number);
    }
};
}  // namespace

tl::expected<std::string, std::string> read_whole_file(const std::filesystem::path& path, std::size_t most_bytes) {
    // Without O_NONBLOCK a FIFO that nobody writes to would hang the program.
    const Descriptor file{::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK)};
    if (file.number < 0) return tl::unexpected(reason("cannot be opened"));
    struct stat info {};
    if (::fstat(file.number, &info) != 0) return tl::unexpected(reason("cannot be opened"));
    if (S_ISDIR(info.st_mode)) return tl::unexpected(std::string("is a folder"));
    if (!S_ISREG(info.st_mode)) return tl::unexpected(std::string("is not a regular file"));
    std::string out;
    std::array<char, 1 << 16> chunk;
    while (true) {
        const ssize_t got = ::read(file.number, chunk.data(), chunk.size());
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) return tl::unexpected(reason("cannot be read"));
        if (got == 0) return out;
        out.append(chunk.data(), static_cast<std::size_t>(got));
        if (out.size() > most_bytes)
            return tl::unexpected("is larger than " + std::to_string(most_bytes >> 20) + " MiB");
    }
}

}  // namespace howlmap
