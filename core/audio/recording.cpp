// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/recording.h"

#include <fmt/format.h>
#include <sndfile.h>

#include <algorithm>
#include <cmath>

namespace howlmap {

struct RecordingReader::File {
    std::string name;
    SF_INFO info{};
    SNDFILE* handle = nullptr;
    std::int64_t position = 0;
    ~File() {
        if (handle) sf_close(handle);
    }
};

RecordingReader::RecordingReader(std::unique_ptr<File> file) : file_(std::move(file)) {}
RecordingReader::RecordingReader(RecordingReader&&) noexcept = default;
RecordingReader& RecordingReader::operator=(RecordingReader&&) noexcept = default;
RecordingReader::~RecordingReader() = default;

tl::expected<RecordingReader, std::string> RecordingReader::open(const std::filesystem::path& path) {
    auto file = std::make_unique<File>();
    file->name = path.string();
    std::error_code error;
    if (std::filesystem::is_directory(path, error))
        return tl::unexpected(fmt::format("{}: is a folder, expected a sound file", file->name));
    // A pipe that nobody writes to would be waited for without end.
    if (std::filesystem::is_other(path, error))
        return tl::unexpected(fmt::format("{}: is not a regular file, expected a sound file", file->name));
    file->handle = sf_open(file->name.c_str(), SFM_READ, &file->info);
    if (!file->handle) {
        std::string why = sf_strerror(nullptr);
        while (!why.empty() && (why.back() == '.' || why.back() == ' ' || why.back() == '\n')) why.pop_back();
        return tl::unexpected(fmt::format("{}: cannot be read as a sound file ({})", file->name, why));
    }
    if (file->info.samplerate < kLowestRate || file->info.samplerate > kHighestRate)
        return tl::unexpected(fmt::format("{}: found {} samples a second, expected {} to {}", file->name,
                                          file->info.samplerate, kLowestRate, kHighestRate));
    if (file->info.channels < 1 || file->info.channels > kMostAudioChannels)
        return tl::unexpected(fmt::format("{}: found {} channels, expected 1 to {}", file->name, file->info.channels,
                                          kMostAudioChannels));
    return RecordingReader(std::move(file));
}

int RecordingReader::rate() const { return file_->info.samplerate; }
int RecordingReader::channels() const { return file_->info.channels; }
std::int64_t RecordingReader::frames() const { return std::max<std::int64_t>(file_->info.frames, 0); }
double RecordingReader::seconds() const { return static_cast<double>(frames()) / rate(); }

tl::expected<std::int64_t, std::string> RecordingReader::read(std::span<float> interleaved) {
    const auto channels = static_cast<std::size_t>(file_->info.channels);
    const auto wanted = static_cast<sf_count_t>(interleaved.size() / channels);
    const sf_count_t got = sf_readf_float(file_->handle, interleaved.data(), wanted);
    const double second = static_cast<double>(file_->position) / rate();
    if (got < wanted && sf_error(file_->handle) != SF_ERR_NO_ERROR)
        return tl::unexpected(
            fmt::format("{}: breaks off after {:.1f} s ({})", file_->name, second, sf_strerror(file_->handle)));
    const auto samples = interleaved.first(static_cast<std::size_t>(std::max<sf_count_t>(got, 0)) * channels);
    // NaN and infinity make the sum of x * 0 a NaN; the plain sum is left to the compiler to vectorise.
    float witness = 0.0f;
    for (const float x : samples) witness += x * 0.0f;
    if (!(witness == 0.0f))
        return tl::unexpected(fmt::format("{}: holds values that are no numbers after {:.1f} s", file_->name, second));
    file_->position += got;
    return got;
}

tl::expected<ShortRecording, std::string> read_mono(const std::filesystem::path& path, double max_seconds) {
    auto reader = RecordingReader::open(path);
    if (!reader) return tl::unexpected(reader.error());
    if (reader->seconds() > max_seconds)
        return tl::unexpected(fmt::format("{}: lasts {:.0f} s, expected {:.0f} s at most", path.string(),
                                          reader->seconds(), max_seconds));
    ShortRecording out{reader->rate(), {}};
    const auto channels = static_cast<std::size_t>(reader->channels());
    std::vector<float> block(4096 * channels);
    for (;;) {
        const auto got = reader->read(block);
        if (!got) return tl::unexpected(got.error());
        if (*got == 0) break;
        for (std::size_t i = 0; i < static_cast<std::size_t>(*got); ++i) {
            float sum = 0.0f;
            for (std::size_t c = 0; c < channels; ++c) sum += block[i * channels + c];
            out.samples.push_back(sum / static_cast<float>(channels));
        }
        if (static_cast<double>(out.samples.size()) > max_seconds * out.rate)
            return tl::unexpected(fmt::format("{}: lasts longer than {:.0f} s", path.string(), max_seconds));
    }
    return out;
}

}  // namespace howlmap
