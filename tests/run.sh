#!/usr/bin/env bash
# Installs what is missing (Debian 12), builds, and runs all tests.
set -euo pipefail
cd "$(dirname "$0")/.."
source .ci/packages.sh
need_packages "${build_packages[@]}" locales
need_comma_locale
cmake --workflow --preset test
