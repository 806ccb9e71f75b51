using System.Globalization;

namespace FrameOpt.Tests.Reliability;

/// <summary>How many random cases the tests of this folder try: few on every change, many when FRAMEOPT_CASES says so.</summary>
/// <remarks>FRAMEOPT_CASES=1000000 dotnet test tests/FrameOpt.Tests -c Release --filter Reliability, with
/// --logger "console;verbosity=detailed" to see the figures.</remarks>
internal static class Cases
{
    private static readonly int? asked =
        int.TryParse(Environment.GetEnvironmentVariable("FRAMEOPT_CASES"), CultureInfo.InvariantCulture, out var count) ? count : null;

    /// <summary>Damaged files, over all kinds of file.</summary>
    public static int OfFiles => asked ?? 10_000;

    /// <summary>Random machines and designs.</summary>
    public static int OfNumbers => asked ?? 4_000;
}
