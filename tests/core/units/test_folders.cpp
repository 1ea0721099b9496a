// SPDX-License-Identifier: GPL-3.0-or-later
// The shape of the house, read from the #includes: each folder of core uses only itself and folders before it in the
// list, and nothing of Qt or of the window.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <string>
#include <vector>

#include "tests/support/registry.h"

namespace fs = std::filesystem;

namespace {
const std::vector<std::string> kOrder{"units", "geometry",  "show", "file",  "air",   "directivity", "propagation",
                                      "loop",  "listening", "maps", "cures", "audio", "report",      "analysis"};
// Headers of plain result values, which the folders before them in the list may name.
const std::vector<std::string> kPlainValues{"core/analysis/analysis.h"};
const fs::path kSource = HOWLMAP_SOURCE_DIR;

struct Include {
    std::string by, what;
};

std::vector<Include> includes_in(const fs::path& folder) {
    static const std::regex pattern(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"])");
    std::vector<Include> out;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.path().extension() != ".h" && entry.path().extension() != ".cpp") continue;
        std::ifstream in(entry.path());
        std::smatch found;
        for (std::string line; std::getline(in, line);)
            if (std::regex_search(line, found, pattern))
                out.push_back({fs::relative(entry.path(), kSource).string(), found[1]});
    }
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
  private slots:
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
        static const std::regex qt(R"(^(Q[A-Z]|Qt|q[a-z]*custom))");
        for (const Include& include : includes_in(kSource / "core"))
            QVERIFY2(!std::regex_search(include.what, qt) && !include.what.starts_with("app/"),
                     (include.by + " includes " + include.what).c_str());
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
