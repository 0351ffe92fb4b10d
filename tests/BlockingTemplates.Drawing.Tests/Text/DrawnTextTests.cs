using BlockingTemplates.Drawing.Text;

namespace BlockingTemplates.Drawing.Tests.Text;

public class DrawnTextTests
{
    [Theory]
    [InlineData("plain ~ text", "plain ~ text", "plain ~ text")]
    [InlineData("a\tb\r\nc", "abc", "a b  c")]
    [InlineData("\u0000\u0007\u007F\u0085x", "x", "x")]
    [InlineData("a\u2028b\u2029", "ab", "a b ")]
    [InlineData("\u202Eevil\u202C", "evil", "\u202Eevil\u202C")]
    [InlineData("שלום 😀 é", "שלום 😀 é", "שלום 😀 é")]
    [InlineData("x\uFFFEy\uFFFFz\uFDD0", "xyz", "xyz")]
    public void Only_what_can_be_shown_is_kept(string text, string drawn, string title)
    {
        Assert.Equal(drawn, DrawnText.Of(text));
        Assert.Equal(title, DrawnText.TitleOf(text));
    }

    [Fact]
    public void Half_a_surrogate_pair_becomes_the_replacement_character()
    {
        Assert.Equal("a\uFFFDb", DrawnText.Of("a\uD83Db"));
        Assert.Equal("\uFFFD", DrawnText.TitleOf("\uDE00"));
    }
}
