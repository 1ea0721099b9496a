// SPDX-License-Identifier: GPL-3.0-or-later
// Long work off the interface thread, one piece at a time. Of several pieces that wait only the newest is done.
#pragma once
#include <QObject>
#include <QThreadPool>
#include <functional>
#include <optional>
#include <stop_token>

#include "core/units/job.h"

namespace howlmap::app {

class Worker : public QObject {
    Q_OBJECT
  public:
    /// Runs in the interface thread when the work is done.
    using Deliver = std::function<void()>;
    /// Runs in another thread on a snapshot of its own. Returns how to deliver the result; nothing if it was cancelled.
    using Work = std::function<Deliver(const Job&)>;

    /// How far it lets others go first where they share a core: `ahead` shows what is under the hand.
    enum class Manners { ahead, behind };
    explicit Worker(QObject* parent = nullptr) : Worker(Manners::ahead, parent) {}
    explicit Worker(Manners manners, QObject* parent = nullptr);
    /// Cancels and waits: nothing that the work refers to is used afterwards.
    ~Worker() override;

    /// The same work without the help of other cores.
    static Work on_one_core(Work work);

    /// Starts the work, or lets it wait for the piece that runs and replaces the one that waited.
    void run(Work work);
    /// The same, but the piece that runs is cancelled first and never delivered.
    void restart(Work work);
    /// Nothing waits, and what runs is never delivered.
    void cancel();
    /// Blocks until nothing runs in the other thread; results are delivered later all the same. For what must be on
    /// disk.
    void wait() { pool_.waitForDone(); }
    bool busy() const { return running_ || waiting_.has_value(); }

  Q_SIGNALS:
    void progress(double fraction);  ///< 0..1, of the piece that runs
    void idle();                     ///< nothing runs and nothing waits

  private:
    void start(Work work);
    void finish(quint64 number, const Deliver& deliver);

    Manners manners_;
    QThreadPool pool_;
    std::optional<Work> waiting_;
    std::stop_source stop_;
    quint64 number_ = 0;  ///< of the piece that runs; a cancelled one keeps running but has lost its number
    bool running_ = false, wanted_ = false;
};

}  // namespace howlmap::app
