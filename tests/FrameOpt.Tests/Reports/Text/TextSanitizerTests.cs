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
    public void What_looks_like_a_formula_is_led_by_an_apostrophe_in_a_CSV(string text) =>
        Assert.Equal("'" + text, TextSanitizer.ForCsv(text));

    [Fact]
    public void Other_text_stands_in_a_CSV_as_it_is() => Assert.Equal("a=1", TextSanitizer.ForCsv("a=1"));
}
