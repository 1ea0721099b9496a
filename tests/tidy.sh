#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# clang-tidy over core/ and app/ by the rules in .clang-tidy; fails if it finds something. By hand, before a release.
# bash tests/tidy.sh [FILES]      a regular expression; all files if not given
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
command -v run-clang-tidy-14 >/dev/null || { echo "tidy: clang-tidy 14 is missing (apt-get install clang-tidy-14)" >&2; exit 1; }

cmake --preset release && cmake --build --preset release --target howlmap  # what Qt generates is read, too
# Files of a room are compiled together, by a file that includes them: what it is warned of does not count.
nice run-clang-tidy-14 -p build/release -quiet -header-filter='/(core|app)/[a-z_/]*[.](h|cpp)$' -checks='-bugprone-suspicious-include' \
  -extra-arg=-Wno-unknown-warning-option "${1:-/(core|app)/}"
