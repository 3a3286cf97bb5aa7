#!/usr/bin/env bash
# Measures everything that the project promises about speed, in one run on one machine, and prints the lines that matter. Wants a quiet
# machine, some minutes, and for two parts tmux and python3-scipy, which say so when they are missing. Asserts nothing.
set -u
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root" || exit 1
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
echo "machine: $(nproc) cores, $(sed -n 's/^model name.*: //p' /proc/cpuinfo | head -1); load $(cut -d' ' -f1-3 /proc/loadavg)"
dotnet build ReworkThermal.sln -c Release -v quiet >"$scratch/build.log" 2>&1 || { tail -5 "$scratch/build.log"; exit 1; }
dotnet run -c Release --no-build --project tests/ReworkThermal.Benchmarks -- --filter '*' --job short --inProcess --artifacts "$scratch/artifacts" >"$scratch/benchmarks.log" 2>&1
grep -hE '^\| *(Method|[A-Z])' "$scratch"/artifacts/results/*.md
dotnet run -c Release --no-build --project tests/ReworkThermal.Benchmarks -- live-run
/usr/bin/python3 tests/scipy-comparison/compare.py tests/ReworkThermal.Benchmarks/bin/Release/net10.0/ReworkThermal.Benchmarks | grep -E "ratio|skipped"
tests/tmux/measure.sh
