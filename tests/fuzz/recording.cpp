// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a recording: through the reader to the howls and, where short, to the modes of a tapped body.
#include <unistd.h>

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "core/audio/ring_recording.h"
#include "core/audio/tap.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace howlmap;
    static const auto path = std::filesystem::temp_directory_path() / ("howlmap-fuzz-" + std::to_string(::getpid()));
    std::ofstream(path, std::ios::binary)
        .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
    auto reader = RecordingReader::open(path);
    if (reader && reader->seconds() < 60.0) {
        const auto findings = find_howls(std::move(*reader));
        if (findings)
            for (const Howl& howl : findings->howls)
                if (!std::isfinite(howl.hz) || howl.hz <= 0.0) std::abort();
    }
    if (const auto recording = read_mono(path, 2.0)) (void)tap_modes(recording->samples, recording->rate);
    std::filesystem::remove(path);
    return 0;
}
