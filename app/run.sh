#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds Howlmap and opens an example show.
# Without a display it prints the check of that show and writes its plan and the sheet for the venue.
# bash app/run.sh [SHOW]
set -euo pipefail
root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
show="$(realpath -- "${1:-$root/examples/folk-band-six.howlmap}")"
cd "$root"
source app/setup.sh

need_packages "${packages_to_run[@]}"
cmake --preset release -DHOWLMAP_TESTS=OFF
cmake --build --preset release --target howlmap
howlmap="$root/build/release/app/howlmap"

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  exec "$howlmap" "$show"
fi

out="$root/build/$(basename "$show" .howlmap)"
mkdir -p "$out"
echo
"$howlmap" check "$show" || [ $? -eq 1 ]  # 1 is an answer too: the target is not reached
"$howlmap" plot "$show" -o "$out/plan.svg"
"$howlmap" advance "$show" -o "$out/sheet.pdf"
echo
echo "No display here. The plan and the sheet for the venue are in $out"
