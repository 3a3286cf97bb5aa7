#!/bin/sh
# Writes a record of a job with hostile text in every field that takes text, as a page and as pictures, and opens each in headless
# Chromium: nothing runs, and nothing is asked of a server that waits for it. A page without our escaping must fail the same check.
# Usage: tests/record/check-hostile.sh   (the program must be built: dotnet build src/ReworkThermal.App -c Release)
# Without Chromium (Debian package chromium) or Python 3 it is skipped with a message.
set -eu

here=$(cd "$(dirname "$0")/../.." && pwd)
program="$here/src/ReworkThermal.App/bin/Release/net10.0/rework-thermal.dll"
[ -f "$program" ] || { echo "not built: $program" >&2; exit 2; }
command -v chromium > /dev/null || { echo "skipped: chromium is not installed"; exit 0; }
command -v python3 > /dev/null || { echo "skipped: python3 is not installed"; exit 0; }

work=$(mktemp -d)
server=
trap '[ -z "$server" ] || kill "$server" 2> /dev/null || true; rm -rf "$work"' EXIT

# A server that writes down whatever is asked of it.
python3 -u - "$work/port" "$work/asked" <<'PY' &
import http.server, sys

class Listener(http.server.BaseHTTPRequestHandler):
    def do_GET(self):
        with open(sys.argv[2], "a") as asked:
            asked.write(self.path + "\n")
        self.send_response(204)
        self.end_headers()

    def log_message(self, *_):
        pass

server = http.server.HTTPServer(("127.0.0.1", 0), Listener)
with open(sys.argv[1] + ".new", "w") as port:
    port.write(str(server.server_port))
import os
os.rename(sys.argv[1] + ".new", sys.argv[1])
server.serve_forever()
PY
server=$!
for _ in 1 2 3 4 5 6 7 8 9 10; do [ -f "$work/port" ] || sleep 0.3; done
home="http://127.0.0.1:$(cat "$work/port")"

# Leaves a quoted attribute, an element, a title, a style and a comment; $1 says which field it came from.
bad() { printf '%s' "$1\"'></title></style></svg>--><script>document.title='RAN'</script><img src=$home/$1 onerror=document.title='RAN'>"; }

# For fields that hold a few words only.
short() { printf '%s' "$1\"><img src=x onerror=document.title='RAN'>"; }

rt() { dotnet "$program" --store "$work/jobs.db" "$@" > "$work/last" 2>&1 || { cat "$work/last"; echo "failed: $*" >&2; exit 1; }; }
touch_tools="--contact flooded --preheater hot-plate --preheat-set 154 --board-temp 149 --iron medium --iron-set 300"
rt job new "$(bad label)" --board six-layer-controller --joint jack-anchor-six-layer --connector panel-jack --solder Sn96.5Ag3Cu0.5
{
    echo "number,name,row,position,duty,destination,bond,current_a,pair,state,note"
    for pin in 1 2 3; do
        printf '%s,"%s",1,%s,wired,"%s",,0.1,,loose,"%s"\n' "$pin" "$(short "name$pin" | sed 's/"/""/g')" "$pin" "$(short "leads$pin" | sed 's/"/""/g')" "$(bad "pin-note$pin" | sed 's/"/""/g')"
    done
} > "$work/pins.csv"
rt job pins --from "$work/pins.csv"
rt job pad "$(bad description)" --pad TP1
rt job look missing --pad 2 --note "$(bad look)"
rt job prior touched --pad 1 --note "$(bad prior)"
rt job note "$(bad note)"
rt job note "$(bad pad-note)" --pad 1
# shellcheck disable=SC2086
rt touch log --pad 1 --purpose wick --seconds 3 $touch_tools --added Sn63Pb37 --added-mass 5 --note "$(bad touch)" --at 2026-03-01T09:10:00Z
# shellcheck disable=SC2086
rt touch log --pad 3 --purpose other --seconds 2 $touch_tools --at 2026-03-01T09:20:00Z
slip=$(dotnet "$program" --store "$work/jobs.db" touch list --json | sed -n 's/.*"entry": \([0-9]*\),.*/\1/p' | tail -1)
rt touch void "$slip" --reason "$(bad void)"
rt wire run 2 TP1 --awg 30 --length 14 --kind ptfe --note "$(bad wire)"
rt checks pass --number 1 --note "$(bad check)"
rt job close --note "$(bad close)"
rt report --job "$(bad label)" --html "$work/record.html" --markdown "$work/record.md"
python3 - "$here/profiles/cases/slab-dipped.toml" "$work/case.toml" "$(bad title)" <<'PY'
import json, re, sys
text = open(sys.argv[1]).read()
text, count = re.subn(r'(?m)^title = .*$', lambda _: "title = " + json.dumps(sys.argv[3]), text)
assert count == 1, "the case has no title any more"
open(sys.argv[2], "w").write(text)
PY
rt heat "$work/case.toml" --plot "$work/plot.svg" --csv "$work/plot.csv"

for field in label name1 look note touch void wire close; do
    grep -q "$field" "$work/record.html" || { echo "the record does not show $field: this check would not see it" >&2; exit 1; }
done

# Answers 0 when something ran or was asked for.
runs() {
    rm -f "$work/asked"
    timeout 120 chromium --headless --no-sandbox --disable-gpu --disable-dev-shm-usage --user-data-dir="$work/profile" \
        --virtual-time-budget=3000 --dump-dom "file://$1" > "$work/dom" 2> "$work/log" || { cat "$work/log"; exit 1; }
    [ -s "$work/dom" ] || { echo "chromium showed nothing of $1" >&2; exit 1; }
    [ -s "$work/asked" ] || grep -q '<title>RAN' "$work/dom" || grep -qi '<script' "$work/dom"
}

printf '<!DOCTYPE html><html><head><title>x</title></head><body><p title="%s">%s</p></body></html>\n' "$(bad control)" "$(bad control)" > "$work/control.html"
runs "$work/control.html" || { echo "the control page did nothing: this check could not fail" >&2; exit 1; }
for page in record.html plot.svg; do
    if runs "$work/$page"; then
        echo "$page: hostile text ran or loaded something:" >&2
        cat "$work/asked" 2> /dev/null >&2 || true
        exit 1
    fi
done
echo "hostile text: nothing ran and nothing was loaded"
