#!/usr/bin/env bash
# The results of a small study are the same bytes with any number of threads, in any language and in any time zone, native or not.
#
#   tests/reliability/same-bytes.sh PROGRAM MANAGED     a native FrameOpt.Cli, and the FrameOpt.Cli.dll of the same commit
set -euo pipefail
program=$(realpath "$1")
managed=$(realpath "$2")
root=$(cd "$(dirname "$0")/../.." && pwd -P)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export NO_COLOR=1
study=$root/studies/full-and-empty/study.yaml

# The shipped program knows no languages; here it gets the ones of libicu, where that is installed.
sed 's/"System.Globalization.Invariant": true/"System.Globalization.Invariant": false/; s/"System.Globalization.PredefinedCulturesOnly": true/"System.Globalization.PredefinedCulturesOnly": false/' \
    "${managed%.dll}.runtimeconfig.json" > "$work/languages.json"
languages() { # languages LANGUAGE COMMAND...
    local language=$1.UTF-8
    shift
    env LC_ALL="$language" LANG="$language" dotnet exec --runtimeconfig "$work/languages.json" "$managed" "$@"
}

make() { # make NAME THREADS COMMAND...: the program's files and answers in a folder of that name
    local name=$1 threads=$2
    shift 2
    mkdir "$work/$name"
    "$@" run "$study" --variant 'full tank' --threads "$threads" --out "$work/$name/files" > "$work/$name/answer.txt"
    "$@" evaluate "$root/studies/fine-grid/study.yaml" > "$work/$name/evaluate.txt"
    "$@" run --help > "$work/$name/help.txt"
    # Times differ from run to run by nature, and the list of files has their checksum.
    rm "$work/$name/files/timings.json" "$work/$name/files/manifest.json"
    sed -i "s|$work/$name|FOLDER|" "$work/$name/answer.txt"
    # The usage names the program as it was started.
    sed -i 's/FrameOpt\.Cli /FrameOpt /' "$work/$name/help.txt"
}
compare() { # compare NAME THREADS COMMAND...
    make "$@"
    if ! diff -rq "$work/first" "$work/$1"; then
        echo "$1 does not give the same bytes as one thread does." >&2
        exit 1
    fi
    checked="$checked, $1"
}

make first 1 "$program"
checked="1 thread"
compare "2 threads" 2 "$program"
compare "4 threads" 4 "$program"
for zone in Pacific/Auckland America/St_Johns; do
    TZ=$zone compare "$(basename $zone) time" 2 "$program"
done
compare "not native" 2 dotnet "$managed"
if languages de_DE --help > /dev/null 2>&1; then
    for language in de_DE sv_SE tr_TR; do
        compare $language 2 languages $language
    done
else
    echo "SKIPPED: other languages, because libicu is not installed."
fi
echo "The same bytes: $checked."
