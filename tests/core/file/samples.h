// SPDX-License-Identifier: GPL-3.0-or-later
// Show files that the tests of reading start from.
#pragma once
#include <filesystem>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <string>

namespace howlmap::test {

using Json = nlohmann::ordered_json;

inline std::string text_of_file(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// A file that holds every key of version 1 and every alternative, and an unknown key in every object.
inline std::string sample_text() { return text_of_file(HOWLMAP_SOURCE_DIR "/tests/shows/version-1.howlmap"); }
inline Json sample() {
    static const Json once = Json::parse(sample_text());
    return once;
}

/// The least that a show needs.
inline Json least() {
    return {{"format", "howlmap-show"}, {"version", 1}, {"stage", {{"outline", {{0, 0}, {4, 0}, {4, 3}}}}}};
}

/// The sample with the value at a JSON pointer replaced (or added).
inline std::string sample_with(const std::string& pointer, Json value) {
    Json show = sample();
    show[Json::json_pointer(pointer)] = std::move(value);
    return show.dump();
}

}  // namespace howlmap::test
