// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <new>
#include <vector>

namespace howlmap::maps {

/// Allocates at cache line borders, which are also the borders of the widest vectors.
template <class T>
struct LineAllocator {
    using value_type = T;
    static constexpr std::align_val_t kLine{64};
    LineAllocator() = default;
    template <class U>
    explicit LineAllocator(const LineAllocator<U>&) {}
    T* allocate(std::size_t n) { return static_cast<T*>(::operator new(n * sizeof(T), kLine)); }
    void deallocate(T* p, std::size_t) { ::operator delete(p, kLine); }
    friend bool operator==(const LineAllocator&, const LineAllocator&) { return true; }
};

using Floats = std::vector<float, LineAllocator<float>>;

}  // namespace howlmap::maps
