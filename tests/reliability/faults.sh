#!/usr/bin/env bash
# Kills FrameOpt, fills its disk, takes its folders away and closes its pipes, and checks what is left each time (docs/reliability.md).
#
#   tests/reliability/faults.sh PROGRAM [KILLS]     PROGRAM is a built FrameOpt.Cli; KILLS for each of three commands, 60 unless given
#
# As root on Linux it mounts two small disks of its own, one of them read-only; elsewhere those checks say that they are skipped.
set -u
program=$(realpath "$1")
kills=${2:-60}
root=$(cd "$(dirname "$0")/../.." && pwd -P)
work=$(mktemp -d)
export TMPDIR=$work/tmp NO_COLOR=1
mkdir "$TMPDIR" "$work/small" "$work/closed"
trap 'umount "$work/small" "$work/closed" 2> /dev/null; rm -rf "$work"' EXIT
cp -r "$root/studies" "$work/studies"
two=$work/studies/full-and-empty/study.yaml
plan=$work/studies/rationale/study.yaml
line=$work/studies/product-line/study.yaml
grid=$work/studies/fine-grid/study.yaml
seven=$work/studies/seven-factors/study.yaml
wrong=0
turn=0

# A folder is whole when it holds exactly the files of its manifest, each with its checksum.
whole() {
    [ -f "$1/manifest.json" ] || return 1
    local list
    list=$(awk -F'"' '/"name"/ {name=$4} /"sha256"/ {print $4 "  " name}' "$1/manifest.json")
    [ "$(wc -l <<< "$list")" -eq $(($(ls -A "$1" | wc -l) - 1)) ] || return 1
    (cd "$1" && sha256sum --quiet -c <<< "$list") > /dev/null 2>&1
}
left() { find "$1" -name '*.making-*' | wc -l; }
expect() { # expect WHAT COMMAND...: one check
    local what=$1
    shift
    if "$@"; then return 0; fi
    wrong=$((wrong + 1))
    echo "WRONG: $what"
    head -5 "$work/errors" 2> /dev/null
    return 1
}
row() { printf '%-58s %s\n' "$1" "$2"; }
try() { "$program" "$@" > "$work/output" 2> "$work/errors"; code=$?; }
said() { grep -q -- "$1" "$work/errors"; }
exits() { [ "$code" -eq "$1" ]; }
seconds() { date +%s.%N; }
killed_once() { # killed_once MOST COMMAND...: kill -9 at a random moment of MOST seconds, every second time of the last third
    local pause
    turn=$((turn + 1))
    pause=$(awk -v most="$1" -v r=$RANDOM -v late=$((turn % 2)) 'BEGIN {r /= 32767; print late ? most * (0.67 + 0.43 * r) : 0.02 + most * r}')
    shift
    "$program" "$@" > /dev/null 2>&1 &
    local pid=$!
    sleep "$pause"
    kill -9 $pid 2> /dev/null
    wait $pid 2> /dev/null
    [ $? -eq 137 ]
}
span() { # seconds COMMAND takes
    local from
    from=$(seconds)
    try "$@"
    awk -v a="$from" -v b="$(seconds)" 'BEGIN {print b - a}'
}

kill_folder() { # kill_folder NAME COMMAND...: the command replaces the same folder again and again
    local name=$1 out=$work/killed-$1/one reached=0 torn=0 old=0 waiting=0 most before
    shift
    mkdir -p "$work/killed-$name"
    most=$(span "$@" --out "$out")
    expect "$name, first" whole "$out"
    for ((i = 0; i < kills; i++)); do
        before=$(stat -c %i "$out")
        killed_once "$most" "$@" --out "$out" --replace && reached=$((reached + 1))
        [ "$(left "$work/killed-$name")" -eq 0 ] || waiting=$((waiting + 1))
        whole "$out" || torn=$((torn + 1))
        [ "$(stat -c %i "$out" 2> /dev/null)" = "$before" ] && old=$((old + 1))
    done
    expect "$name: a folder that is not whole" [ $torn -eq 0 ]
    try "$@" --out "$out" --replace
    expect "$name after the kills" exits 0
    expect "$name: something is left" [ "$(ls -A "$work/killed-$name" | wc -l)" -eq 1 ]
    row "kill -9 of $name --replace, $kills times" \
        "$reached killed before their end; $old old folder whole, $((kills - old - torn)) new folder whole, $torn torn; $waiting left something, cleaned by the next"
}

