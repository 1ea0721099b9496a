// SPDX-License-Identifier: GPL-3.0-or-later
// Recordings in and out, a block at a time: an hour of sound never lies in memory as a whole.
#pragma once
#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace howlmap {

inline constexpr int kLowestRate = 8000;     ///< Hz
inline constexpr int kHighestRate = 192000;  ///< Hz
inline constexpr int kMostAudioChannels = 64;

/// Reads a sound file (WAV, FLAC, AIFF and whatever else libsndfile knows). Samples are floats, full scale is 1.
class RecordingReader {
  public:
    /// Refuses, in one sentence: a file that cannot be opened or is no sound, a rate outside 8..192 kHz, more than 64
    /// channels.
    static tl::expected<RecordingReader, std::string> open(const std::filesystem::path& path);
    RecordingReader(RecordingReader&&) noexcept;
    RecordingReader& operator=(RecordingReader&&) noexcept;
    ~RecordingReader();

    int rate() const;             ///< Hz
    int channels() const;         ///< 1..64
    std::int64_t frames() const;  ///< as the file's header says
    double seconds() const;

    /// Next frames, interleaved; at most interleaved.size() / channels(). Gives how many frames were read, 0 at the
    /// end; an error where the file breaks off or holds values that are no numbers.
    tl::expected<std::int64_t, std::string> read(std::span<float> interleaved);

  private:
    struct File;
    explicit RecordingReader(std::unique_ptr<File> file);
    std::unique_ptr<File> file_;
};

/// Writes a WAV file with 24 bits a sample; values beyond full scale are held there.
class RecordingWriter {
  public:
    /// rate 8000..192000 Hz, channels 1..64. Refuses a target that is neither absent nor a regular file.
    static tl::expected<RecordingWriter, std::string> create(const std::filesystem::path& path, int rate, int channels);
    RecordingWriter(RecordingWriter&&) noexcept;
    RecordingWriter& operator=(RecordingWriter&&) noexcept;
    /// Drops what was written when close() has not succeeded: the target is then as it was.
    ~RecordingWriter();

    tl::expected<void, std::string> write(std::span<const float> interleaved);
    /// Finishes the file and puts it in its place; until then it lies beside it under a temporary name.
    tl::expected<void, std::string> close();

  private:
    struct File;
    explicit RecordingWriter(std::unique_ptr<File> file);
    std::unique_ptr<File> file_;
};

/// A whole short recording mixed to one channel. Refuses one of more than max_seconds.
struct ShortRecording {
    int rate = 48000;
    std::vector<float> samples;
};
tl::expected<ShortRecording, std::string> read_mono(const std::filesystem::path& path, double max_seconds);

/// Writes one channel of samples as a WAV file.
tl::expected<void, std::string> write_mono(const std::filesystem::path& path, int rate, std::span<const float> samples);

}  // namespace howlmap
