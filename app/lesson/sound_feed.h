// SPDX-License-Identifier: GPL-3.0-or-later
// Sound that is computed a little ahead in a thread of its own, so that neither the window nor the sound card waits.
#pragma once
#include <QIODevice>
#include <atomic>
#include <condition_variable>
#include <mutex>
#include <thread>
#include <vector>

#include "core/audio/loop_sound.h"

namespace howlmap::app {

/// Mono, 32-bit float, at the rate of the sound.
class SoundFeed : public QIODevice {
    Q_OBJECT
  public:
    explicit SoundFeed(LoopSound sound);
    ~SoundFeed() override;
    bool isSequential() const override { return true; }
    qint64 bytesAvailable() const override;
    /// Fades the rest away within a tenth of a second; silence from then on.
    void fade_out();
    /// Takes part from the next samples that are computed on.
    void set_raise_db(double db) { raise_db_ = db; }

  protected:
    qint64 readData(char* data, qint64 most) override;
    qint64 writeData(const char*, qint64) override { return -1; }

  private:
    void compute(const std::stop_token& stop);

    LoopSound sound_;
    std::atomic<double> raise_db_{-1000.0};  // not set
    mutable std::mutex mutex_;
    std::condition_variable_any room_;
    std::vector<float> ahead_;  // computed and not yet played
    double gain_ = 1.0, fade_ = 0.0;
    std::jthread thread_;  // last: it uses all the others
};

}  // namespace howlmap::app
