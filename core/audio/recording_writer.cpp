// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>
#include <sndfile.h>

#include <algorithm>

#include "core/audio/recording.h"

namespace howlmap {

struct RecordingWriter::File {
    std::filesystem::path target, temporary;
    SNDFILE* handle = nullptr;
    int channels = 1;
    ~File() {
        if (!handle) return;
        sf_close(handle);
        std::error_code ignored;
        std::filesystem::remove(temporary, ignored);
    }
};

RecordingWriter::RecordingWriter(std::unique_ptr<File> file) : file_(std::move(file)) {}
RecordingWriter::RecordingWriter(RecordingWriter&&) noexcept = default;
RecordingWriter& RecordingWriter::operator=(RecordingWriter&&) noexcept = default;
RecordingWriter::~RecordingWriter() = default;

tl::expected<RecordingWriter, std::string> RecordingWriter::create(const std::filesystem::path& path, int rate,
                                                                   int channels) {
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (std::filesystem::exists(status) && !std::filesystem::is_regular_file(status))
        return tl::unexpected(fmt::format("{}: is no regular file, so nothing is written over it", path.string()));
    auto file = std::make_unique<File>();
    file->target = path;
    file->temporary = path;
    file->temporary += ".part";
    file->channels = channels;
    SF_INFO info{};
    info.samplerate = std::clamp(rate, kLowestRate, kHighestRate);
    info.channels = std::clamp(channels, 1, kMostAudioChannels);
    info.format = SF_FORMAT_WAV | SF_FORMAT_PCM_24;
    file->handle = sf_open(file->temporary.string().c_str(), SFM_WRITE, &info);
    if (!file->handle)
        return tl::unexpected(fmt::format("{}: cannot be written ({})", path.string(), sf_strerror(nullptr)));
    sf_command(file->handle, SFC_SET_CLIPPING, nullptr, SF_TRUE);
    return RecordingWriter(std::move(file));
}

tl::expected<void, std::string> RecordingWriter::write(std::span<const float> interleaved) {
    const auto count = static_cast<sf_count_t>(interleaved.size());
    if (sf_write_float(file_->handle, interleaved.data(), count) != count)
        return tl::unexpected(
            fmt::format("{}: could not be written in full ({})", file_->target.string(), sf_strerror(file_->handle)));
    return {};
}

tl::expected<void, std::string> RecordingWriter::close() {
    sf_write_sync(file_->handle);
    const int failed = sf_close(file_->handle);
    file_->handle = nullptr;
    std::error_code error;
    if (failed != 0) {
        std::filesystem::remove(file_->temporary, error);
        return tl::unexpected(
            fmt::format("{}: could not be finished ({})", file_->target.string(), sf_error_number(failed)));
    }
    std::filesystem::rename(file_->temporary, file_->target, error);
    if (error)
        return tl::unexpected(
            fmt::format("{}: could not be put in place ({})", file_->target.string(), error.message()));
    return {};
}

tl::expected<void, std::string> write_mono(const std::filesystem::path& path, int rate,
                                           std::span<const float> samples) {
    auto writer = RecordingWriter::create(path, rate, 1);
    if (!writer) return tl::unexpected(writer.error());
    if (auto written = writer->write(samples); !written) return written;
    return writer->close();
}

}  // namespace howlmap
