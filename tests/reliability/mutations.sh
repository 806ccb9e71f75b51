#!/usr/bin/env bash
# Faults put into the program on purpose, one at a time: the tests must fail each time. The list is mutations.tsv, the result mutations.md.
# All faults are built once, each behind a switch, into a copy of the checkout; the numbers to try may follow (default: all).
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
copy=$(mktemp -d)
trap 'rm -rf "$copy"' EXIT
git clone -q "$root" "$copy"
cat > "$copy/src/FrameOpt/Numerics/Fault.cs" << 'CODE'
namespace FrameOpt.Numerics;

/// <summary>Which fault is switched on.</summary>
public static class Fault
{
    private static readonly string on = Environment.GetEnvironmentVariable("FRAMEOPT_FAULT") ?? "";

    /// <summary>True for that one.</summary>
    public static bool On(string number) => on == number;
}
CODE

# number, file, what stands there (once), what stands there instead, tests that should see it, all separated by tabs.
while IFS=$'\t' read -r number file right wrong _; do
    text=$(cat "$copy/$file"; echo x)
    rest=${text#*"$right"}
    if [ "$rest" = "$text" ] || [ "${rest#*"$right"}" != "$rest" ]; then
        echo "fault $number: '$right' does not stand once in $file" >&2
        exit 1
    fi
    text=${text/"$right"/"(FrameOpt.Numerics.Fault.On(\"$number\") ? ($wrong) : ($right))"}
    printf '%s' "${text%x}" > "$copy/$file"
done < "$root/tests/reliability/mutations.tsv"

cd "$copy/tests/FrameOpt.Tests"
dotnet build -c Release -v q -p:TreatWarningsAsErrors=false -p:EnforceCodeStyleInBuild=false > "$copy/build.log" 2>&1 || { tail "$copy/build.log"; exit 1; }
missed=0
while IFS=$'\t' read -r number file right wrong filter; do
    [ $# -eq 0 ] || [[ " $* " == *" $number "* ]] || continue
    log=$(FRAMEOPT_FAULT=$number dotnet test -c Release --no-build --filter "$filter" 2>&1) && seen="NOT SEEN" || seen="seen"
    failed=$(grep -aoE 'Failed: +[0-9]+' <<< "$log" | grep -oE '[0-9]+' || echo 0)
    names=$(grep -aoE '^ *Failed [A-Za-z_.]+' <<< "$log" | sed 's/.*[.]//' | sort -u | head -3 | paste -sd ' ')
    [ "$seen" = seen ] || missed=$((missed + 1))
    echo "$number | $(basename "$file") | \`$right\` | \`$wrong\` | $seen, $failed tests | $names"
done < "$root/tests/reliability/mutations.tsv"
echo "$missed not seen"
[ "$missed" -eq 0 ]
