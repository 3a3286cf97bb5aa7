#!/bin/sh
# Replays a whole demo job from the shell, from the board that came in to the record that is handed over, and checks what must hold.
# Usage: tests/demo-job/run.sh [FOLDER]   (the record is written there; a temporary folder when left out)
# The program must be built: dotnet build src/ReworkThermal.App -c Release. Everything in this job is invented.
set -eu

here=$(cd "$(dirname "$0")/../.." && pwd)
out=${1:-$(mktemp -d)}
mkdir -p "$out"
program="$here/src/ReworkThermal.App/bin/Release/net10.0/rework-thermal.dll"
[ -f "$program" ] || { echo "not built: $program" >&2; exit 2; }
store="$out/demo.db"
rm -f "$store" "$store-wal" "$store-shm"

rt() { dotnet "$program" --store "$store" "$@"; }
quiet() { rt "$@" > "$out/last.txt" || { cat "$out/last.txt"; echo "failed: $*" >&2; exit 1; }; }
must_say() { grep -q -- "$1" "$out/last.txt" || { cat "$out/last.txt"; echo "did not say: $1" >&2; exit 1; }; }

start=$(date +%s)

# What arrived: pins of the jack, one landing pad for a wire, and what can be seen of them.
quiet job new "Pump controller 7: jack torn by a failed swap" --board six-layer-controller --joint jack-anchor-six-layer \
    --connector panel-jack --solder Sn96.5Ag3Cu0.5
quiet job pins --pinout panel-jack-16
quiet job pad "test pad on the CLK track" --pad TP4 --joint wire-landing-pad-six-layer
quiet job look sound --pad 1,2,3,4,5,6,7,8,9,10,11,13,14,15,16,S1
quiet job look missing --pad 12 --note "pulled off with the old jack"
quiet job look loose --pad S2 --note "edge lifted on the solder side"
quiet job prior sound --note "no residue, no discolouration"
quiet job prior touched --pad S2 --note "flux residue and an uneven fillet from the first attempt"

# The plan, and what the next touch would cost before anything is heated.
quiet job accept "$here/profiles/requests/pump-controller-jack.toml" --number 2
quiet budget show --pad S1 --iron medium --iron-set 300 --contact flooded --preheater hot-plate --preheat-set 154 --board-temp 149 --seconds 3.2
must_say "Do not pull"

# Two frame tabs: dilute and wick, flush and wick twice, refill. Each touch is simulated from its setting and its seconds.
tools="--contact flooded --preheater hot-plate --preheat-set 154 --board-temp 149 --iron medium"
minute=10
for pad in S1 S2; do
    quiet touch log --pad $pad --purpose wick --seconds 3.2 $tools --iron-set 300 --added In51Bi32.5Sn16.5 --added-mass 3 --at 2026-03-01T09:$minute:00Z
    minute=$((minute + 2))
    quiet touch log --pad $pad --purpose wick --seconds 3.9 $tools --iron-set 280 --added Sn63Pb37 --added-mass 7.5 --at 2026-03-01T09:$minute:00Z
    minute=$((minute + 2))
    quiet touch log --pad $pad --purpose wick --seconds 3.9 $tools --iron-set 280 --added Sn63Pb37 --added-mass 7.5 --at 2026-03-01T09:$minute:00Z
    minute=$((minute + 2))
    quiet touch log --pad $pad --purpose refill --seconds 3.9 $tools --iron-set 280 --added Sn63Pb37 --at 2026-03-01T09:$minute:00Z
    minute=$((minute + 2))
done

# A slip of the hand is taken back, not deleted.
quiet touch log --pad 16 --purpose other --seconds 2 $tools --iron-set 280 --at 2026-03-01T09:40:00Z
slip=$(rt touch list --json | sed -n 's/.*"entry": \([0-9]*\),.*/\1/p' | tail -1)
quiet touch void "$slip" --reason "wrong pad typed: the tool was on S2"

# A wire for the missing pad: judged first, then laid; one end was measured with a thermocouple.
quiet wire judge --awg 30 --length 14 --current 0.02 --kind ptfe --crosses-copper
must_say "Fit"
quiet wire plan --pad TP4
must_say "iron"
quiet wire run 12 TP4 --awg 30 --length 14 --kind ptfe --note "along the edge, glued down"
cat > "$out/tp4.csv" <<'CSV'
time_s,temperature_c
0,24.1
0.5,118.6
1.0,181.2
1.5,203.9
2.0,209.4
3.0,97.3
6.0,41.0
CSV
quiet touch log --pad TP4 --purpose wire --iron fine --iron-set 300 --series "$out/tp4.csv" --added Sn63Pb37 --added-mass 1 --at 2026-03-01T09:50:00Z
quiet touch log --pad 12 --purpose wire --seconds 2 $tools --iron-set 280 --added Sn63Pb37 --added-mass 1 --at 2026-03-01T09:52:00Z

# Every pin is probed; one reading fails first, and a later look at that pin is followed by a pass.
checks=$(rt checks list --json | grep -c '"standing"')
quiet checks read --number 1 --ohms 40
must_say "FAILED"
quiet touch log --pad 1 --purpose refill --seconds 3.9 $tools --iron-set 280 --added Sn63Pb37 --added-mass 2 --at 2026-03-01T10:05:00Z
quiet checks pass --number "1-$checks"
quiet checks list
must_say "proven"

# The record, twice: the same store gives the same bytes.
quiet job close --note "handed over"
quiet report --job "Pump controller 7: jack torn by a failed swap" --html "$out/record.html" --markdown "$out/record.md" --force
quiet report --job "Pump controller 7: jack torn by a failed swap" --html "$out/again.html" --markdown "$out/again.md" --force
cmp "$out/record.html" "$out/again.html"
cmp "$out/record.md" "$out/again.md"
rm "$out/again.html" "$out/again.md"
quiet store check
must_say "sound"
rm -f "$out/last.txt"

echo "demo job done in $(($(date +%s) - start)) s: $out/record.html, $out/record.md"
