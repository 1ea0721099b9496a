// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <optional>

#include "core/audio/sound_meter.h"

namespace howlmap::app {

/// What sounds, in letters that can be read from a stage: the band and the note of a ring, or of the strongest line,
/// above the level and the third-octaves. Grows with its window.
class LiveDisplay : public QWidget {
    Q_OBJECT
  public:
    explicit LiveDisplay(QWidget* parent = nullptr);
    void show_reading(const std::optional<SoundReading>& reading);
    QString headline() const;  ///< the large words
    bool alarm() const { return reading_ && !reading_->howls.empty(); }

  protected:
    void paintEvent(QPaintEvent* event) override;
    QSize minimumSizeHint() const override { return {260, 110}; }

  private:
    void paint_bands(QPainter& painter, const QRectF& area) const;
    double shown_hz() const;
    std::optional<SoundReading> reading_;
};

}  // namespace howlmap::app
