#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds the fuzzers with clang and the sanitizers, and gives each an equal part of the time.
# bash tests/fuzz/run.sh MINUTES [TARGET...]      what is found stays in build/fuzz/found
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
minutes="${1:?bash tests/fuzz/run.sh MINUTES [TARGET...]}"
shift
targets=("$@")
if [ ${#targets[@]} -eq 0 ]; then targets=(load edit recording table command_line); fi

cmake -S . -B build/fuzz -G Ninja -DCMAKE_BUILD_TYPE=RelWithDebInfo -DCMAKE_CXX_FLAGS_RELWITHDEBINFO="-O1 -g1" \
  -DCMAKE_CXX_COMPILER=clang++-14 -DCMAKE_CXX_FLAGS="-fsanitize=fuzzer-no-link -Wno-error" \
  -DHOWLMAP_SANITIZE=address,undefined,float-cast-overflow -DHOWLMAP_FUZZ=ON -DHOWLMAP_TESTS=OFF
nice ninja -C build/fuzz "${targets[@]/#/fuzz_}"

found="$PWD/build/fuzz/found"
mkdir -p "$found"
fuzz() { # TARGET: what libFuzzer says goes to build/fuzz/TARGET.log
  local target="$1" grown="$PWD/build/fuzz/grown/$1"  # whole paths: a target may go to a folder of its own
  mkdir -p "$grown"
  nice -n 10 "$(find build/fuzz -type f -name "fuzz_$target" -perm -u+x)" "$grown" "$PWD/tests/fuzz/seeds/$target" \
    -dict=tests/fuzz/dictionary.txt -max_total_time=$((minutes * 60 / ${#targets[@]})) -timeout=10 -rss_limit_mb=2048 \
    -max_len=20000 -artifact_prefix="$found/$target-" -print_final_stats=1 >"build/fuzz/$target.log" 2>&1
}

echo "Fuzzing ${targets[*]}, all at once, $minutes minutes in all"
pids=()
for target in "${targets[@]}"; do fuzz "$target" & pids+=($!); done
trap 'kill "${pids[@]}" 2>/dev/null' INT TERM
status=0
for i in "${!pids[@]}"; do
  wait "${pids[i]}" || status=1
  echo "== ${targets[i]}"
  grep -E 'ERROR|SUMMARY|number_of_executed|peak_rss|DONE' "build/fuzz/${targets[i]}.log" || status=1
done
if compgen -G "$found/*" >/dev/null; then
  echo "Found: $(ls "$found")" >&2
  exit 1
fi
exit "$status"
