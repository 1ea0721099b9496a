// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <filesystem>
#include <optional>
#include <string>
#include <tl/expected.hpp>

#include "core/audio/loop_sound.h"

namespace howlmap {

struct HearResult {
    std::optional<double> margin_db;  ///< as drawn
    double raised_db = 0.0;
    std::optional<double>
        dominant_hz;  ///< of the howl as it is held, or of the ring as it dies away; absent where nothing comes back
    std::optional<double> growth_db_per_s;
    double seconds = 0.0;
    std::string input;                    ///< id of the input that the source played into
    std::optional<double> first_ring_hz;  ///< what would ring first if all sends were raised together, as computed
};

struct HearError {
    enum class Kind { input, output, cancelled } kind = Kind::input;
    std::string message;  ///< one sentence
};

/// A recording as a source: mixed to one channel, at 48 kHz. At most ten minutes.
tl::expected<std::vector<float>, std::string> read_source(const std::filesystem::path& path);

/// Lets the loops of a show sound and writes what is heard as a WAV file (mono, 48 kHz, 24 bits).
tl::expected<HearResult, HearError> hear(const Show& show, HearOptions options, const std::filesystem::path& path,
                                         const Job& job = {});

}  // namespace howlmap
