#!/usr/bin/env bash
# Makes each formula of list.tsv wrong in a copy of the tree, one at a time, and runs the tests that must notice. Ends with a failure
# when one does not. Takes some minutes; run by hand after a change to a formula or its tests.
set -u
root=$(cd "$(dirname "$0")/../.." && pwd)
copy=$(mktemp -d)
trap 'rm -rf "$copy"' EXIT
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 MSBUILDDISABLENODEREUSE=1
(cd "$root" && git ls-files -z | tar --null -T - -cf -) | tar -xf - -C "$copy"
project() { echo "$copy/tests/ReworkThermal.$1.Tests"; }

caught=0
missed=0
while IFS=$'\t' read -r what file text wrong tests names; do
    case "$what" in ''|'#'*) continue ;; esac
    path=$copy/$file
    cp "$path" "$copy/kept"
    TEXT=$text WRONG=$wrong perl -0pi -e 's/\Q$ENV{TEXT}\E/$ENV{WRONG}/' "$path"
    if cmp -s "$path" "$copy/kept"; then
        echo "NOT FOUND  $what: '$text' is not in $file"
        missed=$((missed + 1))
        continue
    fi
    filter=$(echo "$names" | sed 's/\([^|]*\)/FullyQualifiedName~\1/g')
    if ! dotnet build "$(project "$tests")" -c Release -v quiet >"$copy/log" 2>&1; then
        echo "NOT BUILT  $what"
        missed=$((missed + 1))
    elif dotnet test "$(project "$tests")" -c Release --no-build --filter "$filter" >"$copy/log" 2>&1; then
        echo "MISSED     $what"
        missed=$((missed + 1))
    else
        echo "caught     $what: $(grep -c '\[FAIL\]' "$copy/log") of the tests named fail"
        caught=$((caught + 1))
    fi
    mv "$copy/kept" "$path"
    touch "$path"
done <"$root/tests/mutations/list.tsv"
echo "$caught caught, $missed missed"
[ "$missed" -eq 0 ]
