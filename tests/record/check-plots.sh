#!/bin/sh
# Opens a record in headless Chromium without network and checks that it renders: all plots in colour at 1000 px and at 360 px, no
# page wider than the window, and two printed pages for the demo job.
# Usage: tests/record/check-plots.sh RECORD.html [MOST_PAGES]
# Without Chromium (Debian package chromium) or Python 3 it is skipped with a message.
set -eu

record=${1:?usage: check-plots.sh RECORD.html [MOST_PAGES]}
most=${2:-2}
[ -f "$record" ] || { echo "there is no file $record" >&2; exit 2; }
record=$(cd "$(dirname "$record")" && pwd)/$(basename "$record")
here=$(cd "$(dirname "$0")" && pwd)

command -v chromium > /dev/null || { command -v apt-get > /dev/null && apt-get install -y --no-install-recommends chromium > /dev/null 2>&1; } || true
command -v chromium > /dev/null || { echo "skipped: chromium is not installed"; exit 0; }
command -v python3 > /dev/null || { echo "skipped: python3 is not installed"; exit 0; }

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
browser() {
    timeout 120 chromium --headless --no-sandbox --disable-gpu --disable-dev-shm-usage --user-data-dir="$work/profile" \
        --host-resolver-rules="MAP * ~NOTFOUND" "$@" "file://$record" > "$work/log" 2>&1 || { cat "$work/log"; exit 1; }
}

for width in 1000 360; do
    browser --hide-scrollbars --force-device-scale-factor=1 --window-size=$width,9000 --screenshot="$work/$width.png"
    python3 "$here/check_plots.py" "$work/$width.png" "$width"
done

browser --no-pdf-header-footer --print-to-pdf="$work/record.pdf"
python3 "$here/check_plots.py" --pages "$work/record.pdf" "$most"
