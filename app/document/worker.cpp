// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/worker.h"

#ifdef Q_OS_LINUX
#include <sys/resource.h>
#include <unistd.h>
#endif

#include <oneapi/tbb/parallel_for.h>
#include <oneapi/tbb/task_arena.h>

#include <QPointer>
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

Worker::Worker(Manners manners, QObject* parent) : QObject(parent), manners_(manners) {
    pool_.setMaxThreadCount(1);
    connect(this, &Worker::told, this, &Worker::read_one, Qt::QueuedConnection);
}

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
    const std::lock_guard lock(mutex_);
    Piece piece{++number_, std::move(work), {}};
    if (!waiting_) ++unfinished_;
    if (running_) {
        waiting_ = std::move(piece);
        return;
    }
    running_ = piece.stop;
    first_ = std::move(piece);
    pool_.start([this] { work_off(); });
}

void Worker::restart(Work work) {
    cancel();
    run(std::move(work));
}

void Worker::cancel() {
    const std::lock_guard lock(mutex_);
    if (waiting_) --unfinished_;
    waiting_.reset();
    cancelled_ = number_;
    if (running_) running_->request_stop();
}

std::optional<Worker::Piece> Worker::next_piece() {
    const std::lock_guard lock(mutex_);
    std::optional<Piece> piece = std::exchange(first_ ? first_ : waiting_, std::nullopt);
    running_.reset();
    if (piece) running_ = piece->stop;
    return piece;
}

/// In the other thread.
void Worker::work_off() {
    step_back(manners_);
    while (const std::optional<Piece> piece = next_piece())
        tell([this, number = piece->number, deliver = done(*piece)] { finish(number, deliver); });
}

void Worker::tell(Deliver what) {
    {
        const std::lock_guard lock(mutex_);
        told_.push_back(std::move(what));
    }
    Q_EMIT told({});
}

void Worker::read_one() {
    Deliver what;
    {
        const std::lock_guard lock(mutex_);
        what = std::move(told_.front());
        told_.pop_front();
    }
    what();
}

/// Work that breaks its own rules gives no result; the show that is open outlives it.
Worker::Deliver Worker::done(const Piece& piece) {
    const auto report = [this, number = piece.number](double fraction) {
        tell([this, number, fraction] {
            if (wanted(number)) Q_EMIT progress(fraction);
        });
    };
    QString broken;
    try {
        return piece.work({piece.stop.get_token(), report});
    } catch (const std::exception& error) {
        broken = QString::fromUtf8(error.what());
    } catch (...) {
        broken = QStringLiteral("?");
    }
    tell([broken] { tell_broken_work(broken); });
    return {};
}

void Worker::finish(quint64 number, const Deliver& deliver) {
    --unfinished_;
    if (wanted(number) && deliver) deliver();
    if (!busy()) Q_EMIT idle();
}

}  // namespace howlmap::app
