// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/ring_recording.h"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>

#include "core/audio/ring_detector.h"

namespace howlmap {
namespace {

constexpr std::size_t kReadBlock = 65536;  // frames a channel

// One channel: its detector and the samples of the block at hand.
struct Channel {
    RingDetector detector;
    std::vector<float> samples;
};

void search(std::vector<Channel>& channels, const std::vector<float>& interleaved, std::size_t frames) {
    const std::size_t step = channels.size();
    tbb::parallel_for(std::size_t{0}, step, [&](std::size_t c) {
        Channel& channel = channels[c];
        channel.samples.resize(frames);
        for (std::size_t i = 0; i < frames; ++i) channel.samples[i] = interleaved[i * step + c];
        channel.detector.push(channel.samples);
    });
}

bool same(const Howl& a, const Howl& b) {
    return std::abs(a.hz - b.hz) < std::max(1.0, 0.005 * a.hz) && a.from_s <= b.to_s && b.from_s <= a.to_s;
}

}  // namespace

std::vector<Howl> merge_howls(std::vector<Howl> howls) {
    std::stable_sort(howls.begin(), howls.end(),
                     [](const Howl& a, const Howl& b) { return a.level_dbfs > b.level_dbfs; });
    std::vector<Howl> out;
    for (const Howl& howl : howls)
        if (std::none_of(out.begin(), out.end(), [&](const Howl& kept) { return same(kept, howl); }))
            out.push_back(howl);
    std::stable_sort(out.begin(), out.end(), [](const Howl& a, const Howl& b) { return a.from_s < b.from_s; });
    return out;
}

tl::expected<RingFindings, std::string> find_howls(RecordingReader reader, const Job& job) {
    const auto count = static_cast<std::size_t>(reader.channels());
    std::vector<Channel> channels;
    for (std::size_t c = 0; c < count; ++c) channels.push_back({RingDetector(reader.rate()), {}});
    std::vector<float> interleaved((count > 8 ? kReadBlock / 8 : kReadBlock) * count);
    std::int64_t frames = 0;
    for (;;) {
        if (job.cancelled()) return tl::unexpected(std::string("cancelled"));
        const auto got = reader.read(interleaved);
        if (!got) return tl::unexpected(got.error());
        if (*got == 0) break;
        search(channels, interleaved, static_cast<std::size_t>(*got));
        frames += *got;
        job.report(
            std::min(1.0, static_cast<double>(frames) / std::max<double>(1.0, static_cast<double>(reader.frames()))));
    }
    RingFindings out{static_cast<double>(frames) / reader.rate(), {}};
    std::vector<Howl> all;
    for (Channel& channel : channels) {
        channel.detector.finish();
        for (const Howl& howl : channel.detector.take()) all.push_back(howl);
    }
    out.howls = merge_howls(std::move(all));
    return out;
}

}  // namespace howlmap
