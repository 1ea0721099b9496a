// SPDX-License-Identifier: GPL-3.0-or-later
// What is free is handed back when the hands rest.
#include <QComboBox>
#include <QDockWidget>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableWidget>
#include <memory>
#include <vector>

#include "app/settings/memory.h"
#include "app/settings/theme.h"
#include "app/window/main_window.h"
#include "tests/support/process_figures.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {
constexpr int kRestMs = 50, kSoonMs = 30'000;
constexpr std::size_t kBlock = 64 * 1024, kBlocks = 1024;  // 64 MiB, in blocks that come from a heap

/// A heap whose last block stays: what was freed before it is not handed back by itself.
std::unique_ptr<char[]> full_of_holes() {
    std::vector<std::unique_ptr<char[]>> blocks;
    for (std::size_t i = 0; i < kBlocks; ++i) blocks.push_back(std::make_unique<char[]>(kBlock));
    return std::move(blocks.back());
}
}  // namespace

class TestMemory : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void what_is_free_goes_back_when_nothing_stirs();
    void not_while_something_is_computed();
    void the_window_hands_back_after_an_edit();
    void widgets_that_come_and_go_leave_nothing();
};

void TestMemory::what_is_free_goes_back_when_nothing_stirs() {
    if (test::live_kib() == 0) QSKIP("this C library does not tell");
    MemoryKeeper keeper([] { return false; }, kRestMs);
    QSignalSpy handed_back(&keeper, &MemoryKeeper::handed_back);
    const auto last = full_of_holes();
    const long before = test::resident_kib();
    keeper.stir();
    QTRY_COMPARE_WITH_TIMEOUT(handed_back.count(), 1, kSoonMs);
    QVERIFY2(before - test::resident_kib() > 48 * 1024, qPrintable(QString::number(before - test::resident_kib())));
    QTest::qWait(4 * kRestMs);
    QCOMPARE(handed_back.count(), 1);  // once is enough
}

void TestMemory::not_while_something_is_computed() {
    bool busy = true;
    MemoryKeeper keeper([&] { return busy; }, kRestMs);
    QSignalSpy handed_back(&keeper, &MemoryKeeper::handed_back);
    keeper.stir();
    QTest::qWait(6 * kRestMs);
    QCOMPARE(handed_back.count(), 0);
    busy = false;
    QTRY_COMPARE_WITH_TIMEOUT(handed_back.count(), 1, kSoonMs);
}

void TestMemory::the_window_hands_back_after_an_edit() {
    MainWindow window;
    QSignalSpy handed_back(&window.memory(), &MemoryKeeper::handed_back);
    window.document().edit(QStringLiteral("Title"), [](Show& show) { show.title = "Other"; });
    QTRY_VERIFY_WITH_TIMEOUT(handed_back.count() > 0, kSoonMs);
    QVERIFY(!window.analysis().busy());
    window.document().set_clean();
}

namespace {
void show_and_forget(int times) {
    for (int i = 0; i < times; ++i) {
        QDockWidget dock;
        auto* inside = new QWidget;
        auto* row = new QHBoxLayout(inside);
        row->addWidget(new QPushButton(QStringLiteral("Press")));
        row->addWidget(new QComboBox);
        row->addWidget(new QSpinBox);
        row->addWidget(new QTableWidget(1, 2));
        dock.setWidget(inside);
        dock.grab();
    }
}
}  // namespace

/// As the Inspector's do: see HouseStyle.
void TestMemory::widgets_that_come_and_go_leave_nothing() {
    if (test::live_kib() == 0) QSKIP("this C library does not tell");
    apply_look(Look::light);
    show_and_forget(100);
    const long before = test::live_kib();
    show_and_forget(400);
    QVERIFY2(test::live_kib() - before < 200,
             qPrintable(QString::number(test::live_kib() - before)));  // 9 MB without it
}

HOWLMAP_TEST(TestMemory)

}  // namespace howlmap::app

#include "test_memory.moc"
