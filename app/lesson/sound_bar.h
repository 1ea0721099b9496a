// SPDX-License-Identifier: GPL-3.0-or-later
// Play and Stop, a caution before the first sound, and how far the sends are raised.
#pragma once
#include <QWidget>
#include <functional>

#include "core/audio/loop_sound.h"

class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace howlmap::app {

class Player;

class SoundBar : public QWidget {
    Q_OBJECT
  public:
    /// What to play, asked for when Play is pressed.
    struct Wish {
        Show show;
        HearOptions options;
    };
    SoundBar(std::function<Wish()> wish, QWidget* parent);
    Player& player() { return *player_; }
    double raise_db() const;
    void stop();

  protected:
    void hideEvent(QHideEvent* event) override;

  private:
    void pressed();
    void refresh();

    std::function<Wish()> wish_;
    Player* player_;
    QPushButton *play_, *stop_;
    QDoubleSpinBox* raise_;
    QLabel* words_;
    bool warned_ = false;
};

}  // namespace howlmap::app
