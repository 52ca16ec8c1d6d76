#!/usr/bin/env bash
# Installs what is missing (Debian 12), builds, and runs all tests.
set -euo pipefail
cd "$(dirname "$0")/.."
source .ci/packages.sh
need_packages "${build_packages[@]}" locales
# One test runs under a locale with a decimal comma.
if command -v localedef >/dev/null && ! locale -a 2>/dev/null | grep -qiE '^de_DE\.utf-?8$'; then
  localedef -i de_DE -f UTF-8 de_DE.UTF-8
fi
cmake --workflow --preset test
