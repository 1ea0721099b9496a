#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Which lines the tests reach: core 95 %, its reader and writer 100 %, the interface 75 %.
# bash tests/coverage.sh [TESTS]      a regular expression for ctest; all of them if not given
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
command -v gcovr >/dev/null || { echo "coverage: gcovr is missing (apt-get install gcovr)" >&2; exit 1; }

cmake -S . -B build/coverage -G Ninja -DCMAKE_BUILD_TYPE=RelWithDebInfo -DCMAKE_CXX_FLAGS_RELWITHDEBINFO="-O1 -g1" \
  -DHOWLMAP_COVERAGE=ON -DHOWLMAP_TESTS=ON
nice ninja -C build/coverage
find build/coverage -name '*.gcda' -delete
QTEST_FUNCTION_TIMEOUT=3600000 nice ctest --test-dir build/coverage -R "${1:-.}" --output-on-failure || true

lines=build/coverage/lines.json
gcovr --root . --object-directory build/coverage --filter core/ --filter app/ --exclude-throw-branches --json "$lines"
status=0
at_least() { # PERCENT FOLDER: the files that are not reached whole, and whether the folder reaches its share
  echo "== $2: at least $1 % of the lines"
  gcovr --root . --add-tracefile "$lines" --filter "$2/" --sort-percentage --fail-under-line "$1" || status=1
}
at_least 100 core/file
at_least 95 core
at_least 75 app
exit "$status"
