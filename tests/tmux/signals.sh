#!/usr/bin/env bash
# What the real program does with its terminal when signals come: it is stopped and continued, asked to end, left by its terminal.
# What was being typed is offered again. At the end keys at random on a terminal whose size changes.
set -u
. "$(dirname "$0")/bench.sh"
need

drafts=$folder/jobs.db.drafts.json
sane() { see "left with 0, icanon echo"; }
# The cursor is shown, the first screen is back, and the mouse and pastes come as the terminal's own again.
given_back() {
    [ "$(mux display-message -p -t bench '#{cursor_flag}#{alternate_on}#{mouse_any_flag}#{mouse_sgr_flag}')" = 1000 ]
}
raw() { ! stty -a <"$(mux display-message -p -t bench '#{pane_tty}')" | grep -q ' icanon'; }
# Waits until a stopped program stands still, and until a continued one has its terminal again.
stopped() { local tries=100; until grep -q '^State:[[:space:]]*T' "/proc/$1/status" || [ "$tries" -eq 0 ]; do sleep 0.05; tries=$((tries - 1)); done; }
soon() { local tries=100; until "$@"; do sleep 0.05; tries=$((tries - 1)); [ "$tries" -gt 0 ] || return 1; done; }

open 80 24
see "No job yet"
demo_job
press 4 i
fill "350 medium"
for round in 1 2 3; do
    press Space
    expect "touch $round begins" see "TOUCH RUNNING"
    kill -STOP "$(pid)"
    stopped "$(pid)"
    kill -CONT "$(pid)"
    expect "the continued program reads key by key, round $round" soon raw
    sleep 0.8
    press Space
    expect "one key stops the touch, round $round" see "TOOL OFF"
    # Two strokes within 0.7 s count as one.
    sleep 1
    press n
done

# A shell with job control stops and continues the program as at a desk, and writes over the picture meanwhile.
mux kill-server
sleep 0.5
rm -f "$folder/pid"
mux new-session -d -s bench -x 80 -y 24 "cd '$folder' && exec bash --norc --noprofile -i"
sleep 0.5
write "'$program' --store jobs.db --calibrations calibrations"
press Enter
expect "the program starts from a shell" see "Demo controller" 20
sleep 0.5
press Enter
see "base solder"
press 4
see "READY"
press Space
expect "a touch begins before Ctrl+Z" see "TOUCH RUNNING"
press C-z
expect "Ctrl+Z gives the shell" see "Stopped"
write "fg"
press Enter
expect "fg shows the running touch again" see "TOUCH RUNNING"
sleep 0.8
press Space
expect "one key stops the touch after fg" see "TOOL OFF"
press q y
sleep 0.5

# end SIGNAL: types a note, ends the program by the signal, starts it again and takes the note up.
end() {
    open 80 24
    see "Demo controller"
    press Enter
    see "base solder"
    press n
    write "half a note before $1"
    expect "a note is being typed before SIG$1" see "half a note before $1"
    local process
    process=$(pid)
    kill "-$1" "$process"
    expect "SIG$1 ends the program" gone "$process"
    expect "SIG$1 leaves lines and echo as they were" sane
    expect "SIG$1 leaves cursor, screen and mouse as they were" soon given_back
    expect "SIG$1 keeps what was typed" grep -q "half a note before $1" "$drafts"
    open 80 24
    expect "it is offered after SIG$1" see "half a note before $1"
    expect "with its job" see "Unfinished in 'Demo controller'"
    press Enter
    sleep 0.5
    press Enter
    expect "taken up and kept after SIG$1" see "Kept."
    expect "and not offered twice" test ! -e "$drafts"
    press 5
    expect "the record has it after SIG$1" see "note: half a note before $1"
    press q y
    see "left with 0"
}
end TERM
end HUP
end QUIT

open 80 24
see "Demo controller"
press n
write "a job nobody finished"
process=$(pid)
mux kill-server
expect "the program ends with its terminal" gone "$process"
expect "what was typed outlives the terminal" grep -q "a job nobody finished" "$drafts"
open 80 24
expect "and is offered" see "a job nobody finished"
press n
expect "thrown away on request" see "Thrown away"
expect "for good" soon test ! -e "$drafts"

# Keys at random; Y is left out, since it answers whether to leave.
RANDOM=20261129
keys=(Enter Escape Up Down Left Right PPage NPage Home End Tab BSpace Space C-u C-q M-1 M-3 M-5 '?' '!' '/' 1 2 3 4 5 0 . a b c d e f g h i j k l m n o p r s t u v w x H S 'é' '漢' '°' -)
sizes=('80 24' '120 40' '60 16' '40 10' '3 2' '200 50' '81 25')
for i in $(seq 1 400); do
    mux send-keys -t bench "${keys[RANDOM % ${#keys[@]}]}"
    if [ $((i % 25)) -eq 0 ]; then
        read -r wide high <<<"${sizes[RANDOM % ${#sizes[@]}]}"
        mux resize-window -t bench -x "$wide" -y "$high"
        sleep 0.1
    fi
done
mux resize-window -t bench -x 80 -y 24
sleep 1
expect "400 keys at random on 7 sizes: it runs" alive "$(pid)"
expect "and shows its places" see "5 Record"
no_fault() { ! screen | grep -qF "fault of the program"; }
expect "and no fault" no_fault
process=$(pid)
kill -TERM "$process"
expect "and ends in good order" gone "$process"
expect "with the terminal given back" see "left with 0, icanon echo"

echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
