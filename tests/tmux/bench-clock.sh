#!/usr/bin/env bash
# Drives the real program by keys: takes in a job, makes and keeps a plan, times a touch, kills the program in mid-touch with -9,
# starts it again and finds the job with the interrupted touch offered. Also: signals, a lost terminal, NO_COLOR.
set -u
. "$(dirname "$0")/bench.sh"
need

open 80 24
expect "the first screen appears" see "No job yet"
demo_job
expect "the job has its pins" see "VBUS"
expect "everything is saved" see "all saved"

leaded_refit
press r
expect "plans are made" see "Plans, best first" 60
press k
expect "a plan is kept" see "The plan is in the job"
press 4
expect "the clock has the plan's settings" see "dwell"

mux pipe-pane -t bench "cat >>'$folder/raw'"
press Space
expect "a touch begins" see "TOUCH RUNNING"
expect "the simulated trace runs" see "coldest solder" 20
sleep 2
press f
expect "the flow is marked" see "flow marked at"
expect "the dwell is shown" see "DWELL REACHED" 20
rung() { sleep 0.5; grep -q $'\a' "$folder/raw"; }
expect "the bell rings at the dwell" rung
press Space
expect "the touch ends" see "TOOL OFF"
expect "the timed flow teaches the next plan" see "Learned from 1 timed touch" 30
press 5
expect "the touch is in the record" see "touch: pad 1"

press 4 Down
sleep 1
press Space
expect "a second touch begins" see "TOUCH RUNNING"
sleep 1.5
kill -9 "$(pid)"
open 120 40
expect "after kill -9 the job is found and the touch is offered" see "A touch was cut short"
press k
fill "2.0"
expect "the touch is completed" see "TOOL OFF"
press 5
expect "the record has it" see "touch: pad 2, 2.0 s"

press w
expect "the record to hand over is written" see "Written: " 30
press w
expect "and not over itself without asking" see "Replace? There already" 30
press n
expect "which is left alone on request" see "Nothing was written"

press Escape Escape Escape
# A letter right behind an Escape is that letter with Alt to every terminal.
sleep 1
expect "Escape does not leave" see "[5 Record]"
press q y
expect "Q and Y leave" see "left with 0"

open 80 24
see "Demo controller"
process=$(pid)
kill -TERM "$process"
expect "SIGTERM ends the program" gone "$process"
expect "and the terminal is given back" see "left with 0, icanon echo"

open 80 24
see "Demo controller"
process=$(pid)
mux kill-server
expect "the program ends with its terminal" gone "$process"

open 80 24 NO_COLOR=1
see "Demo controller"
press Enter
see "base solder"
colours() { mux capture-pane -p -e -t bench | grep -qE $'\e\\[([0-9;]*;)?(3[0-7]|4[0-7]|9[0-7]|10[0-7]|38|48)(;[0-9;]*)?m'; }
no_colours() { ! colours; }
expect "NO_COLOR gives no colour" no_colours

open 80 24 TERM=dumb
expect "a terminal that cannot place text is refused" see "Commands work without one"

"$program" </dev/null >"$folder/out" 2>&1
expect "without a terminal it refuses politely" test $? -eq 2

echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
