# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by app/run.sh and tests/run.sh: the Debian packages that Howlmap needs, and how to get those that are missing.

packages_to_run=(
  g++ cmake ninja-build pkg-config
  qt6-base-dev qt6-svg-dev qt6-multimedia-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools qt6-translations-l10n
  libqcustomplot-dev
  libeigen3-dev libtbb-dev libhwy-dev libboost-dev nlohmann-json3-dev libnlopt-cxx-dev
  libsndfile1-dev libkissfft-dev libexpected-dev libfmt-dev
  fonts-dejavu-core
)
packages_to_test=(
  librapidcheck-dev libvalijson-dev
  xvfb xauth xdotool imagemagick poppler-utils qpdf librsvg2-bin libxml2-utils
  appstream desktop-file-utils shared-mime-info mandoc dpkg-dev python3
)

is_installed() {
  [ "$(dpkg-query --show --showformat='${db:Status-Status}' "$1" 2>/dev/null)" = installed ]
}

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

# need_packages NAME...: installs those that are missing, and only those.
need_packages() {
  local missing=() name
  if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
    echo "This is not a Debian system; please make sure these packages or their like are there: $*" >&2
    return 0
  fi
  for name in "$@"; do is_installed "$name" || missing+=("$name"); done
  if [ ${#missing[@]} -eq 0 ]; then return 0; fi
  if [ "$(id -u)" -ne 0 ] && ! command -v sudo >/dev/null; then
    printf 'Packages are missing, and this user can neither act as root nor use sudo. Please have these installed:\n  apt-get install %s\n' \
      "${missing[*]}" >&2
    return 1
  fi
  echo "Installing ${#missing[@]} missing packages: ${missing[*]}"
  as_root apt-get update || echo "The package lists could not be refreshed; trying with those that are here." >&2
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "${missing[@]}"
}