kill_plan() {
    local out=$work/killed-plan reached=0 torn=0 there=0 most
    mkdir "$out"
    most=$(span plan "$plan" --csv "$out/first.csv")
    for ((i = 0; i < kills; i++)); do
        killed_once "$most" plan "$plan" --csv "$out/runs.csv" && reached=$((reached + 1))
        if [ -e "$out/runs.csv" ]; then
            there=$((there + 1))
            cmp -s "$out/runs.csv" "$out/first.csv" || torn=$((torn + 1))
            rm "$out/runs.csv"
        fi
    done
    expect "plan: a torn file" [ $torn -eq 0 ]
    local waiting
    waiting=$(left "$out")
    try plan "$plan" --csv "$out/runs.csv"
    expect "plan after the kills" exits 0
    row "kill -9 of plan --csv, $kills times" "$reached killed before their end; $there whole file, $((kills - there - torn)) no file, $torn torn; $waiting temporary files left"
}

kill_remember() {
    local out=$work/killed-remember torn=0 most reached=0 short=$work/studies/short.yaml
    mkdir "$out"
    sed 's/evaluations: [0-9]*/evaluations: 6000/' "$seven" > "$short"
    most=$(span run "$short" --out "$out/never-stopped")
    local some=$((kills / 6))
    for ((i = 0; i < some; i++)); do
        killed_once "$most" run "$short" --out "$out/resumed" --replace --remember "$out/evaluations.csv" && reached=$((reached + 1))
    done
    try run "$short" --out "$out/resumed" --replace --remember "$out/evaluations.csv"
    expect "--remember after the kills" exits 0
    for file in run.json designs.csv results.xlsx report.html; do
        cmp -s "$out/never-stopped/$file" "$out/resumed/$file" || torn=$((torn + 1))
    done
    expect "--remember: files that differ from a run never stopped" [ $torn -eq 0 ]
    row "kill -9 of run --remember, $some times, then to its end" "$reached killed before their end; $torn of 4 files differ from a run never stopped"
}

full_disk() {
    if ! mount -t tmpfs -o size=64k none "$work/small" 2> /dev/null; then
        row "full disk" "SKIPPED: no disk could be mounted"
        return
    fi
    local saved
    try run "$two" --variant 'full tank' --out "$work/small/one"
    saved=$(sed -n 's/^They are saved in \(.*\)\. Move.*/\1/p' "$work/errors")
    expect "full disk: exit code" exits 0
    expect "full disk: saved elsewhere" whole "${saved:-/nowhere}"
    expect "full disk: nothing left" [ "$(ls -A "$work/small" | wc -l)" -eq 0 ]
    row "run, full disk at the end" "saved whole in the folder for temporary files, named; nothing left on the full disk"
    try line "$line" --out "$work/small/one"
    saved=$(sed -n 's/^They are saved in \(.*\)\. Move.*/\1/p' "$work/errors")
    expect "full disk, line: saved elsewhere" whole "${saved:-/nowhere}"
    row "line, full disk at the end" "the same"
    TMPDIR=$work/small try run "$two" --variant 'full tank' --out "$work/small/one"
    expect "all disks full: exit code" exits 2
    expect "all disks full: said so" said "could not be saved in"
    expect "all disks full: the answer is on the screen" grep -q "hang points" "$work/output"
    expect "all disks full: nothing left" [ "$(ls -A "$work/small" | wc -l)" -eq 0 ]
    row "run, every disk full" "exit code 2, both places named, the answer on the screen, nothing left"
    try run "$two" --variant 'full tank' --all --out "$work/small/one"
    expect "--all on a full disk: exit code" exits 0
    expect "--all on a full disk: said so" said "evaluations.csv is missing from the results"
    row "run --all, full disk during the search" "the run goes on; saved elsewhere without evaluations.csv, which is said"
    sed 's/evaluations: [0-9]*/evaluations: 6000/' "$seven" > "$work/studies/short.yaml"
    try run "$work/studies/short.yaml" --out "$work/remembered" --remember "$work/small/evaluations.csv"
    expect "--remember on a full disk: exit code" exits 0
    expect "--remember on a full disk: said so" said "does not hold every evaluation"
    expect "--remember on a full disk: results" whole "$work/remembered"
    expect "--remember on a full disk: whole lines" [ -z "$(tail -c 1 "$work/small/evaluations.csv" | tr -d '\n')" ]
    row "run --remember, full disk during the search" "the run goes on, results whole; the file ends with a whole line, which is said"
    dd if=/dev/zero of="$work/small/filler" bs=1k 2> /dev/null
    try plan "$plan" --csv "$work/small/runs.csv"
    expect "plan on a full disk: exit code" exits 2
    expect "plan on a full disk: no file" [ ! -e "$work/small/runs.csv" ]
    row "plan --csv, full disk" "exit code 2, no file"
    "$program" evaluate "$two" > /dev/full 2> "$work/errors"
    code=$?
    expect "output to a full disk: exit code" exits 2
    row "evaluate > /dev/full" "exit code 2, said on the other stream"
    umount "$work/small"
}

