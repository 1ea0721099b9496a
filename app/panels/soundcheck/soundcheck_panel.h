// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that is done while the stage stands: the order in which bands ring, the walk, a recording, the live sound,
// taps on an instrument, and the log of it all.
#pragma once
#include <QWidget>

#include "app/panels/workspace.h"

class QTabWidget;

namespace howlmap::app {

class LivePage;
class RecordingPage;
class RingOutList;
class TapPage;
class WalkPage;

class SoundcheckPanel : public QWidget {
    Q_OBJECT
  public:
    SoundcheckPanel(const Workspace& workspace, QWidget* parent);
    QTabWidget& pages() { return *pages_; }
    RingOutList& order() { return *order_; }
    WalkPage& walk() { return *walk_; }
    RecordingPage& recording() { return *recording_; }
    LivePage& live() { return *live_; }
    TapPage& tap() { return *tap_; }

  private:
    void add_page(QWidget* page, const QString& title, const QString& tip);

    RingOutList* order_;
    QTabWidget* pages_;
    WalkPage* walk_;
    RecordingPage* recording_;
    LivePage* live_;
    TapPage* tap_;
};

}  // namespace howlmap::app
