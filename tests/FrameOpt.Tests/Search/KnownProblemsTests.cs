namespace FrameOpt.Tests.Search;

/// <summary>The problems themselves, before a search is judged by them.</summary>
public sealed class KnownProblemsTests
{
    private const string Rounding = "closed forms, rounding only";

    /// <summary>Source: the tests of pagmo2, tests/zdt.cpp; all of 30 factors at 0.25.</summary>
    [Fact]
    public void Zdt_values_are_those_of_a_public_library()
    {
        double[] x = [.. Enumerable.Repeat(0.25, 30)];
        Same([0.25, 2.3486121811340026], TestProblem.Objectives(KnownProblems.Zdt1(), x));
        Same([0.25, 3.230769230769231], TestProblem.Objectives(KnownProblems.Zdt2(), x));
        Same([0.25, 2.0986121811340026], TestProblem.Objectives(KnownProblems.Zdt3(), x));
        Same([0.25, 570.7417450526075], TestProblem.Objectives(KnownProblems.Zdt4(30), x));
        Same([0.6321205588285577, 7.309699961231513], TestProblem.Objectives(KnownProblems.Zdt6(30), x));
    }

    /// <summary>Source: the tests of pagmo2, tests/dtlz.cpp; three objectives, five factors.</summary>
    [Fact]
    public void Dtlz_values_are_those_of_a_public_library()
    {
        double[] middle = [0.5, 0.5, 0.5, 0.5, 0.5];
        double[] rising = [0.1, 0.2, 0.3, 0.4, 0.5];
        Same([0.125, 0.125, 0.25], TestProblem.Objectives(KnownProblems.Dtlz1(3, 5), middle));
        Same([0.06, 0.24, 2.7], TestProblem.Objectives(KnownProblems.Dtlz1(3, 5), rising));
        Same([0.5, 0.5, 0.7071067811865475], TestProblem.Objectives(KnownProblems.Dtlz2(3, 5), middle));
        Same([0.9863148040113404, 0.3204731065093832, 0.16425618829224242], TestProblem.Objectives(KnownProblems.Dtlz2(3, 5), rising));
        Same([5.6360845943505, 1.8312748943393273, 0.9386067902413824], TestProblem.Objectives(KnownProblems.Dtlz3(3, 5), rising));
    }

    /// <summary>Ends of the fronts worked from the definitions: BNH at (0, 0) and (5, 3), SRN at (1.1, 3.7) and (-2.5, 2.5), Kursawe at
    /// 0.</summary>
    [Fact]
    public void Ends_of_fronts_have_their_values()
    {
        Same([0, 50], TestProblem.Objectives(KnownProblems.Bnh(), 0, 0));
        Same([136, 4], TestProblem.Objectives(KnownProblems.Bnh(), 5, 3));
        Same([10.1, 2.61], TestProblem.Objectives(KnownProblems.Srn(), 1.1, 3.7));
        Same([24.5, -24.75], TestProblem.Objectives(KnownProblems.Srn(), -2.5, 2.5));
        Same([0.25, 0.5], TestProblem.Objectives(KnownProblems.Tnk(), 0.25, 0.5));
        Same([-20, 0], TestProblem.Objectives(KnownProblems.Kursawe(), 0, 0, 0));
        Same([-14.435463548845, -11.627286837139],
            TestProblem.Objectives(KnownProblems.Kursawe(), -1.152740847597, -1.152740847597, -1.152740847597));
    }

    private static void Same(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var j = 0; j < expected.Length; j++)
            Check.Close(expected[j], actual[j], relative: 1e-11, absolute: 1e-12, because: Rounding);
    }
}
