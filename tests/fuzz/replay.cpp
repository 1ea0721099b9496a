// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a fuzz target without a fuzzer: over its seeds and every tenth of each, then, if asked, over seeds with random
// wounds.
//   fuzz_NAME FOLDER [SECONDS [SEED]]
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {
void run(const std::string& bytes) {
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}

std::vector<std::string> seeds_in(const std::filesystem::path& folder) {
    std::vector<std::string> seeds;
    for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::absolute(folder))) {
        std::ifstream in(entry.path(), std::ios::binary);
        seeds.emplace_back(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
    }
    return seeds;
}

/// One seed with a few bytes changed, cut out, doubled or taken from another.
class Wounds {
  public:
    Wounds(const std::vector<std::string>& seeds, unsigned seed) : seeds_(seeds), random_(seed) {}

    std::string next() {
        std::string bytes = seeds_[below(seeds_.size())];
        for (std::size_t left = 1 + below(6); left > 0 && !bytes.empty(); --left) wound(bytes);
        return bytes;
    }

  private:
    std::size_t below(std::size_t count) { return random_() % count; }

    void wound(std::string& bytes) {
        const std::size_t at = below(bytes.size()), length = 1 + below(40);
        const std::string& other = seeds_[below(seeds_.size())];
        switch (below(5)) {
            case 0:
                bytes[at] = static_cast<char>(below(256));
                break;
            case 1:
                bytes.erase(at, length);
                break;
            case 2:
                bytes.insert(at, bytes.substr(at, length));
                break;
            case 3:
                if (!other.empty()) bytes.replace(at, length, other.substr(below(other.size()), length));
                break;
            default:
                bytes[at] = "0123456789-.eE,:\"[]{}\n;x"[below(24)];
        }
    }

    const std::vector<std::string>& seeds_;
    std::mt19937 random_;
};
}  // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> seeds = argc > 1 ? seeds_in(argv[1]) : std::vector<std::string>();
    if (seeds.empty()) return 1;
    for (const std::string& bytes : seeds)
        for (std::size_t part = 0; part <= 10; ++part) run(bytes.substr(0, bytes.size() * part / 10));
    if (argc > 2) {
        const unsigned seed = argc > 3 ? static_cast<unsigned>(std::stoul(argv[3])) : std::random_device()();
        std::printf("seed %u\n", seed);
        std::fflush(stdout);
        Wounds wounds(seeds, seed);
        const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(std::stol(argv[2]));
        long runs = 0;
        for (; std::chrono::steady_clock::now() < end; ++runs) {
            const std::string bytes = wounds.next();
            std::ofstream("last-input", std::ios::binary) << bytes;  // what was the matter when it ends here
            run(bytes);
        }
        std::printf("%ld runs\n", runs);
        std::filesystem::remove("last-input");
    }
    std::printf("Totals: %zu passed, 0 failed\n", seeds.size());
}