read_only() {
    if ! mount -t tmpfs -o size=1m none "$work/closed" 2> /dev/null || ! mount -o remount,ro "$work/closed" 2> /dev/null; then
        row "read-only place" "SKIPPED: no disk could be mounted"
        return
    fi
    try run "$two" --out "$work/closed/one"
    expect "read-only: run" exits 2
    expect "read-only: run, before the search" said "Nothing was computed"
    try line "$line" --out "$work/closed/one"
    expect "read-only: line" said "Nothing was computed"
    try plan "$plan" --csv "$work/closed/runs.csv"
    expect "read-only: plan" exits 2
    row "run, line, plan --csv to a read-only disk" "exit code 2; run and line before they compute anything"
    umount "$work/closed"
}

at_once() {
    local rounds=5 results good=0 i n
    results=$(dirname "$two")/results
    for ((i = 0; i < rounds; i++)); do
        rm -rf "$results"
        for n in 1 2 3; do "$program" run "$two" --variant 'full tank' > /dev/null 2>> "$work/errors" & done
        wait
        for folder in "$results"/*; do whole "$folder" && good=$((good + 1)); done
    done
    expect "three at once" [ $good -eq $((3 * rounds)) ]
    expect "three at once: left" [ "$(left "$results")" -eq 0 ]
    row "three runs into default folders at once, $rounds times" "$good of $((3 * rounds)) folders whole, nothing left"
    local failed=0
    for ((i = 0; i < rounds; i++)); do
        "$program" run "$two" --variant 'full tank' --out "$work/shared/one" --replace > /dev/null 2>&1 & local first=$!
        "$program" run "$two" --variant 'empty tank' --out "$work/shared/one" --replace > /dev/null 2>&1 & local second=$!
        wait $first || failed=$((failed + 1))
        wait $second || failed=$((failed + 1))
        for folder in "$work/shared"/*; do whole "$folder" || failed=$((failed + 1)); done
        [ "$(left "$work/shared")" -eq 0 ] || failed=$((failed + 1))
    done
    expect "two with --replace at once" [ $failed -eq 0 ]
    row "two runs with --replace into one folder at once, $rounds times" "both succeed; every folder whole, nothing left"
    sed 's/evaluations: [0-9]*/evaluations: 20000/' "$seven" > "$work/studies/short.yaml"
    "$program" run "$work/studies/short.yaml" --out "$work/first" --remember "$work/together.csv" > /dev/null 2>&1 &
    local holder=$!
    while [ ! -s "$work/together.csv" ] && kill -0 $holder 2> /dev/null; do sleep 0.05; done
    try run "$work/studies/short.yaml" --out "$work/second" --remember "$work/together.csv"
    expect "--remember twice: the second" exits 2
    wait $holder
    expect "--remember twice: the first" whole "$work/first"
    row "two runs with one --remember file at once" "the second is refused before its search, the first is not disturbed"
}

removed() {
    local saved pid i
    for i in making parent; do
        mkdir -p "$work/away"
        "$program" line "$line" --out "$work/away/one" > "$work/output" 2> "$work/errors" &
        pid=$!
        while [ "$(left "$work/away")" -lt 2 ] && kill -0 $pid 2> /dev/null; do sleep 0.02; done
        if [ $i = making ]; then find "$work/away" -name '*.making-*' -type d -exec rm -rf {} +; else rm -rf "$work/away"; fi
        wait $pid
        code=$?
        saved=$(sed -n 's/^They are saved in \(.*\)\. Move.*/\1/p' "$work/errors")
        expect "removed $i: exit code" exits 0
        expect "removed $i: saved elsewhere" whole "${saved:-/nowhere}"
    done
    row "folder, then its parent, removed during a run" "saved whole in the folder for temporary files, named"
}

