// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a fuzz target over the files of its folder of seeds, and over every tenth of each seed, without a fuzzer.
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

int main(int argc, char** argv) {
    int files = 0;
    for (int i = 1; i < argc; ++i)
        for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::absolute(argv[i]))) {
            std::ifstream in(entry.path(), std::ios::binary);
            const std::string bytes{std::istreambuf_iterator<char>(in), {}};
            for (std::size_t part = 0; part <= 10; ++part)
                LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size() * part / 10);
            ++files;
        }
    std::printf("Totals: %d passed, 0 failed\n", files);
    return files > 0 ? 0 : 1;
}
