#!/usr/bin/env bash
# Installs what is missing (Debian 12), builds, and judges the example plans.
set -euo pipefail
cd "$(dirname "$0")/.."
source .ci/packages.sh
need_packages "${build_packages[@]}"
log=$(mktemp)
trap 'rm -f "$log"' EXIT
echo "Building; this takes about a minute." >&2
cmake --preset dev >"$log" 2>&1 && cmake --build --preset dev --target jarproof_cli >>"$log" 2>&1 || { cat "$log" >&2; exit 1; }
# Exit status 1 says that a plan was rejected, which is what the first example is for.
status=0
./build/dev/jarproof check examples/plans/soup-first-try.yaml examples/plans/soup-corrected.yaml || status=$?
[ "$status" -eq 1 ]
