#!/usr/bin/env bash
# Times whole processes, from starting the program to the last file written, and prints the table of docs/speed.md.
#
#   tests/FrameOpt.Benchmarks/processes.sh PROGRAM [OTHER]     ROUNDS=5 by default; needs GNU time (Debian: apt install time)
#
# PROGRAM is a published FrameOpt.Cli. With OTHER, an earlier build, the two run in turn, and the last column has the median of the ratios of their
# processor times, pair by pair: on a busy machine only that says something. GROWTH=no leaves out the rows of growth, which take minutes.
set -euo pipefail
program=$(realpath "$1")
other=${2:+$(realpath "$2")}
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
rounds=${ROUNDS:-5}

median() { sort -n | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'; }

# One run: wall seconds, processor seconds, MiB.
measure() {
    command time -o "$work/time" -f '%e %U %S %M' "$@" > "$work/output" 2>&1 || { tail -3 "$work/output" >&2; return 1; }
    tail -1 "$work/time" | awk '{ print $1, $2 + $3, $4 / 1024 }'
}

row() {
    local name=$1 round
    shift
    : > "$work/ours"; : > "$work/theirs"
    for ((round = 0; round <= rounds; round++)); do
        local ours theirs
        ours=$(measure "$program" "$@")
        # An earlier program may not take the study.
        theirs=
        if [ -n "$other" ]; then theirs=$(measure "$other" "$@" 2> /dev/null) || theirs=; fi
        # The first round warms the caches of the disk.
        if [ "$round" -gt 0 ]; then
            echo "$ours" >> "$work/ours"
            if [ -n "$theirs" ]; then echo "$ours $theirs" | awk '{ print $2 / $5 }' >> "$work/theirs"; fi
        fi
    done
    local column
    printf '| %s |' "$name"
    for column in 1 2 3; do awk -v c="$column" '{ print $c }' "$work/ours" | median | awk -v c="$column" '{ printf (c < 3 ? " %.2f s |" : " %.0f MiB |"), $1 }'; done
    if [ -n "$other" ]; then median < "$work/theirs" | awk '{ if ($1 == "") printf " |"; else printf " %.2f |", $1 }'; fi
    echo
}

run() { row "$1" run "$2" --out "$work/results" --replace; }

# fine-grid with another step of the lateral offset, from 0 to 60 mm.
offsets() { sed "s/^  lateral_offset: .*/  lateral_offset: { from: 0 mm, to: 60 mm, step: $2 mm }/" studies/fine-grid/study.yaml > "$work/$1.yaml"; }

# fine-grid with its climb repeated until there are so many phases.
phases() {
    awk -v extra=$(($1 - 5)) '{ print } /^  climb:/ { for (i = 1; i <= extra; i++) { line = $0; sub("climb:", "climb" i ":", line); print line } }' \
        studies/fine-grid/study.yaml > "$work/$1.yaml"
}

# product-line with so many customers, pilots of 60 to 110 kg.
customers() {
    sed "s|customers: customers.csv|customers: $1.csv|" studies/product-line/study.yaml > "$work/$1.yaml"
    awk -v n="$1" 'BEGIN {
        print "name,pilot_mass [kg],engine,wing"
        for (i = 0; i < n; i++) printf "c%d,%.1f,%s,%s\n", i, 60 + (i * 7919 % 500) / 10, i % 3 ? "light single" : "big single", i % 2 ? "24 m²" : "28 m²"
    }' > "$work/$1.csv"
}

echo "Load at the start: $(cut -d' ' -f1-3 /proc/loadavg); $(nproc) processors; medians of $rounds rounds."
echo
echo "| command | wall | processor time | peak memory |${other:+ processor time / earlier |}"
echo "|---|---|---|---|${other:+---|}"
row "--help" --help
row "check fine-grid" check studies/fine-grid/study.yaml
row "evaluate custom-match" evaluate studies/custom-match/study.yaml
row "plan rationale" plan studies/rationale/study.yaml
for study in fine-grid custom-match rationale seven-factors; do run "run $study" "studies/$study/study.yaml"; done
row "line product-line" line studies/product-line/study.yaml --out "$work/results" --replace
if [ "${GROWTH:-yes}" = yes ]; then
    for step in 10 1 0.1 0.01; do
        offsets "step$step" "$step"
        run "fine-grid, $(awk -v s="$step" 'BEGIN { printf "%d", 21 * 41 * 21 * (60 / s + 1) }') designs" "$work/step$step.yaml"
    done
    for count in 5 20 100; do phases "$count"; run "fine-grid, $count phases" "$work/$count.yaml"; done
    for count in 100 10000 100000; do
        customers "$count"
        row "product-line, $count customers" line "$work/$count.yaml" --out "$work/results" --replace
    done
fi
echo
echo "Load at the end: $(cut -d' ' -f1-3 /proc/loadavg)."
