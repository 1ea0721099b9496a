// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/read.h"

#include "core/file/fields/show.h"
#include "core/file/fields_in.h"
#include "core/file/migrate.h"
#include "core/file/references.h"
#include "core/file/whole_file.h"

namespace howlmap {
namespace {
using namespace file;

const Value* member(const Value& root, std::string_view key) {
    for (const Member& member : std::get<Object>(root.data))
        if (member.key == key) return &member.value;
    return nullptr;
}

/// The file's version; also makes sure that it is a show at all.
int version_of(const Value& root) {
    const Cursor at(root);
    at.members();
    Cursor(at, "format", member(root, "format")).word(std::span(&kFormat, 1));
    return static_cast<int>(Cursor(at, "version", member(root, "version")).whole({1.0, 1e9}));
}

Show show_of(const Value& root) {
    Show show;
    read_object(Cursor(root), show);
    if (auto breach = check_references(show)) throw Refusal{std::move(*breach)};
    return show;
}

FileError too_new(int version, const FileError& why) {
    const std::string name = "version " + std::to_string(version);
    return {"/version", name + " of the show format",
            "version " + std::to_string(kVersion) +
                " or older: the file comes from a newer Howlmap and holds what this one cannot read (" + why.message() +
                ")"};
}
}  // namespace

std::string FileError::message(std::string_view file) const {
    std::string out(file);
    if (!out.empty()) out += ": ";
    if (!place.empty()) out += place + ": ";
    if (expected.empty()) return out + found;
    return out + "found " + found + ", expected " + expected;
}

tl::expected<ReadShow, FileError> read_show(std::string_view text) {
    auto root = parse(text);
    if (!root) return tl::unexpected(std::move(root.error()));
    int version = kVersion;
    try {
        version = version_of(*root);
        migrate(*root, version, steps());
        return ReadShow{show_of(*root), version, version > kVersion};
    } catch (Refusal& refusal) {
        return tl::unexpected(version > kVersion ? too_new(version, refusal.error) : std::move(refusal.error));
    }
}

tl::expected<ReadShow, FileError> load_show(const std::filesystem::path& path) {
    const auto text = read_whole_file(path, limits::kFileBytes);
    if (!text) return tl::unexpected(FileError{"", text.error(), ""});
    return read_show(*text);
}

}  // namespace howlmap
