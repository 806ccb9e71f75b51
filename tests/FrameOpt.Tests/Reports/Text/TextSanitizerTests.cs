using System.Xml;
using CsCheck;
using FrameOpt.Reports.Text;

namespace FrameOpt.Tests.Reports.Text;

public class TextSanitizerTests
{
    [Fact]
    public void Characters_that_XML_forbids_are_dropped_and_all_others_kept() =>
        Assert.Equal("aβ日😀\t\n.", TextSanitizer.Clean("a\u0000\u0007β日😀\t\n\uFFFE\uD800.\uDC00"));

    [Fact]
    public void Any_cleaned_text_is_allowed_in_XML() =>
        Gen.String[Gen.Char, 0, 40].Sample(text => XmlConvert.VerifyXmlChars(TextSanitizer.Clean(text)));

    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@x")]
    [InlineData("\n=1")]
    [InlineData("\t=1")]
    [InlineData("\uFF1D1")]
    [InlineData("\uFF0B1")]
    [InlineData("\uFF0D1")]
    [InlineData("\uFF20x")]
    public void What_looks_like_a_formula_is_led_by_an_apostrophe_in_a_CSV(string text) =>
        Assert.StartsWith("'", TextSanitizer.ForCsv(text));

    [Theory]
    [InlineData("a;=1", "a;'=1")]
    [InlineData(";@x", ";'@x")]
    [InlineData("a\n=1", "a\n'=1")]
    [InlineData("a|\uFF1D1", "a|'\uFF1D1")]
    public void A_formula_after_a_separator_of_another_program_is_led_by_an_apostrophe(string text, string guarded) =>
        Assert.Equal(guarded, TextSanitizer.ForCsv(text));

    [Fact]
    public void Commands_to_a_terminal_are_dropped_from_a_CSV() =>
        Assert.Equal("a]0;b[31m", TextSanitizer.ForCsv("a\u001B]0;b\u0007\u009B[31m\u007F"));

    [Fact]
    public void Other_text_stands_in_a_CSV_as_it_is() => Assert.Equal("a=1", TextSanitizer.ForCsv("a=1"));
}
