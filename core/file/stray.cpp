// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/stray.h"

#include <fmt/format.h>
#include <signal.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <charconv>
#include <cstdint>
#include <optional>

#include "core/file/file_operations.h"
#include "core/file/json_tree.h"

namespace howlmap {
namespace {
namespace fs = std::filesystem;

/// 64-bit FNV-1a, so that a name of 255 bytes has a short stand-in that is the same in every process.
std::uint64_t hash_of(const std::string& name) {
    std::uint64_t hash = 0xCBF29CE484222325u;
    for (const char c : name) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001B3u;
    return hash;
}

std::string beginning_for(const fs::path& target) {
    return fmt::format(".howlmap-{:016x}-", hash_of(target.filename().native()));
}

/// Process that a name says is writing.
std::optional<pid_t> writer_of(const std::string& name, const std::string& beginning) {
    if (!name.starts_with(beginning)) return std::nullopt;
    pid_t process = 0;
    const char* end = name.data() + name.size();
    const auto [stop, trouble] = std::from_chars(name.data() + beginning.size(), end, process);
    if (trouble != std::errc{} || stop == end || *stop != '-') return std::nullopt;
    return process;
}

bool lives(pid_t process) { return ::kill(process, 0) == 0 || errno != ESRCH; }
}  // namespace

std::string stray_name(const fs::path& target) {
    static std::atomic<unsigned> count{0};
    return beginning_for(target) + fmt::format("{}-{}", ::getpid(), count++);
}

void sweep_strays(const fs::path& path) {
    std::error_code none;
    const fs::path target = fs::weakly_canonical(fs::absolute(path), none);
    if (none) return;
    const std::string beginning = beginning_for(target);
    for (fs::directory_iterator entry(target.parent_path(), none), end; !none && entry != end; entry.increment(none)) {
        const auto process = writer_of(entry->path().filename().native(), beginning);
        if (process && !lives(*process)) fs::remove(entry->path(), none);
    }
}

std::string shown_path(const fs::path& path) { return file::in_quotes_lossy(path.native()); }

}  // namespace howlmap
