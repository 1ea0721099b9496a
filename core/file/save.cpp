// SPDX-License-Identifier: GPL-3.0-or-later
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <optional>
#include <system_error>

#include "core/file/file_operations.h"
#include "core/file/stray.h"
#include "core/file/write.h"

namespace howlmap {
namespace {
namespace fs = std::filesystem;

/// Thrown inside this file, turned into a sentence at its edge.
struct Failure {
    std::string why;
    bool written = false;  ///< the new content is in place all the same
};

std::string why(int error) {
    switch (error) {
        case ENOSPC:
        case EDQUOT:
            return "the disk is full";
        case EACCES:
        case EPERM:
            return "you may not write there";
        case EROFS:
            return "the disk is read-only";
        case ENOENT:
        case ENOTDIR:
            return "its folder is not there";
        case ENAMETOOLONG:
            return "the name is too long";
        case ELOOP:
            return "its links lead round in a circle";
        case EIO:
            return "the disk reports a fault";
        default:
            return std::generic_category().message(error);
    }
}

void check(bool good) {
    if (!good) throw Failure{why(errno)};
}

/// Where links lead to, though nothing may be there yet.
fs::path real_target(fs::path path) {
    for (int links = 0; links < 40; ++links) {
        std::error_code none;
        if (!fs::is_symlink(fs::symlink_status(path, none))) return path;
        const fs::path to = fs::read_symlink(path, none);
        if (none) throw Failure{why(none.value())};
        path = to.is_absolute() ? to : path.parent_path() / to;
    }
    throw Failure{why(ELOOP)};
}

/// Mode of the file that is to be replaced, none when there is none; refuses what is not a plain file one may write.
std::optional<mode_t> mode_of_target(const fs::path& target) {
    struct stat info {};
    if (::stat(target.c_str(), &info) != 0) {
        check(errno == ENOENT);
        return std::nullopt;
    }
    if (S_ISDIR(info.st_mode)) throw Failure{"it is a folder"};
    if (!S_ISREG(info.st_mode)) throw Failure{"it is a device, not a file"};
    check(::access(target.c_str(), W_OK) == 0);
    return info.st_mode & 07777;
}

bool is_folder(const fs::path& path) {
    std::error_code none;
    return fs::is_directory(path, none);
}

bool proc_is_there() { return ::access("/proc/self/fd", X_OK) == 0; }

/// The new content until it takes the target's place. Without a name as long as the system allows, so that not even a
/// killed save leaves anything behind.
class Temporary {
  public:
    Temporary(const fs::path& folder, const fs::path& target, FileOperations& files)
        : files_(files), name_(folder / stray_name(target)) {
        constexpr int kFlags = O_WRONLY | O_CLOEXEC;
        if (proc_is_there()) file_ = files_.open(folder.c_str(), kFlags | O_TMPFILE, 0666);
        if (file_ >= 0) return;
        file_ = files_.open(name_.c_str(), kFlags | O_CREAT | O_EXCL, 0666);
        if (file_ < 0 && errno == ENOENT && is_folder(folder)) throw Failure{"no file can be made in its folder"};
        check(file_ >= 0);
        named_ = true;
    }
    Temporary(const Temporary&) = delete;
    ~Temporary() {
        if (file_ >= 0) files_.close(file_);
        if (named_) files_.remove(name_.c_str());
    }

    void write(std::string_view bytes) {
        while (!bytes.empty()) {
            const ssize_t done = files_.write(file_, bytes.data(), bytes.size());
            if (done < 0 && errno == EINTR) continue;
            check(done >= 0);
            if (done == 0) throw Failure{why(ENOSPC)};
            bytes.remove_prefix(static_cast<std::size_t>(done));
        }
    }
    void set_mode(mode_t mode) { check(files_.set_mode(file_, mode) == 0); }
    void sync() { check(files_.sync(file_) == 0); }
    void replace(const fs::path& target) {
        if (!named_) {
            check(files_.give_name(file_, name_.c_str()) == 0);
            named_ = true;
        }
        check(files_.rename(name_.c_str(), target.c_str()) == 0);
        named_ = false;
    }

  private:
    FileOperations& files_;
    fs::path name_;
    int file_ = -1;
    bool named_ = false;
};

/// The new name itself is on the disk only when its folder is.
void sync_folder(const fs::path& folder, FileOperations& files) {
    const int file = files.open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC, 0);
    const bool opened = file >= 0;
    const bool synced = opened && (files.sync(file) == 0 || errno == EINVAL);  // some file systems cannot
    const int error = errno;
    if (opened) files.close(file);
    if (!synced) throw Failure{why(error), true};
}

void save(const fs::path& path, std::string_view bytes, FileOperations& files) {
    const fs::path target = real_target(path);
    const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
    const auto mode = mode_of_target(target);
    {
        Temporary file(folder, target, files);
        file.write(bytes);
        if (mode) file.set_mode(*mode);
        file.sync();
        file.replace(target);
    }
    sync_folder(folder, files);
}
}  // namespace

tl::expected<void, std::string> save_atomically(const fs::path& path, std::string_view bytes, FileOperations& files) {
    sweep_strays(path);
    try {
        save(path, bytes, files);
        return {};
    } catch (const Failure& failure) {
        if (failure.written)
            return tl::unexpected(shown_path(path) + " was written, but the disk does not confirm it (" + failure.why +
                                  "): save it again, or in another place.");
        return tl::unexpected(shown_path(path) + " could not be saved: " + failure.why +
                              ". What was there before is untouched.");
    }
}

tl::expected<void, std::string> save_atomically(const fs::path& path, std::string_view bytes) {
    FileOperations files;
    return save_atomically(path, bytes, files);
}

}  // namespace howlmap
