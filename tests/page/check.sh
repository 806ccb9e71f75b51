#!/usr/bin/env bash
# Holds the pages of some runs against an accessibility checker (axe-core), in light and dark, and an HTML validator (html-validate).
# Needs chromium, node and npm. Without them, or without a network to install the checkers from, it says so and passes.
# Usage: tests/page/check.sh report.html ...
set -u
pages=()
for page in "$@"; do pages+=("$(realpath "$page")"); done
cd "$(dirname "$0")"
skip() { echo "SKIPPED the checks of the page: $1"; exit 0; }

CHROMIUM=$(command -v chromium || command -v chromium-browser || true)
[ -n "$CHROMIUM" ] || skip "no chromium"
command -v node > /dev/null && command -v npm > /dev/null || skip "no node and npm"
if [ ! -d node_modules/axe-core ] || [ ! -d node_modules/html-validate ] || [ ! -d node_modules/puppeteer-core ]; then
    npm install --no-save --no-package-lock --ignore-scripts --no-audit --no-fund > /dev/null 2>&1 || skip "the checkers cannot be installed"
fi

export CHROMIUM
ok=0
node check.mjs "${pages[@]}" || ok=1
npx --no-install html-validate --config .htmlvalidate.json "${pages[@]}" && echo "html-validate: no errors" || ok=1
exit "$ok"
