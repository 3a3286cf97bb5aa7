#!/bin/sh
# Validates a record with html-validate from the npm registry and with tidy from Debian.
# Usage: tests/record/check-html.sh RECORD.html
# A tool that is neither there nor to be had (no network) is skipped with a message; a finding fails.
set -eu

record=${1:?usage: check-html.sh RECORD.html}
[ -f "$record" ] || { echo "there is no file $record" >&2; exit 2; }
record=$(cd "$(dirname "$record")" && pwd)/$(basename "$record")
version=9.7.1
tools=${REWORK_THERMAL_TOOLS:-${TMPDIR:-/tmp}/rework-thermal-record-tools}
checked=0

if command -v npm > /dev/null; then
    mkdir -p "$tools"
    if [ ! -x "$tools/node_modules/.bin/html-validate" ]; then
        npm install --no-save --no-audit --no-fund --prefix "$tools" "html-validate@$version" > "$tools/npm.log" 2>&1 ||
            echo "skipped: html-validate cannot be installed (see $tools/npm.log)"
    fi
    if [ -x "$tools/node_modules/.bin/html-validate" ]; then
        printf '{"root":true,"extends":["html-validate:recommended"]}\n' > "$tools/.htmlvalidate.json"
        (cd "$tools" && node_modules/.bin/html-validate --config .htmlvalidate.json "$record")
        echo "html-validate $version: no findings"
        checked=1
    fi
else
    echo "skipped: npm is not installed"
fi

command -v tidy > /dev/null || { command -v apt-get > /dev/null && apt-get install -y --no-install-recommends tidy > /dev/null 2>&1; } || true
if command -v tidy > /dev/null; then
    # tidy knows SVG by its name only: its attributes are no finding.
    findings=$(tidy -q -e "$record" 2>&1 | grep -v '<svg> proprietary attribute' || true)
    [ -z "$findings" ] || { echo "$findings"; exit 1; }
    echo "tidy: no findings"
    checked=1
else
    echo "skipped: tidy is not installed"
fi

[ "$checked" = 1 ] || echo "NOT CHECKED: no validator was to be had"
