# Helpers for driving the real program in a terminal of its own. Sourced, not run.
# Needs tmux; everything lives in a private tmux server and a temporary folder, and is removed at the end.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
program=${REWORK_THERMAL:-$root/src/ReworkThermal.App/bin/Release/net10.0/rework-thermal}
folder=$(mktemp -d)
server="rework-thermal-$$"
passed=0
failed=0

need() {
    if ! command -v tmux >/dev/null; then
        echo "skipped: tmux is not installed (Debian: apt-get install tmux)"
        exit 0
    fi
    if [ ! -x "$program" ]; then
        echo "'$program' is not there; build first: dotnet build -c Release"
        exit 1
    fi
}

mux() { tmux -L "$server" -f /dev/null "$@"; }

finish() {
    mux kill-server 2>/dev/null
    rm -rf "$folder"
}
trap finish EXIT

# open WIDTH HEIGHT [VARIABLE=VALUE...] [-- OPTION...]: a shell in the pane starts the program, whose number it leaves in a file, and
# says at the end with what status it left and whether the terminal reads whole lines and echoes again. The shell waits for its child
# itself: a dead process that is the pane's own may stay a zombie for as long as tmux likes.
open() {
    local width=$1 height=$2 settings=() options=()
    shift 2
    while [ $# -gt 0 ] && [ "$1" != -- ]; do settings+=("$1"); shift; done
    [ $# -gt 0 ] && shift && options=("$@")
    mux kill-server 2>/dev/null && sleep 0.3
    rm -f "$folder/pid"
    cat >"$folder/start" <<START
cd '$folder'
sh -c 'echo \$\$ >pid.new; mv pid.new pid; exec env ${settings[*]} "$program" --store jobs.db --calibrations calibrations ${options[*]}'
echo "left with \$?,\$(stty -a | grep -o ' icanon')\$(stty -a | grep -o ' echo ')"
exec sleep 600
START
    mux new-session -d -s bench -x "$width" -y "$height" "exec sh '$folder/start'"
    local tries=500
    until [ -s "$folder/pid" ] || [ "$tries" -eq 0 ]; do sleep 0.02; tries=$((tries - 1)); done
}

screen() { mux capture-pane -p -t bench; }
pid() { cat "$folder/pid"; }
press() { for key in "$@"; do mux send-keys -t bench "$key"; sleep 0.12; done; }
write() { mux send-keys -t bench -l "$1"; sleep 0.2; }
fill() { write "$1"; press Enter; sleep 0.3; }

# see TEXT [SECONDS]: waits until the text is on the screen.
see() {
    local tries=$((${2:-10} * 20))
    while [ "$tries" -gt 0 ]; do
        if screen | grep -qF -- "$1"; then return 0; fi
        sleep 0.05
        tries=$((tries - 1))
    done
    return 1
}

# expect NAME COMMAND...: counts a check.
expect() {
    local name=$1
    shift
    if "$@"; then
        passed=$((passed + 1))
        echo "passed: $name"
    else
        failed=$((failed + 1))
        echo "FAILED: $name"
        screen 2>/dev/null | sed 's/^/    | /'
    fi
}

# A dead process that nobody has waited for yet is not alive.
alive() { kill -0 "$1" 2>/dev/null && ! grep -qs '^State:[[:space:]]*Z' "/proc/$1/status"; }
gone() {
    local tries=200
    while [ "$tries" -gt 0 ] && alive "$1"; do sleep 0.05; tries=$((tries - 1)); done
    ! alive "$1"
}

# A job on the demo board, with pins, ready for the clock.
demo_job() {
    press n
    fill "Demo controller"
    see "I have read this"
    press Enter Down Enter
    fill "six-layer-controller"
    press Down Enter
    fill "jack-anchor-six-layer"
    press Down Down Enter
    fill "Sn96.5Ag3Cu0.5"
    press a
    fill "1=VBUS 2=GND 3=NC"
    press H
    sleep 0.5
}

# Goes to the plan and types the refit that the demo needs; lead-free solder finds no plan on this board.
leaded_refit() {
    local i
    press 3 Down Down Down Down Enter
    for i in 1 2 3 4 5 6 7 8 9 10 11 12 13 14; do press BSpace; done
    fill "Sn63Pb37"
}
