// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/worker.h"

#include <QCoreApplication>
#include <QSemaphore>
#include <QSignalSpy>
#include <memory>
#include <numeric>
#include <stdexcept>

#include "app/document/broken_work.h"
#include "tests/app/document/patience.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestWorker : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void work_that_throws_is_told_and_does_not_stop_the_next() {
        Worker worker;
        QStringList told;
        on_broken_work(&worker, [&](const QString& reason) { told.append(reason); });
        QSignalSpy idle(&worker, &Worker::idle);
        worker.run([](const Job&) -> Worker::Deliver { throw std::runtime_error("no such number"); });
        QVERIFY(idle.wait(kPatienceMs));
        QCOMPARE(told, QStringList{QStringLiteral("no such number")});
        bool delivered = false;
        worker.run([&](const Job&) -> Worker::Deliver { return [&] { delivered = true; }; });
        QVERIFY(idle.wait(kPatienceMs));
        QVERIFY(delivered);
        QCOMPARE(told.size(), 1);
    }
    void onlyTheNewestOfThoseThatWaitIsDone() {
        Worker worker;
        std::vector<int> done;
        QSemaphore gate;
        for (int i = 0; i < 5; ++i)
            worker.run([&, i](const Job&) -> Worker::Deliver {
                if (i == 0) gate.acquire();
                return [&, i] { done.push_back(i); };
            });
        gate.release();
        QTRY_VERIFY_WITH_TIMEOUT(!worker.busy(), kPatienceMs);
        QCOMPARE(done, (std::vector{0, 4}));
    }
    void theNextPieceDoesNotWaitForTheWindow() {
        Worker worker;
        QSemaphore gate, begun;
        worker.run([&](const Job&) -> Worker::Deliver {
            gate.acquire();
            return {};
        });
        worker.run([&](const Job&) -> Worker::Deliver {
            begun.release();
            return {};
        });
        gate.release();
        QVERIFY(begun.tryAcquire(1, 30000));  // no event of this thread is let through in between
        QTRY_VERIFY_WITH_TIMEOUT(!worker.busy(), kPatienceMs);
    }
    void whatIsCancelledIsNeverDelivered() {
        Worker worker;
        bool delivered = false;
        QSemaphore begun;
        worker.run([&](const Job& job) -> Worker::Deliver {
            begun.release();
            while (!job.cancelled()) QThread::msleep(1);
            return [&] { delivered = true; };
        });
        begun.acquire();
        worker.cancel();
        QTRY_VERIFY_WITH_TIMEOUT(!worker.busy(), kPatienceMs);
        QVERIFY(!delivered);
    }
    void waitsForItsWorkBeforeItGoes() {
        std::atomic<bool> over = false;
        {
            Worker worker;
            QSemaphore begun;
            worker.run([&](const Job& job) -> Worker::Deliver {
                begun.release();
                while (!job.cancelled()) QThread::msleep(1);
                QThread::msleep(20);
                over = true;
                return {};
            });
            begun.acquire();
        }
        QVERIFY(over);
    }
    void progressArrivesInOrder() {
        Worker worker;
        QSignalSpy spy(&worker, &Worker::progress);
        worker.run([](const Job& job) -> Worker::Deliver {
            job.report(0.25);
            job.report(0.75);
            return {};
        });
        QTRY_COMPARE_WITH_TIMEOUT(spy.count(), 2, kPatienceMs);
        QCOMPARE(spy[1][0].toDouble(), 0.75);
    }
    void whatIsToldComesInOrderAndBeforeTheResult() {
        constexpr int kTold = 1000, kResult = -1;
        Worker worker;
        std::vector<int> heard;
        const auto work = [&](const Job&) -> Worker::Deliver {
            for (int i = 0; i < kTold; ++i)
                worker.tell([&heard, one = std::make_shared<const int>(i)] { heard.push_back(*one); });
            return [&] { heard.push_back(kResult); };
        };
        std::vector<int> expected(kTold + 1, kResult);
        std::iota(expected.begin(), expected.end() - 1, 0);
        worker.run(work);
        QTRY_VERIFY_WITH_TIMEOUT(!worker.busy(), kPatienceMs);
        QCOMPARE(heard, expected);
        heard.clear();
        worker.run(work);
        worker.wait();
        worker.cancel();  // too late for what was told, in time for the result
        QTRY_VERIFY_WITH_TIMEOUT(!worker.busy(), kPatienceMs);
        expected.pop_back();
        QCOMPARE(heard, expected);
    }
    /// A hand that moves, gives up and goes: the thread sanitizer watches what is handed over.
    void nothingIsSharedOnTheWay() {
        for (int round = 0; round < 20; ++round) {
            double heard = 0.0;
            Worker worker;
            for (int i = 0; i < 200; ++i) {
                const auto work = [&, values = std::vector<double>(100, i)](const Job& job) -> Worker::Deliver {
                    job.report(0.5);
                    worker.tell([&heard, one = std::make_shared<const std::vector<double>>(values)] {
                        heard = std::max(heard, one->back());
                    });
                    return [&heard, values] { heard = std::max(heard, values.front()); };
                };
                i % 3 == 0 ? worker.restart(work) : worker.run(work);
                if (i % 97 == 96) worker.cancel();
                if (i % 5 == 0) QCoreApplication::processEvents();
            }
            if (round % 2 == 0) continue;  // it goes in the middle of its work
            QTRY_VERIFY_WITH_TIMEOUT(!worker.busy(), kPatienceMs);
            QCOMPARE(heard, 199.0);
        }
    }
};

HOWLMAP_TEST(TestWorker)

}  // namespace howlmap::app

#include "test_worker.moc"
