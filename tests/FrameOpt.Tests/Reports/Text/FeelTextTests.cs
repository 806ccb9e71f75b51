using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;

namespace FrameOpt.Tests.Reports.Text;

/// <summary>What the pilot feels, from the figures of the worked balance and from figures made up for the steps of docs/model.md.</summary>
public class FeelTextTests
{
    private static readonly DesignEvaluation worked = ReportFixture.Report(1).FrontEvaluations[0];

    // Worked balance, glide: residual 18.7 N·m left, lean 36.22 mm to the right, effort 0.453.
    [Fact]
    public void Pull_lean_and_seat_are_one_plain_sentence() => Assert.StartsWith(
        "Glide: a clear pull to the left; 36 mm of hip to the right holds it; you sit ", FeelText.Of(worked.Phases[4]));

    // Worked balance, cruise: 0.4 N·m, below the 3 N·m that the wing's own trim decides.
    [Fact]
    public void Small_residual_is_told_as_hardly_any_pull_without_a_lean()
    {
        var words = FeelText.Of(worked.Phases[2]);
        Assert.StartsWith("Cruise: hardly any pull", words);
        Assert.DoesNotContain("hip", words);
    }

    // Worked balance, launch: 12.07 deg of twist, 77 N more on the right.
    [Fact]
    public void Launch_is_told_by_its_first_seconds() => Assert.StartsWith(
        "Launch: in the first seconds the risers twist by 12 deg, your nose to the right; right riser carries 77 N (7.8 kgf) more; ",
        FeelText.Of(worked.Phases[0]));

    [Theory]
    [InlineData(0.15, "a faint pull to the left")]
    [InlineData(0.16, "a light pull to the left")]
    [InlineData(0.36, "a clear pull to the left")]
    [InlineData(0.61, "a strong pull to the left")]
    [InlineData(0.81, "a very strong pull, close to all you can hold, to the left")]
    [InlineData(1.01, "a pull that YOU CANNOT HOLD to the left")]
    public void Steps_of_effort_have_their_words(double effort, string words) =>
        Assert.Equal(words, FeelText.Pull(worked.With(4, PhaseQuantity.Effort, effort).Phases[4]));

    [Fact]
    public void Pull_that_cannot_be_held_says_what_it_would_take()
    {
        var words = FeelText.Of(worked.With(4, PhaseQuantity.Effort, 1.3).With(4, PhaseQuantity.Lean, 104.4).Phases[4]);
        Assert.Contains("it would take 104 mm of hip to the right, more than you have", words);
    }

    [Fact]
    public void Seat_is_told_by_what_anyone_would_notice()
    {
        var phase = worked.With(2, PhaseQuantity.BodyYaw, -2.2).With(2, PhaseQuantity.BodyRoll, 0.3).With(2, PhaseQuantity.BodyPitch, 11.7);
        Assert.EndsWith("; you sit turned 2 deg to the left, leant back 12 deg.", FeelText.Of(phase.Phases[2]));
    }
}
