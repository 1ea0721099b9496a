// SPDX-License-Identifier: GPL-3.0-or-later
// An hour of stereo at 48 kHz through the howl detector: times real time, and how much memory it took.
#include <benchmark/benchmark.h>
#include <sndfile.h>
#include <sys/resource.h>

#include <chrono>
#include <cmath>
#include <filesystem>
#include <random>
#include <vector>

#include "core/audio/ring_recording.h"
#include "core/audio/voices.h"

namespace {

using namespace howlmap;
constexpr double kRate = 48000.0, kSeconds = 3600.0;

// A minute of notes over noise, again and again, in 16 bits: what a rehearsal's file looks like.
std::vector<float> minute_of_stereo() {
    std::vector<float> minute(static_cast<std::size_t>(60.0 * kRate), 0.0f);
    std::mt19937 noise(1);
    for (float& x : minute) x = 0.01f * (static_cast<float>(noise()) / 4294967296.0f - 0.5f);
    for (int k = 0; k < 110; ++k) {
        Pluck pluck;
        pluck.hz = 110.0 * std::exp2((k * 7 % 24) / 12.0), pluck.seed = static_cast<std::uint64_t>(k);
        mix_in(minute, plucked_note(pluck, kRate), 0.5 * k, 0.4, kRate);
        Bow bow;
        bow.hz = 2.0 * pluck.hz, bow.seconds = 1.9;
        if (k % 4 == 0) mix_in(minute, bowed_note(bow, kRate), 0.5 * k, 0.3, kRate);
    }
    std::vector<float> stereo(2 * minute.size());
    for (std::size_t i = 0; i < minute.size(); ++i) stereo[2 * i] = minute[i], stereo[2 * i + 1] = 0.7f * minute[i];
    return stereo;
}

std::filesystem::path hour_of_stereo() {
    const auto path = std::filesystem::temp_directory_path() / "howlmap-bench-hour.wav";
    SF_INFO info{};
    info.samplerate = static_cast<int>(kRate), info.channels = 2, info.format = SF_FORMAT_WAV | SF_FORMAT_PCM_16;
    SNDFILE* file = sf_open(path.c_str(), SFM_WRITE, &info);
    const std::vector<float> stereo = minute_of_stereo();
    for (int m = 0; m < 60; ++m) sf_write_float(file, stereo.data(), static_cast<sf_count_t>(stereo.size()));
    sf_close(file);
    return path;
}

double peak_mib() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

void ring_hour(benchmark::State& state) {
    const auto path = hour_of_stereo();
    double seconds = 0.0;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        auto findings = find_howls(std::move(*RecordingReader::open(path)));
        benchmark::DoNotOptimize(findings);
        seconds += std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    }
    std::filesystem::remove(path);
    state.counters["times_real_time"] = kSeconds * static_cast<double>(state.iterations()) / seconds;
    state.counters["peak_MiB"] = peak_mib();
}

}  // namespace

BENCHMARK(ring_hour)->Unit(benchmark::kSecond)->Iterations(1)->MeasureProcessCPUTime()->UseRealTime();
