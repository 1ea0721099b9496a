// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of caps are kept, but not without end.
#include <memory>

#include "core/loop/blocks/cap_table.h"
#include "tests/support/registry.h"

using namespace howlmap;

class TestCapTable : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void theLatestAreKeptAndOlderOnesGo() {
        constexpr std::size_t kMostBytes = std::size_t{32} << 20;
        const CapOnSphere cap{0.3, 0.1, {}};
        std::vector<std::weak_ptr<const CapTable>> all;
        for (int i = 0; i < 12; ++i) all.push_back(cap_table(cap, 340.0 + i));  // as when the air is edited
        const std::size_t bytes = all.back().lock()->bytes();
        QVERIFY(12 * bytes > kMostBytes);
        std::size_t kept = 0;
        for (const auto& table : all) kept += table.expired() ? 0 : bytes;
        QVERIFY(kept <= kMostBytes && kept > kMostBytes - 2 * bytes);
        QVERIFY(all.front().expired());
        QCOMPARE(cap_table(cap, 351.0), all.back().lock());
        QCOMPARE(cap_table(cap, 350.0), all[10].lock());  // now the latest
        cap_table(cap, 360.0);
        QVERIFY(!all[10].expired());
    }
    void atRestFewerStay() {
        const CapOnSphere cap{0.3, 0.1, {}};
        std::vector<std::weak_ptr<const CapTable>> all;
        for (int i = 0; i < 6; ++i) all.push_back(cap_table(cap, 320.0 + i));
        const std::size_t bytes = all.back().lock()->bytes();
        shrink_cap_tables();
        std::size_t kept = 0;
        for (const auto& table : all) kept += table.expired() ? 0 : bytes;
        QVERIFY(kept > 0 && kept <= std::size_t{8} << 20);
        QVERIFY(!all.back().expired());
    }
    void oneThatIsTooLargeForAllStaysAsTheLatest() {
        const CapOnSphere cap{2.0, 0.5, {}};
        const std::weak_ptr<const CapTable> large = cap_table(cap, 343.0);
        QVERIFY(!large.expired());
        QCOMPARE(cap_table(cap, 343.0), large.lock());
    }
};

HOWLMAP_TEST(TestCapTable)
#include "test_cap_table.moc"
