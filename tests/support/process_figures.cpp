// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/process_figures.h"

#include <unistd.h>

#include <cstdlib>  // tells which C library this is
#include <filesystem>
#include <fstream>
#include <iterator>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace howlmap::test {

long resident_kib() {
    std::ifstream file("/proc/self/statm");
    long all = 0, resident = 0;
    file >> all >> resident;
    return resident * (::sysconf(_SC_PAGESIZE) / 1024);
}

long live_kib() {
#if defined(__GLIBC__) && !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
    const struct mallinfo2 now = mallinfo2();
    return static_cast<long>((now.uordblks + now.hblkhd) / 1024);
#else
    return 0;
#endif
}

long open_files() {
    namespace fs = std::filesystem;
    return static_cast<long>(std::distance(fs::directory_iterator("/proc/self/fd"), fs::directory_iterator()));
}

}  // namespace howlmap::test
