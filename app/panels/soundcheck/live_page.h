// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QElapsedTimer>
#include <QWidget>
#include <memory>

#include "app/panels/soundcheck/sound_source.h"
#include "app/panels/workspace.h"
#include "core/audio/sound_meter.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace howlmap::app {

class LiveDisplay;

/// Sound as it comes in: level, third-octaves, the alarm when something rings, in large type.
class LivePage : public QWidget {
    Q_OBJECT
  public:
    LivePage(const Workspace& workspace, QWidget* parent);
    ~LivePage() override;
    /// Listens to any source; the one before is stopped.
    void listen(std::unique_ptr<SoundSource> source);
    bool listening() const { return source_ != nullptr; }
    LiveDisplay& display() { return *display_; }
    double last_ring_hz() const { return last_hz_; }  ///< 0: none yet

  public Q_SLOTS:
    void start_or_stop();
    void stop();
    void find_inputs();
    void show_large();

  Q_SIGNALS:
    void rings(double hz);       ///< a ring has begun
    void ring_named(double hz);  ///< somebody wants it cut

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    void take(const std::vector<float>& samples);
    void say(const QString& sentence);

    Workspace work_;
    LiveDisplay *display_, *large_ = nullptr;
    QComboBox* input_;
    QPushButton *listen_, *full_, *name_;
    QLabel* words_;
    std::unique_ptr<SoundSource> source_;
    std::unique_ptr<SoundMeter> meter_;
    double last_hz_ = 0.0;
    bool ringing_ = false;
};

}  // namespace howlmap::app
