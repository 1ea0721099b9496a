// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/hear.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/audio/recording.h"
#include "core/audio/resample.h"
#include "core/audio/spectral_top.h"
#include "core/loop/stability.h"
#include "core/show/find.h"

namespace howlmap {
namespace {

constexpr double kRate = 48000.0, kLongestSource_s = 600.0;
constexpr std::size_t kHearBlock = 4800;

using Failed = tl::unexpected<HearError>;

Failed failed(HearError::Kind kind, std::string message) { return Failed({kind, std::move(message)}); }

// Plays to the file; keeps the last two seconds.
tl::expected<std::vector<float>, HearError> render(LoopSound& sound, const std::filesystem::path& path,
                                                   const Job& job) {
    auto writer = RecordingWriter::create(path, static_cast<int>(sound.rate_hz()), 1);
    if (!writer) return failed(HearError::Kind::output, writer.error());
    const auto total = static_cast<std::size_t>(sound.seconds() * sound.rate_hz());
    std::vector<float> block(kHearBlock), end;
    for (std::size_t done = 0; done < total; done += block.size()) {
        if (job.cancelled()) return failed(HearError::Kind::cancelled, "cancelled");
        block.resize(std::min(kHearBlock, total - done));
        sound.play(block);
        if (auto written = writer->write(block); !written) return failed(HearError::Kind::output, written.error());
        if (static_cast<double>(total - done) <= 2.0 * sound.rate_hz())
            end.insert(end.end(), block.begin(), block.end());
        job.report(0.3 + 0.6 * static_cast<double>(done) / static_cast<double>(total));
    }
    if (auto closed = writer->close(); !closed) return failed(HearError::Kind::output, closed.error());
    return end;
}

}  // namespace

tl::expected<std::vector<float>, std::string> read_source(const std::filesystem::path& path) {
    const auto recording = read_mono(path, kLongestSource_s);
    if (!recording) return tl::unexpected(recording.error());
    if (recording->samples.empty()) return tl::unexpected(fmt::format("{}: holds no sound", path.string()));
    return resampled(recording->samples, recording->rate, kRate);
}

tl::expected<HearResult, HearError> hear(const Show& show, HearOptions options, const std::filesystem::path& path,
                                         const Job& job) {
    if (!options.input.empty() && !find_by_id(show.inputs, options.input))
        return failed(HearError::Kind::input, fmt::format("the show has no input {}", options.input));
    options.rate_hz = kRate;
    HearResult out;
    out.raised_db = options.raise_db;
    const Stability stability = stability_of(show, true, job);
    out.margin_db = stability.margin_db;
    if (!stability.rings.empty()) out.first_ring_hz = stability.rings.front().hz;
    auto sound = LoopSound::prepare(show, std::move(options), {job.stop, [&](double f) { job.report(0.3 * f); }});
    if (job.cancelled()) return failed(HearError::Kind::cancelled, "cancelled");
    if (!sound)
        return failed(HearError::Kind::input,
                      "no microphone or pickup of this show is sent to a loudspeaker, so there is no loop to hear");
    const auto end = render(*sound, path, job);
    if (!end) return Failed(end.error());
    out.seconds = sound->seconds();
    out.input = sound->input();
    if (const auto probe = sound->measure(job); probe && out.margin_db) {
        out.growth_db_per_s = probe->growth_db_per_s;
        // A growing ring lies a little beside the one that the amplifier holds: what is heard longest is told.
        out.dominant_hz = probe->growth_db_per_s > 0.0 ? dominant_hz(*end, 0.0, sound->rate_hz()) : probe->dominant_hz;
    }
    job.report(1.0);
    return out;
}

}  // namespace howlmap
