// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/own_home.h"
#include "tests/support/registry.h"

#ifdef HOWLMAP_TEST_WIDGETS
#include <QApplication>
using Application = QApplication;
#else
#include <QCoreApplication>
using Application = QCoreApplication;
#endif

int main(int argc, char** argv) {
    const howlmap::test::OwnHome home;
    // Full counts take longer than QtTest has patience for.
    if (qEnvironmentVariableIsSet("HOWLMAP_LONG_TESTS") && !qEnvironmentVariableIsSet("QTEST_FUNCTION_TIMEOUT"))
        qputenv("QTEST_FUNCTION_TIMEOUT", "3600000");
    Application app(argc, argv);
    int failed = 0;
    if (howlmap::test::factories().empty()) return 1;  // a folder without a test is a mistake
    for (const auto& make : howlmap::test::factories()) failed += QTest::qExec(make().get(), argc, argv);
    return failed == 0 ? 0 : 1;
}
