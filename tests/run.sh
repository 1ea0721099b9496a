#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds everything and runs every test. The last line counts the test functions.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source app/setup.sh

need_packages "${packages_to_run[@]}" "${packages_to_test[@]}"
cmake --preset release -DHOWLMAP_TESTS=ON
cmake --build --preset release

status=0
ctest --preset release -j2 --no-tests=error --output-on-failure || status=$?

# Each test program reports its functions; one that dies before it reports is a failure of its own.
log=build/release/Testing/Temporary/LastTest.log
read -r passed failed < <(awk '/^Totals: /{p += $2; f += $4} END {print p + 0, f + 0}' "$log" 2>/dev/null || echo 0 0)
if [ "$passed" -eq 0 ] && [ "$failed" -eq 0 ]; then
  echo "No test ran." >&2
  status=1
fi
if [ "$status" -ne 0 ] && [ "$failed" -eq 0 ]; then failed=1; fi
echo "$passed passed, $failed failed"
exit "$status"
