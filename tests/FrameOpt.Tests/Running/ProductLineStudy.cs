using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Studies;
using FileStudy = FrameOpt.Tests.StudyFile.WorkedStudyText;

namespace FrameOpt.Tests.Running;

/// <summary>The study file of the worked balance over a coarse grid (3 x 13 x 7 = 273 designs), with a product line.</summary>
internal static class ProductLineStudy
{
    /// <summary>Two options with two choices each.</summary>
    public const string Options = """
          options:
            engine:
              light: { machine: { masses: { frame and engine: { mass: 20 kg } } } }
              big: { machine: { masses: { frame and engine: { mass: 31 kg } }, propeller: { diameter: 1.35 m } } }
            wing:
              small: { wing: { area: 22 m² } }
              large: { wing: { area: 28 m², mass: 6.6 kg } }

        """;

    /// <summary>Five customers.</summary>
    public const string Customers = """
          customers:
            - { name: school, pilot_mass: 62 kg, engine: light, wing: small, count: 9 }
            - { name: club, pilot_mass: 74 kg, engine: light, wing: small, count: 4 }
            - { name: north, pilot_mass: 81 kg, engine: big, wing: small, count: 3 }
            - { name: south, pilot_mass: 95 kg, engine: big, wing: large, count: 2 }
            - { name: heath, pilot_mass: 104 kg, engine: light, wing: large, count: 1 }

        """;

    public static string Grid { get; } = FileStudy.Text
        .Replace("{ from: 380 mm, to: 480 mm, step: 5 mm }", "{ from: 420 mm, to: 460 mm, step: 20 mm }")
        .Replace("{ from: 0 mm, to: 60 mm, step: 1 mm }", "{ from: 0 mm, to: 60 mm, step: 5 mm }")
        .Replace("{ from: 100 mm, to: 400 mm, step: 10 mm }", "{ from: 100 mm, to: 400 mm, step: 50 mm }")
        .Replace("{ values: [-3 deg, -1.5 deg, 0 deg, 1.5 deg, 3 deg] }", "0 deg");

    /// <summary>The file with a line of two of the grid.</summary>
    /// <param name="keys">More keys of it, each a line of its own.</param>
    /// <param name="customers">In the place of the five.</param>
    /// <param name="options">In the place of the four.</param>
    public static string Text(string keys = "", string customers = Customers, string options = Options) =>
        $"{Grid.TrimEnd()}\nline:\n  variants: 2\n"
        + (keys.Contains("candidates") ? "" : "  candidates: grid\n")
        + string.Concat(keys.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(key => $"  {key.Trim()}\n"))
        + options
        + customers;

    public static Study Read(string keys = "", string customers = Customers, string options = Options) =>
        FileStudy.Right(Text(keys, customers, options));

    /// <summary>Works the line out.</summary>
    public static ProductLineResult Solve(Study study, int threads = 2, CancellationToken cancel = default)
    {
        var run = new ProductLineRun(study, threads, cancel);
        foreach (var _ in run.Steps())
        {
        }

        return run.Result()!;
    }
}
