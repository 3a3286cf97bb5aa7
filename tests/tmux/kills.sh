#!/usr/bin/env bash
# Kills the real program with -9 at random moments while notes are typed. What the screen said was kept is in the store afterwards, once;
# what it had not said yet is there whole or not at all; the store has nothing to complain of.
set -u
. "$(dirname "$0")/bench.sh"
need

rounds=${1:-6}
RANDOM=20261130
kept=()
export_text() { rm -f "$folder/export.json"; "$program" store export "$folder/export.json" --store "$folder/jobs.db" >/dev/null && cat "$folder/export.json"; }
times() { grep -oF -- "$1\"" <<<"$text" | wc -l; }
sound() { "$program" store check --store "$folder/jobs.db" >/dev/null; }

open 80 24
see "No job yet"
demo_job
for round in $(seq 1 "$rounds"); do
    note=0
    until [ "$((RANDOM % 3))" -eq 0 ] && [ "$note" -gt 0 ]; do
        note=$((note + 1))
        press n
        fill "note $round of $note"
        see "Kept." && see "all saved" && kept+=("note $round of $note")
        [ "$note" -lt 4 ] || break
    done

    # One more note is on its way, at any stage, when the process is gone.
    press n
    write "note $round at the end"
    mux send-keys -t bench Enter
    sleep "0.$((RANDOM % 10))$((RANDOM % 10))"
    kill -9 "$(pid)"
    open 80 24
    see "Demo controller"
    press Enter
    expect "round $round: the job opens again" see "base solder"
done

text=$(export_text)
complete=true
for note in "${kept[@]}"; do
    [ "$(times "$note")" -eq 1 ] || { complete=false; echo "    | '$note' is there $(times "$note") times"; }
done
expect "all ${#kept[@]} notes that were said to be kept are there, once" "$complete"
halves=$(grep -o '"note [0-9]* at the [^"]*' <<<"$text" | grep -cv 'at the end$')
expect "none is there in half" test "$halves" -eq 0
expect "the store has nothing to complain of" sound

echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