signals() {
    local name pid from
    sed 's/kind: central composite/kind: D-optimal\n  runs: 500/; /axial: face-centred/d' "$plan" > "$work/long.yaml"
    for name in INT TERM; do
        env --default-signal=INT "$program" plan "$work/long.yaml" > "$work/output" 2> "$work/errors" &
        pid=$!
        sleep 1.5
        from=$(seconds)
        kill -$name $pid
        wait $pid
        code=$?
        expect "plan, one SIG$name: exit code" exits 130
        expect "plan, one SIG$name: says so" said "nothing was written"
        expect "plan, one SIG$name: at once" awk -v a="$from" -v b="$(seconds)" 'BEGIN {exit !(b - a < 2)}'
        env --default-signal=INT "$program" run "$grid" --threads 1 --out "$work/signal-$name/one" \
            > "$work/output" 2> "$work/errors" &
        pid=$!
        while [ "$(left "$work/signal-$name" 2> /dev/null)" -lt 2 ] 2> /dev/null && kill -0 $pid 2> /dev/null; do sleep 0.02; done
        sleep 0.5
        kill -$name $pid
        wait $pid
        code=$?
        expect "one SIG$name: exit code" exits 130
        expect "one SIG$name: results so far" whole "$work/signal-$name/one"
        env --default-signal=INT "$program" run "$grid" --threads 1 --out "$work/signals-$name/one" \
            > "$work/output" 2> "$work/errors" &
        pid=$!
        while [ "$(left "$work/signals-$name" 2> /dev/null)" -lt 2 ] 2> /dev/null && kill -0 $pid 2> /dev/null; do sleep 0.02; done
        kill -$name $pid
        from=$(seconds)
        kill -$name $pid
        sleep 0.05
        kill -$name $pid 2> /dev/null
        wait $pid 2> /dev/null
        expect "SIG$name twice: at once" awk -v a="$from" -v b="$(seconds)" 'BEGIN {exit !(b - a < 2)}'
        expect "SIG$name twice: nothing half" [ ! -e "$work/signals-$name/one" ]
        try run "$two" --out "$work/signals-$name/two"
        expect "SIG$name twice: named and cleaned" said "left by a run that was killed, was deleted"
        expect "SIG$name twice: nothing left" [ "$(left "$work/signals-$name")" -eq 0 ]
    done
    row "plan: Ctrl-C or SIGTERM once" "exit code 130 within 2 s, nothing written"
    row "Ctrl-C or SIGTERM once; twice" "once: exit code 130 with the results so far; twice: ends within 2 s, the next run cleans up"
}

pipes() {
    local codes
    "$program" run "$two" --out "$work/piped" 2> "$work/errors" | head -1 > /dev/null
    codes=${PIPESTATUS[0]}
    expect "run | head -1" [ "$codes" -eq 0 ]
    expect "run | head -1: results" whole "$work/piped"
    for arguments in "evaluate $grid" "evaluate $grid --json" "check $two" "plan $plan" "--help"; do
        # shellcheck disable=SC2086 # words of a command
        "$program" $arguments 2> "$work/errors" | head -1 > /dev/null
        codes=${PIPESTATUS[0]}
        expect "$arguments | head -1: $codes" [ "$codes" -eq 0 ]
        expect "$arguments | head -1: nothing said" [ ! -s "$work/errors" ]
    done
    "$program" run "$two" --out "$work/nobody" >&- 2>&-
    codes=$?
    expect "run with both streams closed: $codes" [ $codes -eq 2 ]
    expect "run with both streams closed: nothing done" [ ! -e "$work/nobody" ]
    row "run, evaluate, check, plan, --help | head -1; closed streams" "piped: exit code 0, nothing said; closed: exit code 2, nothing done"
}

kill_folder run run "$two" --variant 'full tank'
kill_folder line line "$line"
kill_plan
kill_remember
full_disk
read_only
at_once
removed
signals
pipes
echo "$wrong checks wrong"
[ $wrong -eq 0 ]
