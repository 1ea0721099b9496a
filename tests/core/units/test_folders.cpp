// SPDX-License-Identifier: GPL-3.0-or-later
// The shape of the house, read from the #includes: each folder of core uses only itself and folders before it in the
// list, and nothing of Qt or of the window.
#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "tests/support/registry.h"

namespace fs = std::filesystem;

namespace {
const std::vector<std::string> kOrder{"units",       "geometry",    "show",   "file",      "air",
                                      "directivity", "propagation", "loop",   "listening", "maps",
                                      "cures",       "audio",       "report", "analysis",  "lesson"};
// Headers of plain result values, which the folders before them in the list may name.
const std::vector<std::string> kPlainValues{"core/analysis/analysis.h"};
const fs::path kSource = HOWLMAP_SOURCE_DIR;

struct Include {
    std::string by, what;
};

/// What an #include line names, empty for any other line.
std::string included_by(const std::string& line) {
    const std::size_t hash = line.find_first_not_of(" \t");
    if (hash == std::string::npos || line.compare(hash, 8, "#include") != 0) return {};
    const std::size_t open = line.find_first_of("<\"", hash), close = line.find_first_of(">\"", open + 1);
    return open == std::string::npos || close == std::string::npos ? "" : line.substr(open + 1, close - open - 1);
}

/// Calls see(file, line) for every line of code in a folder, the file's path from the top of the project.
template <class See>
void for_all_lines(const fs::path& folder, See see) {
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.path().extension() != ".h" && entry.path().extension() != ".cpp") continue;
        std::ifstream in(entry.path());
        const std::string file = fs::relative(entry.path(), kSource).string();
        for (std::string line; std::getline(in, line);) see(file, line);
    }
}

std::vector<Include> includes_in(const fs::path& folder) {
    std::vector<Include> out;
    for_all_lines(folder, [&](const std::string& file, const std::string& line) {
        if (const std::string what = included_by(line); !what.empty()) out.push_back({file, what});
    });
    return out;
}

std::ptrdiff_t rank(const std::string& folder) {
    return std::find(kOrder.begin(), kOrder.end(), folder) - kOrder.begin();
}

/// "core/show/show.h" -> "show"; empty for anything else.
std::string folder_of(const std::string& path) {
    if (!path.starts_with("core/")) return {};
    return path.substr(5, path.find('/', 5) - 5);
}
}  // namespace

class TestFolders : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void everyFolderIsInTheList() {
        for (const auto& entry : fs::directory_iterator(kSource / "core"))
            if (entry.is_directory())
                QVERIFY2(rank(entry.path().filename()) < std::ssize(kOrder), entry.path().c_str());
    }

    void aFolderUsesOnlyThoseBeforeIt() {
        const auto includes = includes_in(kSource / "core");
        QVERIFY(includes.size() > 200);
        QStringList wrong;
        for (const Include& include : includes) {
            const std::string to = folder_of(include.what);
            if (to.empty() || std::find(kPlainValues.begin(), kPlainValues.end(), include.what) != kPlainValues.end())
                continue;
            if (rank(to) > rank(folder_of(include.by)))
                wrong << QString::fromStdString(include.by + " includes " + include.what);
        }
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join('\n')));
    }

    void coreKnowsNoQtAndNoWindow() {
        for (const Include& include : includes_in(kSource / "core")) {
            const bool qt = include.what.size() > 1 && include.what[0] == 'Q' && std::isalpha(include.what[1]);
            QVERIFY2(!qt && !include.what.starts_with("qcustomplot") && !include.what.starts_with("app/"),
                     (include.by + " includes " + include.what).c_str());
        }
    }

    /// The fuzzers are built with clang 14, which refuses the views of the standard library that goes with GCC 12, and
    /// the algorithms that give one.
    void clangCanReadIt() {
        QStringList wrong;
        for (const char* house : {"core", "app"})
            for_all_lines(kSource / house, [&](const std::string& file, const std::string& line) {
                for (const char* name : {"unique", "remove", "remove_if", "partition", "stable_partition", "rotate",
                                         "shift_left", "search", "find_end", "equal_range"})
                    if (line.find("ranges::" + std::string(name) + "(") != std::string::npos)
                        wrong << QString::fromStdString(file + ": " + line);
                if (included_by(line) == "ranges") wrong << QString::fromStdString(file + ": " + line);
            });
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join('\n')));
    }

    void heavyLibrariesStayOutOfHeaders() {
        for (const Include& include : includes_in(kSource / "core")) {
            if (!include.by.ends_with(".h")) continue;
            for (const char* heavy : {"nlohmann/json.hpp", "boost/geometry"})
                QVERIFY2(!include.what.starts_with(heavy), (include.by + " includes " + include.what).c_str());
        }
    }
};

HOWLMAP_TEST(TestFolders)
#include "test_folders.moc"
