#!/bin/sh
# Times FrameOpt and pagmo2 on the same points, one after the other on one thread each, and prints a table of ratios.
# Needs Debian: installs libpagmo-dev and g++ with apt-get (as root) if they are missing. Everything else goes to a temporary folder.
# A further task: a line in PeerTasks.All (ours) and, for a new kind, a function in kinds() of pagmo.cpp (theirs).
set -eu
here=$(cd "$(dirname "$0")" && pwd)
if ! dpkg -s libpagmo-dev g++ >/dev/null 2>&1; then
    echo "installing libpagmo-dev and g++" >&2
    apt-get update -q >&2
    apt-get install -y -q --no-install-recommends libpagmo-dev g++ >&2
fi
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
g++ -std=c++17 -O3 -march=native "$here/pagmo.cpp" -o "$work/pagmo" -lpagmo -lboost_serialization -ltbb
dotnet build -c Release -v q "$here/.." >&2
dotnet run --no-build -c Release --project "$here/.." -- peers "$work"
"$work/pagmo" "$work"

echo "$(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -1), $(nproc) cores, pagmo2 $(dpkg-query -W -f '${Version}' libpagmo-dev), .NET $(dotnet --version)"
paste -d ' ' "$work/ours.txt" "$work/theirs.txt" | awk '
    BEGIN { printf "%-28s %12s %12s %8s  %s\n", "task", "FrameOpt", "pagmo2", "ratio", "same result" }
    {
        apart = $4 - $8; if (apart < 0) apart = -apart
        size = $8 < 0 ? -$8 : $8
        if ($1 == "nsga2") { printf "%-28s %9.4f ms %9.4f ms %8.4f  hypervolume %.4f and %.4f\n", $1 " " $2, 1000 * $3, 1000 * $7, $3 / $7, $4, $8; next }
        same = apart <= 1e-9 * size ? "yes" : "NO: " $4 " and " $8
        printf "%-28s %9.4f ms %9.4f ms %8.4f  %s\n", $1 " " $2, 1000 * $3, 1000 * $7, $3 / $7, same
    }'
