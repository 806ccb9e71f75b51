using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class ModelTermTests
{
    [Theory]
    [InlineData("1")]
    [InlineData("x1")]
    [InlineData("x1x3")]
    [InlineData("x2^2")]
    [InlineData("x1^2x3")]
    public void A_name_is_read_and_written_alike(string name) => Assert.Equal(name, ModelTerm.Parse(name, 3).Name);

    [Theory]
    [InlineData("")]
    [InlineData("x0")]
    [InlineData("x4")]
    [InlineData("x1+x2")]
    [InlineData("2x1")]
    public void A_name_of_no_term_is_refused(string name) => Assert.Throws<FormatException>(() => ModelTerm.Parse(name, 3));

    [Fact]
    public void A_term_is_the_product_of_its_powers() => Assert.Equal(3 * 3 * 5, ModelTerm.Parse("x1^2x3", 3).Value([3, 7, 5]));

    [Fact]
    public void Factors_can_be_named() =>
        Assert.Equal("spacing × offset^2", ModelTerm.Parse("x1x2^2", 2).NamedWith(["spacing", "offset"]));

    [Fact]
    public void A_quadratic_model_of_three_factors_has_ten_terms() =>
        Assert.Equal(["1", "x1", "x2", "x3", "x1x2", "x1x3", "x2x3", "x1^2", "x2^2", "x3^2"],
            ModelTerms.Quadratic(3).Select(term => term.Name));

    [Fact]
    public void What_a_model_lacks_of_its_hierarchy_is_named() =>
        Assert.Equal(["x1", "x2"], ModelTerms.Missing(ModelTerms.Parse(2, "1", "x1x2", "x1^2")).Select(term => term.Name));

    [Fact]
    public void The_usual_models_are_hierarchical() => Assert.Empty(ModelTerms.Missing(ModelTerms.Quadratic(4)));
}
