#!/usr/bin/env bash
# Compares every file and every answer FrameOpt makes of the shipped studies with recorded checksums, at one thread and at two.
#
#   tests/outputs/check.sh PROGRAM [FOLDER]     compares; FOLDER keeps what was made, to look at a difference
#   tests/outputs/check.sh --record PROGRAM     records the checksums again, after a change that is meant to be seen
#
# PROGRAM is a built FrameOpt.Cli. The last bits of sines and logarithms come from the system's mathematical library, so checksums recorded on
# another kind of machine are not compared; one thread and two always are.
set -euo pipefail
record=no
if [ "$1" = --record ]; then record=yes; shift; fi
program=$(realpath "$1")
made=${2:-}
cd "$(dirname "$0")/../.."
root=$(pwd -P)
recorded=tests/outputs/checksums.txt
if [ -z "$made" ]; then
    made=$(mktemp -d)
    trap 'rm -rf "$made"' EXIT
fi
mkdir -p "$made"
made=$(realpath "$made")
commit=$("$program" --version | sed -n 's/.*+\([0-9a-f]\{12\}\).*/\1/p')
commit=${commit:-none}
export NO_COLOR=1

machine() {
    local vectors=sse
    if grep -qw fma /proc/cpuinfo 2>/dev/null; then vectors=fma; fi
    echo "# $(uname -m) $vectors $(getconf GNU_LIBC_VERSION 2>/dev/null || uname -s)"
}

# One command: its files in a folder of that name, its answer in a text beside it. Exit codes other than 0 are part of the answer.
answer() {
    local name=$1 code=0
    shift
    "$program" "$@" > "$name.txt" 2> "$name.errors.txt" || code=$?
    echo "exit code $code" >> "$name.txt"
    sed -i "s|$here|FOLDER|g; s|$root/||g" "$name.txt" "$name.errors.txt"
}

# Starts a folder of outputs and goes there.
begin() {
    here=$made/$1
    rm -rf "${here:?}"
    mkdir -p "$here"
    cd "$here"
}

# The commands that take a number of threads, and what reads their results.
with_threads() {
    local threads=$1 study name
    begin "$threads"
    for study in "$root"/studies/*/study.yaml; do
        name=$(basename "$(dirname "$study")")
        answer "run-$name" run "$study" --threads "$threads" --out "$here/run-$name"
    done
    answer run-full run "$root/studies/full-and-empty/study.yaml" --variant 'full tank' --threads "$threads" --all --out "$here/run-full"
    answer run-evolution run "$root/studies/fine-grid/study.yaml" --variant 'by evolution' --threads "$threads" --out "$here/run-evolution"
    answer compare compare run-custom-match run-custom-match:2 run-full --out "$here/compare"
    answer line line "$root/studies/product-line/study.yaml" --threads "$threads" --out "$here/line"
    # Times differ from run to run by nature, and so does the checksum of the file of times in the manifest.
    find "$here" \( -name timings.json -o -name manifest.json \) -delete
    without_commit
}

# Takes the commit that the program was built from out of everything in the folder, so that a commit changes no checksum; JSON writes its plus sign
# as \u002B, and workbooks are unpacked for it.
without_commit() {
    local book
    find "$here" -name '*.xlsx' | while read -r book; do
        unzip -q -d "$book.files" "$book" 2>/dev/null || python3 -m zipfile -e "$book" "$book.files"
        rm "$book"
    done
    find "$here" -type f -exec sed -i -E "s/(\\+|\\\\u002B)$commit[0-9a-f]*//g" {} +
}

# The commands that take no number of threads.
without_threads() {
    local study name
    begin once
    for study in "$root"/studies/*/study.yaml; do
        name=$(basename "$(dirname "$study")")
        answer "check-$name" check "$study"
        answer "evaluate-$name" evaluate "$study" --json
    done
    answer evaluate-table evaluate "$root/studies/custom-match/study.yaml" --set lateral_offset='-25 mm'
    answer plan plan "$root/studies/rationale/study.yaml" --csv "$here/plan.csv"
    answer fit fit "$root/studies/custom-match/study.yaml" --scales 'left 50.2 kgf, right 58.8 kgf' --set lateral_offset='-20 mm'
    answer mistakes check "$root/tests/FrameOpt.Tests/References/twenty-mistakes.yaml"
    without_commit
}

sums() { (cd "$made/$1" && find . -type f | LC_ALL=C sort | xargs sha256sum | sed 's|  \./|  |'); }

# Side by side: most of a run is one thread's work.
(with_threads 1) & one=$!
(with_threads 2) & two=$!
(without_threads)
wait "$one"
wait "$two"
if ! diff <(sums 1) <(sums 2); then
    echo "One thread and two do not give the same bytes: see the files above." >&2
    exit 1
fi
mv "$made"/once/* "$made/1"
rmdir "$made/once"
if [ "$record" = yes ]; then
    { machine; sums 1; } > "$recorded"
    echo "Recorded $(sums 1 | wc -l) checksums in $recorded."
elif [ "$(head -1 "$recorded")" != "$(machine)" ]; then
    echo "$(sums 1 | wc -l) files: the same at one thread and at two. Not compared with $recorded: that is of another kind of machine ($(head -1 "$recorded"))."
elif diff <(tail -n +2 "$recorded") <(sums 1); then
    echo "$(sums 1 | wc -l) files: the same at one thread and at two, and the same as recorded."
else
    echo "Not the same as recorded: see the files above. If the change is meant, record them again: tests/outputs/check.sh --record PROGRAM" >&2
    exit 1
fi
