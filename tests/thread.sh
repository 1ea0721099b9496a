#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The tests under the thread sanitizer. oneTBB is built with it from Debian's source package first: with the one that is
# installed every piece of work of a parallel loop would look like a race, or all of them would have to be passed over.
# bash tests/thread.sh [TESTS]      a regular expression for ctest; all of them if not given
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

tbb="$PWD/build/tbb-thread"
build_tbb() {
  local apt=(-o "Dir::Etc::sourcelist=/dev/null" -o "Dir::Etc::sourceparts=$tbb/sources" -o "Dir::State::lists=$tbb/lists")
  mkdir -p "$tbb/sources" "$tbb/lists/partial"
  sed 's/^Types:.*/Types: deb-src/' /etc/apt/sources.list.d/debian.sources >"$tbb/sources/debian.sources"
  (cd "$tbb" && apt-get "${apt[@]}" update -q && apt-get "${apt[@]}" source -q --download-only onetbb)
  mkdir -p "$tbb/source"
  tar xf "$tbb"/onetbb_*.orig.tar.* -C "$tbb/source" --strip-components=1
  cmake -S "$tbb/source" -B "$tbb/build" -G Ninja -DCMAKE_BUILD_TYPE=RelWithDebInfo -DTBB_TEST=OFF \
    -DTBB_STRICT=OFF -DTBBMALLOC_BUILD=OFF -DTBB_SANITIZE=thread
  nice ninja -C "$tbb/build" tbb
}
library() { find "$tbb/build" -name libtbb.so.12 -printf '%h' -quit 2>/dev/null; }
[ -n "$(library)" ] || build_tbb

cmake --preset thread -DHOWLMAP_TESTS=ON
nice ninja -C build/thread
LD_LIBRARY_PATH="$(library)" nice ctest --preset thread -R "${1:-.}"
