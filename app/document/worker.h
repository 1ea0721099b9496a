// SPDX-License-Identifier: GPL-3.0-or-later
// Long work off the interface thread, one piece at a time. Of several pieces that wait only the newest is done.
#pragma once
#include <QObject>
#include <QThreadPool>
#include <deque>
#include <functional>
#include <mutex>
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
    /// From the other thread, by the work itself: runs in the interface thread, in the order told and before the
    /// result, also when the work is cancelled in the meantime.
    void tell(Deliver what);
    bool busy() const { return unfinished_ > 0; }

  Q_SIGNALS:
    void progress(double fraction);  ///< 0..1, of the piece that runs
    void idle();                     ///< nothing runs and nothing waits
    void told(QPrivateSignal);       ///< there is something to read, one for each

  private:
    struct Piece {
        quint64 number = 0;
        Work work;
        std::stop_source stop;
    };
    std::optional<Piece> next_piece();
    void work_off();
    void read_one();
    Deliver done(const Piece& piece);
    void finish(quint64 number, const Deliver& deliver);
    bool wanted(quint64 number) const { return number > cancelled_; }

    Manners manners_;
    int unfinished_ = 0;                  ///< pieces that run, wait, or are to be delivered
    quint64 number_ = 0, cancelled_ = 0;  ///< of the newest piece; up to this one nothing is delivered

    // Both threads meet here, not in Qt's queue of events, which carries nothing but that there is something: the other
    // thread need not wait for this one between two pieces, and a thread sanitizer sees all that is handed over.
    std::mutex mutex_;
    std::optional<Piece> first_;    ///< for an idle thread
    std::optional<Piece> waiting_;  ///< for one at work
    std::deque<Deliver> told_;
    std::optional<std::stop_source> running_;  ///< of the piece that runs, or is about to

    QThreadPool pool_;  // last, so that it has stopped before anything else goes
};

}  // namespace howlmap::app
