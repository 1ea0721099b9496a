// SPDX-License-Identifier: GPL-3.0-or-later
// What a program does that stays open for hours beside others. Without the GNU C library nothing of this happens.
#pragma once
#include <QObject>
#include <QTimer>
#include <functional>

namespace howlmap::app {

/// At the start of the program: the C library keeps fewer heaps and gives large blocks back at once.
void give_memory_back();

/// What is free between things that stay is handed back to the system when nothing has stirred for a while: maps and
/// draws leave as much of it as everything else takes.
class MemoryKeeper : public QObject {
    Q_OBJECT
  public:
    static constexpr int kRestMs = 4000;
    /// While `busy` says so, it waits for another rest.
    explicit MemoryKeeper(std::function<bool()> busy, int rest_ms = kRestMs, QObject* parent = nullptr);
    /// Something is done that takes memory.
    void stir() { rest_.start(); }

  Q_SIGNALS:
    void resting();  ///< what is kept for nothing but speed can go
    void handed_back();

  private:
    std::function<bool()> busy_;
    QTimer rest_;
};

}  // namespace howlmap::app
