// SPDX-License-Identifier: GPL-3.0-or-later
// Test classes register themselves here, so that one executable runs all classes of a folder.
#pragma once
#include <QObject>
#include <QtTest>
#include <functional>
#include <memory>
#include <vector>

namespace howlmap::test {
using Factory = std::function<std::unique_ptr<QObject>()>;

inline std::vector<Factory>& factories() {
    static std::vector<Factory> all;
    return all;
}

template <class T>
struct Register {
    Register() {
        factories().push_back([] { return std::make_unique<T>(); });
    }
};
}  // namespace howlmap::test

#define HOWLMAP_TEST(Class) static const howlmap::test::Register<Class> register_##Class;
