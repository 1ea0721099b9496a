// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/worker.h"

#ifdef Q_OS_LINUX
#include <sys/resource.h>
#include <unistd.h>
#endif

#include <oneapi/tbb/parallel_for.h>
#include <oneapi/tbb/task_arena.h>

#include <QPointer>
#include <atomic>
#include <exception>
#include <utility>

#include "app/document/broken_work.h"

namespace howlmap::app {
namespace {
constexpr int kStepsBack = 5, kFurtherBack = 15;  ///< of 19

struct BrokenWorkListener {
    QPointer<QObject> object;
    std::function<void(const QString&)> tell;
};
BrokenWorkListener broken_work_listener;  // of the interface thread

void tell_broken_work(const QString& reason) {
    qCritical("howlmap: %s", qPrintable(reason));
    if (broken_work_listener.object) broken_work_listener.tell(reason);
}

/// Counts what has been handed to the interface thread. Qt's queue of events orders memory as well, but a thread
/// sanitizer cannot see into it; here it can, and so watches results after they were handed over.
std::atomic<unsigned> handed_over{0};

void set_steps_back([[maybe_unused]] int steps) {
#ifdef Q_OS_LINUX
    static const int of_program = ::getpriority(PRIO_PROCESS, static_cast<id_t>(::getpid()));
    ::setpriority(PRIO_PROCESS, 0, of_program + steps);
#endif
}

/// What computes lets the window go first where they share a core. Linux keeps a priority for each thread. Those that
/// share in a computation inherit it from the first that needs them and cannot go back, so that they are made early.
void step_back(Worker::Manners manners) {
    set_steps_back(kStepsBack);
    static const bool helpers_are_there = [] {
        tbb::parallel_for(0, 64 * tbb::this_task_arena::max_concurrency(), [](int) {});
        return true;
    }();
    if (helpers_are_there && manners == Worker::Manners::behind) set_steps_back(kFurtherBack);
}
}  // namespace

void on_broken_work(QObject* listener, std::function<void(const QString&)> tell) {
    broken_work_listener = {listener, std::move(tell)};
}

Worker::Worker(Manners manners, QObject* parent) : QObject(parent), manners_(manners) { pool_.setMaxThreadCount(1); }

Worker::~Worker() {
    cancel();
    pool_.waitForDone();
}

Worker::Work Worker::on_one_core(Work work) {
    return [work = std::move(work)](const Job& job) {
        tbb::task_arena one(1);
        return one.execute([&] { return work(job); });
    };
}

void Worker::run(Work work) {
    if (running_)
        waiting_ = std::move(work);
    else
        start(std::move(work));
}

void Worker::restart(Work work) {
    cancel();
    run(std::move(work));
}

void Worker::cancel() {
    waiting_.reset();
    wanted_ = false;
    stop_.request_stop();
}

void Worker::start(Work work) {
    stop_ = std::stop_source();
    running_ = wanted_ = true;
    const quint64 number = ++number_;
    Job job{stop_.get_token(), {}};
    job.progress = [this, number](double fraction) {
        QMetaObject::invokeMethod(
            this,
            [this, number, fraction] {
                if (wanted_ && number == number_) Q_EMIT progress(fraction);
            },
            Qt::QueuedConnection);
    };
    pool_.start([this, number, manners = manners_, job = std::move(job), work = std::move(work)] {
        step_back(manners);
        Deliver deliver;
        QString broken;  // work that breaks its own rules gives no result; the show that is open outlives it
        try {
            deliver = work(job);
        } catch (const std::exception& error) {
            broken = QString::fromUtf8(error.what());
        } catch (...) {
            broken = QStringLiteral("?");
        }
        handed_over.fetch_add(1, std::memory_order_release);
        if (!broken.isEmpty())
            QMetaObject::invokeMethod(
                this, [broken] { tell_broken_work(broken); }, Qt::QueuedConnection);
        QMetaObject::invokeMethod(
            this, [this, number, deliver = std::move(deliver)] { finish(number, deliver); }, Qt::QueuedConnection);
    });
}

void Worker::finish(quint64 number, const Deliver& deliver) {
    (void)handed_over.load(std::memory_order_acquire);
    running_ = false;
    const bool deliverable = wanted_ && number == number_ && deliver;
    if (waiting_) start(*std::exchange(waiting_, std::nullopt));
    if (deliverable) deliver();
    if (!busy()) Q_EMIT idle();
}

}  // namespace howlmap::app
