// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/sound_feed.h"

#include <algorithm>
#include <cstring>

namespace howlmap::app {
namespace {
constexpr double kAhead_s = 0.3, kBlock_s = 0.02, kFadeOut_s = 0.1;
constexpr double kNotSet = -1000.0;
}  // namespace

SoundFeed::SoundFeed(LoopSound sound)
    : sound_(std::move(sound)), thread_([this](const std::stop_token& stop) { compute(stop); }) {
    open(QIODevice::ReadOnly | QIODevice::Unbuffered);
}

SoundFeed::~SoundFeed() {
    thread_.request_stop();
    thread_.join();
}

void SoundFeed::compute(const std::stop_token& stop) {
    std::vector<float> block(static_cast<std::size_t>(kBlock_s * sound_.rate_hz()));
    const auto most = static_cast<std::size_t>(kAhead_s * sound_.rate_hz());
    while (!stop.stop_requested()) {
        if (const double db = raise_db_.exchange(kNotSet); db > kNotSet) sound_.set_raise_db(db);
        sound_.play(block);
        std::unique_lock lock(mutex_);
        if (!room_.wait(lock, stop, [&] { return ahead_.size() < most; })) return;
        ahead_.insert(ahead_.end(), block.begin(), block.end());
    }
}

qint64 SoundFeed::bytesAvailable() const {
    const std::scoped_lock lock(mutex_);
    return static_cast<qint64>(ahead_.size() * sizeof(float)) + QIODevice::bytesAvailable();
}

void SoundFeed::fade_out() {
    const std::scoped_lock lock(mutex_);
    fade_ = 1.0 / (kFadeOut_s * sound_.rate_hz());
}

// What has not been computed in time is silence: the device must not stop for it.
qint64 SoundFeed::readData(char* data, qint64 most) {
    const auto wanted = static_cast<std::size_t>(most) / sizeof(float);
    std::vector<float> out(wanted, 0.0f);
    {
        const std::scoped_lock lock(mutex_);
        const std::size_t count = std::min(wanted, ahead_.size());
        for (std::size_t i = 0; i < count; ++i) {
            out[i] = static_cast<float>(gain_) * ahead_[i];
            gain_ = std::max(0.0, gain_ - fade_);
        }
        ahead_.erase(ahead_.begin(), ahead_.begin() + static_cast<std::ptrdiff_t>(count));
    }
    room_.notify_one();
    std::memcpy(data, out.data(), wanted * sizeof(float));
    return static_cast<qint64>(wanted * sizeof(float));
}

}  // namespace howlmap::app
